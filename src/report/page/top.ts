import type { Report } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import type { Outline, Told } from '../outline.ts';
import { cautions } from '../words/cautions.ts';
import { becauseSaid, gradeMeans, gradeWord, missingSaid, reachSaid } from '../words/grade.ts';
import { clock, counted, duration, span } from '../words/number.ts';
import { foreign } from '../words/sentence.ts';
import { deviceSaid, recordingName } from '../words/subject.ts';
import { bullets, said, terms } from './said.ts';

export const anchor = (told: Told) => `finding-${told.number}`;

/** The grade in words, its reach, what it rests on, and which submission it is about. */
export function mast(report: Report, { rests }: Outline): Markup {
  const { primary, seconds, window, history } = report.submission;
  return html`<header class="mast"><p class="eyebrow">Audit of a submission · ${report.tool.name} ${report.tool.version}</p><h1>${gradeWord(report.grade)}. ${gradeMeans(report.grade)}</h1><div class="flow"><p class="lead">${reachSaid(report)}</p>${[missingSaid(report), becauseSaid(report)].map((text) => text !== null && html`<p>${text}</p>`)}${
    rests.length > 0 &&
    html`<div><h2 class="eyebrow">What the grade rests on</h2><ol class="rests">${rests.map(
      (told) =>
        html`<li><a href="#${anchor(told)}">${told.title}</a><span class="quiet">${told.value}</span></li>`,
    )}</ol></div>`
  }${terms([
    ['Primary recording', said([foreign(primary.name), ', ', ...deviceSaid(primary.device)])],
    ...seconds.map(
      (one) =>
        [
          capitalised(recordingName(report, one)),
          said([foreign(one.name), ', ', ...deviceSaid(one.device)]),
        ] as const,
    ),
    ['Ridden', `${clock(primary.start)}, ${duration(primary.seconds)}`],
    [
      'Race',
      `${span(window.stretch)} of the ride, ${window.given ? 'as given' : 'proposed from the ride itself'}`,
    ],
    ['Earlier rides', history === null ? 'none handed in' : counted(history.rides, 'ride')],
  ])}</div></header>`;
}

const capitalised = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export function cautionsAndNext(report: Report, { next }: Outline): Markup {
  return html`<section class="cautions" aria-labelledby="cautions"><h2 id="cautions">Before you read on</h2>${bullets(cautions(report))}</section>${
    next.length > 0 &&
    html`<section class="next" aria-labelledby="next"><h2 id="next">What to do next</h2><ol>${next.map(
      ({ what, settles }) =>
        html`<li>${what}${settles.length > 0 && html` <span class="quiet">Would settle: ${settles.map((told, index) => html`${index > 0 && '; '}<a href="#${anchor(told)}">${told.title}</a>`)}.</span>`}</li>`,
    )}</ol></section>`
  }`;
}
