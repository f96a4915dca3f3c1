export { renderOverview } from './overview.ts';
export { renderSummaryCsv, renderSummaryMarkdown } from './summary.ts';
export { countsSaid, crossCheckLines, gradeSaid, openSaid, togetherSaid } from './words.ts';
