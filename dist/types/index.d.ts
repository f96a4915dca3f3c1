/**
 * The library, for Node and for pages: no module reachable from here touches disk, network or clock.
 *
 *     const report = await audit({ primary, seconds: [], rider: {}, race: {}, profile: null, otherInputs: [] }, await ruleSet());
 *     const page = await renderHtml(report);
 */
export { audit, type Stage, type Submission } from './audit.ts';
export { Problem, type ProblemCode, sentence } from './problem.ts';
export { compileProfile, type ProfileOptions } from './profile.ts';
export { type ChartFile, type LetterFrame, redact, renderCharts, renderCsv, renderHtml, renderJson, renderLetter, renderMarkdown, renderText, type TextOptions, } from './report/index.ts';
export { ruleSet, shipped } from './rules.ts';
export type * from './types.ts';
