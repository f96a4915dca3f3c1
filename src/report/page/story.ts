import type { DeviceFacts, Report, ReportRecording } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import { onPrimaryClock } from '../words/clocks.ts';
import { channelNames, formatNames, placeNames, sectionNames } from '../words/names.ts';
import { clock, counted, duration, quantity, span } from '../words/number.ts';
import { differenceSaid, everyRide, kindSaid } from '../words/sections.ts';
import { capital, foreign, list, plain } from '../words/sentence.ts';
import { alignmentFacts, alignmentSaid, defectSaid, leftOutSaid, stepSaid } from '../words/story.ts';
import { deviceSaid, recordingName, subjectName } from '../words/subject.ts';
import { figure } from './figure.ts';
import { isOverview, type Layout } from './layout.ts';
import { bullets, folded, part, said, section, table, terms } from './said.ts';
import { setPoints } from './set-points.ts';

/** Where the data came from, how it was put together, and everything that was done to it. */
export function dataStory(layout: Layout): Markup {
  const { report, place } = layout;
  const { primary, seconds, unreadable } = report.submission;
  const rest = report.charts.filter((chart) => !isOverview(chart) && !place.has(chart.id));
  return section('story', 'The data’s own story', [
    ...rest.map((chart) => figure(layout, chart)),
    ...[primary, ...seconds].map((one) => recording(report, one)),
    ...unreadable.map(({ name, why }) =>
      part('Unreadable second recording', html`<p>${said([foreign(name), ': ', foreign(why)])}</p>`),
    ),
    history(report),
    sections(report),
    setPoints(report),
    steps(report),
  ]);
}

function recording(report: Report, one: ReportRecording): Markup {
  const { declared } = one;
  const alignment = report.alignment.find(({ subject }) => subject === one.subject);
  const facts = terms([
    ['File', said([foreign(one.name), `, ${formatNames[one.format]}`])],
    ['Added field', one.field === null ? null : said([foreign(one.field)])],
    ['Device', said(deviceSaid(one.device))],
    ['Declared as', declared === null ? 'not declared' : declaredSaid(declared)],
    ['Sport', one.sport === null ? 'not stated' : said([foreign(one.sport)])],
    ['Where', one.indoors === null ? 'not stated' : one.indoors ? 'indoors' : 'outdoors'],
    [onPrimaryClock(report, one) ? 'Begins, by the primary’s clock' : 'Begins', clock(one.start)],
    [
      'Lasts',
      `${duration(one.seconds)}; recorded in ${quantity(recordedShare(one), 'share')} of the seconds`,
    ],
    ['Power', powerSaid(one)],
    ['Channels', one.channels.map((channel) => channelNames[channel]).join(', ')],
    [
      'What was wrong with the file',
      one.defects.length === 0 ? null : bullets(one.defects.map((defect) => said(defectSaid(defect)))),
    ],
  ]);
  const placed =
    alignment !== undefined &&
    html`<h4>How it was put on the primary’s clock</h4><p>${alignmentSaid(alignment)}</p>${terms(alignmentFacts(alignment))}`;
  return part(plain(capital([recordingName(report, one)])), html`${facts}${placed}`);
}

function declaredSaid({ place, sides, tolerancePercent }: DeviceFacts): string {
  return `${placeNames[place]}, ${sides === 1 ? 'one side' : 'both sides'}, ±${quantity(tolerancePercent, '%')}`;
}

function recordedShare({ recordedSeconds, seconds }: ReportRecording): number {
  return recordedSeconds / Math.max(1, seconds);
}

function powerSaid({ meanPower, maxPower }: ReportRecording): string {
  if (meanPower === null) return 'none';
  const highest = maxPower === null ? '' : `, highest ${quantity(maxPower, 'W')}`;
  return `mean ${quantity(meanPower, 'W')}${highest}`;
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

/** More sections than these are counted; all of them stand in the JSON. */
const mostSections = 60;

/** Where the meters agree and where not: every section with its power and the differences in it. */
function sections(report: Report): Markup | null {
  const { sections: all } = report;
  if (all.length === 0) return null;
  const kinds = [...new Set(all.map((section) => section.kind))].filter((kind) => !everyRide.includes(kind));
  const counts = kinds.map((kind) => kindSaid(kind, all.filter((section) => section.kind === kind).length));
  const meters = [...new Set(all.flatMap(({ differences }) => differences.map(({ subject }) => subject)))];
  const caption = all.length > mostSections ? `The first ${mostSections} sections` : 'Sections';
  const shown = table(
    caption,
    ['section', 'when', 'mean power', ...meters.map((subject) => subjectName(report, subject))],
    all
      .slice(0, mostSections)
      .map((section) => [
        sectionNames[section.kind][0],
        span(section.stretch),
        section.watts === null ? '–' : quantity(section.watts, 'W'),
        ...meters.map((subject) => differenceSaid(section, subject)),
      ]),
    'numbers',
  );
  return part(
    'Sections found in the ride',
    html`${counts.length > 0 && html`<p>${plain(capital(list(counts)))}.</p>`}${folded('Each section', shown)}`,
  );
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
