import type { Report } from '../types.ts';
import { html } from './markup.ts';
import { outline } from './outline.ts';
import { chartPlaces, overview, raisedFindings } from './page/findings.ts';
import { fineFindings, uncheckedMeasures } from './page/rest.ts';
import { shell } from './page/shell.ts';
import { dataStory } from './page/story.ts';
import { cautionsAndNext, mast } from './page/top.ts';
import { checksums, workings } from './page/workings.ts';
import { gradeWord } from './words/grade.ts';
import { foreignText } from './words/sentence.ts';

/** The report as one page that needs nothing else: no network, no script. */
export async function renderHtml(report: Report): Promise<string> {
  const told = outline(report);
  const place = chartPlaces(report, told);
  const body = html`<main>${mast(report, told)}${cautionsAndNext(report, told)}${overview(report, told)}${raisedFindings(report, told, place)}${fineFindings(report, told, place)}${uncheckedMeasures(told)}${dataStory(report, new Set(place.keys()))}${workings(report)}${checksums(report)}</main>`;
  return shell(`${gradeWord(report.grade)}: ${foreignText(report.submission.primary.name)}`, body);
}
