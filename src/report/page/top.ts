import type { Report } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import { byTitle, type Told } from '../outline.ts';
import { cautions } from '../words/cautions.ts';
import {
  becauseSaid,
  gradeMeans,
  gradeWord,
  missingSaid,
  reachSaid,
  unreadableSaid,
} from '../words/grade.ts';
import { clock, counted, duration, span } from '../words/number.ts';
import { capital, foreign, plain } from '../words/sentence.ts';
import { damageSaid } from '../words/story.ts';
import { recordingName } from '../words/subject.ts';
import { findingId, type Layout } from './layout.ts';
import { bullets, said, section, terms } from './said.ts';

/** The grade in words, its reach, what it rests on, and in the margin which submission it is about. */
export function mast({ report, told: { rests } }: Layout): Markup {
  return html`<header class="row mast"><div class="flow"><h1>${gradeWord(report.grade)}. ${gradeMeans(report.grade)}</h1><p class="lead">${reachSaid(report)}</p>${[
    damageSaid(report),
    unreadableSaid(report),
    missingSaid(report),
    becauseSaid(report),
  ].map((text) => text !== null && html`<p>${text}</p>`)}${
    rests.length > 0 &&
    html`<div><p class="eyebrow">What the grade rests on</p><ol class="rests">${rests.map(basis)}</ol></div>`
  }</div><div class="facts">${facts(report)}</div></header>`;
}

function basis(told: Told): Markup {
  return html`<li><a href="#${findingId(told.number)}">${told.title}</a>${told.value !== null && html`<span>${told.value}</span>`}<p>${told.several && `${plain(capital([told.about]))}. `}${said(told.claim)}</p></li>`;
}

function facts(report: Report): Markup {
  const { primary, seconds, window, history } = report.submission;
  return terms([
    ['Audit of a submission', `${report.tool.name} ${report.tool.version}`],
    ...[primary, ...seconds].map(
      (one) => [plain(capital([recordingName(report, one)])), said([foreign(one.name)])] as const,
    ),
    ['Ridden', `${clock(primary.start)}, ${duration(primary.seconds)}`],
    [
      'Race',
      `${span(window.stretch)} of the ride, ${window.given ? 'as given' : 'proposed from the ride itself'}`,
    ],
    ['Earlier rides', history === null ? 'none handed in' : counted(history.rides, 'ride')],
  ]);
}

/** A title that leads to its finding; where several bear it, each is named by what it is about. */
function titled(title: string, findings: readonly Told[]): Markup {
  const link = ({ number }: Told, text: string) => html`<a href="#${findingId(number)}">${text}</a>`;
  if (findings.length === 1) return link(findings[0]!, title);
  return html`${title} (${findings.map((told, index) => html`${index > 0 && ', '}${link(told, told.about)}`)})`;
}

export function cautionsAndNext({ report, told: { next } }: Layout): Markup {
  const steps = next.map(({ whats, settles }) => {
    const links = byTitle(settles).map(
      ([title, findings], index) => html`${index > 0 && '; '}${titled(title, findings)}`,
    );
    return html`<div><dt>${links.length === 0 ? 'To complete the submission' : html`To settle: ${links}`}</dt><dd>${bullets(whats)}</dd></div>`;
  });
  return html`${section('cautions', 'Before you read on', bullets(cautions(report)), 'cautions')}${steps.length > 0 && section('next', 'What to do next', html`<dl>${steps}</dl>`)}`;
}
