export { clean } from './clean.ts';
export { renderCsv } from './csv.ts';
export { renderHtml } from './html.ts';
export { renderJson } from './json.ts';
export { type MarkdownOptions, renderMarkdown } from './markdown.ts';
export { redact } from './redact.ts';
export { renderText, type TextOptions } from './text.ts';
