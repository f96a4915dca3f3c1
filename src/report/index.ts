export { clean } from './clean.ts';
export { renderCsv } from './csv.ts';
export { renderHtml } from './html.ts';
export { renderJson } from './json.ts';
export { renderText, type TextOptions } from './text.ts';
