import type { Report } from '../types.ts';
import { html } from './markup.ts';
import { liveData } from './page/figure.ts';
import { overview, raisedFindings } from './page/findings.ts';
import { layOut } from './page/layout.ts';
import { fineFindings, uncheckedMeasures } from './page/rest.ts';
import { shell } from './page/shell.ts';
import { dataStory } from './page/story.ts';
import { cautionsAndNext, mast } from './page/top.ts';
import { checksums, workings } from './page/workings.ts';
import { gradeWord } from './words/grade.ts';
import { foreignText } from './words/sentence.ts';

/** The report as one page that needs nothing else: no network, and for all that it says no script. */
export async function renderHtml(report: Report): Promise<string> {
  const layout = layOut(report);
  const body = html`<main>${mast(layout)}${cautionsAndNext(layout)}${overview(layout)}${raisedFindings(layout)}${fineFindings(layout)}${uncheckedMeasures(layout)}${dataStory(layout)}${workings(report)}${checksums(report)}</main>${liveData(layout)}`;
  return shell(`${gradeWord(report.grade)}: ${foreignText(report.submission.primary.name)}`, body);
}
