import type { Report, ReportRecording, SectionKind } from '../../types.ts';
import { type Hole, html, type Markup } from '../markup.ts';
import { channelNames, formatNames, placeNames, sectionNames } from '../words/names.ts';
import { clock, counted, duration, number, quantity, span } from '../words/number.ts';
import { capital, foreign, plain } from '../words/sentence.ts';
import { alignmentFacts, alignmentSaid, defectSaid, leftOutSaid, stepSaid } from '../words/story.ts';
import { deviceSaid, recordingName, subjectName } from '../words/subject.ts';
import { figure } from './figure.ts';
import { bullets, part, said, section, terms } from './said.ts';

/** Where the data came from, how it was put together, and everything that was done to it. */
export function dataStory(report: Report, drawn: ReadonlySet<string>): Markup {
  const { primary, seconds, unreadable } = report.submission;
  const rest = report.charts.filter((chart) => !drawn.has(chart.id));
  return section('story', 'The data’s own story', [
    ...rest.map((chart) => figure(report, chart, [])),
    ...[primary, ...seconds].map((one) => recording(report, one)),
    ...unreadable.map(({ name, why }) =>
      part('Unreadable second recording', html`<p>${said([foreign(name), ': ', foreign(why)])}</p>`),
    ),
    history(report),
    sections(report),
    steps(report),
  ]);
}

function recording(report: Report, one: ReportRecording): Markup {
  const { declared } = one;
  const alignment = report.alignment.find(({ subject }) => subject === one.subject);
  return html`<div class="row"><h3 class="kind">${plain(capital([recordingName(report, one)]))}</h3><div class="flow">${terms(
    [
      ['File', said([foreign(one.name), `, ${formatNames[one.format]}`])],
      ['Device', said(deviceSaid(one.device))],
      [
        'Declared as',
        declared === null
          ? 'not declared'
          : `${placeNames[declared.place]}, ${declared.sides === 1 ? 'one side' : 'both sides'}, ±${quantity(declared.tolerancePercent, '%')}`,
      ],
      ['Sport', one.sport === null ? 'not stated' : said([foreign(one.sport)])],
      ['Where', one.indoors === null ? 'not stated' : one.indoors ? 'indoors' : 'outdoors'],
      ['Begins', clock(one.start)],
      [
        'Lasts',
        `${duration(one.seconds)}; recorded in ${quantity(one.recordedSeconds / Math.max(1, one.seconds), 'share')} of the seconds`,
      ],
      [
        'Power',
        one.meanPower === null
          ? 'none'
          : `mean ${quantity(one.meanPower, 'W')}, highest ${one.maxPower === null ? 'not known' : quantity(one.maxPower, 'W')}`,
      ],
      ['Channels', one.channels.map((channel) => channelNames[channel]).join(', ')],
      [
        'What was wrong with the file',
        one.defects.length === 0 ? null : bullets(one.defects.map((defect) => said(defectSaid(defect)))),
      ],
    ],
  )}${
    alignment !== undefined &&
    html`<h4>How it was put on the primary’s clock</h4><p>${alignmentSaid(alignment)}</p>${terms(alignmentFacts(alignment))}`
  }</div></div>`;
}

function history({ submission: { history } }: Report): Markup | null {
  if (history === null) return null;
  const { rides, notBefore, leftOut } = history;
  return part(
    'Earlier rides',
    html`<p>${counted(rides, 'ride')} used. ${
      notBefore > 0 && `${counted(notBefore, 'ride')} not used: no earlier than this one. `
    }${Object.keys(leftOut).length > 0 && `Left out while they were gathered: ${leftOutSaid(leftOut)}.`}</p>`,
  );
}

function sections({ sections: all }: Report): Markup | null {
  if (all.length === 0) return null;
  const kinds = [...new Set(all.map((section) => section.kind))];
  const row = (kind: SectionKind): readonly [string, Hole] => {
    const found = all.filter((section) => section.kind === kind);
    const [one, many] = sectionNames[kind];
    const shown = found.slice(0, 12).map((section) => span(section.stretch));
    const more = found.length - shown.length;
    return [
      counted(found.length, one, many),
      shown.join(', ') + (more > 0 ? ` and ${number(more)} more` : ''),
    ];
  };
  return part('Sections found in the ride', terms(kinds.map(row)));
}

function steps(report: Report): Markup | null {
  if (report.steps.length === 0) return null;
  return part(
    'What was done to the data, in order',
    html`<ol>${report.steps.map(
      (step) =>
        html`<li>${said(stepSaid(step))} <span class="quiet">(${subjectName(report, step.subject)})</span></li>`,
    )}</ol>`,
  );
}
