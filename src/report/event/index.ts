export { caseReadme } from './case-words.ts';
export { renderOverview } from './overview.ts';
export { type RunMark, renderRunSummary, runMarks } from './run.ts';
export { failedSaid, stoppedSaid } from './run-words.ts';
export { renderSummaryCsv, renderSummaryMarkdown } from './summary.ts';
export { countsSaid, crossCheckLines, gradeSaid, openSaid, togetherSaid } from './words.ts';
