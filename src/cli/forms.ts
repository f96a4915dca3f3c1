import path from 'node:path';
import { Problem } from '../problem.ts';
import { renderCsv, renderHtml, renderJson, renderMarkdown, renderText } from '../report/index.ts';
import type { Report } from '../types.ts';
import { asciiOnly, coloured, type Io, widthOf } from './io.ts';

/** Bytes of a report in Markdown: what fits into one comment where code is hosted. */
const commentBytes = 60_000;
/** Columns of a text report in a file. */
const fileColumns = 80;

export const forms = ['text', 'json', 'html', 'markdown', 'csv'] as const;
export type Form = (typeof forms)[number];

const endings: Readonly<Record<string, Form>> = {
  '.txt': 'text',
  '.json': 'json',
  '.html': 'html',
  '.htm': 'html',
  '.md': 'markdown',
  '.csv': 'csv',
};

/** The form that a file's ending chooses. */
export function formOf(file: string): Form {
  const ending = path.extname(file).toLowerCase();
  const form = Object.hasOwn(endings, ending) ? endings[ending] : undefined;
  if (form !== undefined) return form;
  throw new Problem({
    code: 'usage',
    what: 'the ending of the file must say which form the report takes',
    where: `--out ${file}`,
    hint: `End it with one of ${Object.keys(endings).join(', ')}`,
  });
}

/** The report in a form, for a file. */
export async function render(report: Report, form: Form): Promise<string> {
  switch (form) {
    case 'text':
      return renderText(report, { width: fileColumns, colour: false, ascii: false });
    case 'json':
      return renderJson(report);
    case 'html':
      return renderHtml(report);
    case 'markdown':
      return renderMarkdown(report, { limit: commentBytes });
    case 'csv':
      return renderCsv(report);
  }
}

/** The report in a form, for standard output: text fits itself to the terminal. */
export async function renderTo({ stdout, env }: Io, report: Report, form: Form): Promise<string> {
  if (form !== 'text') return render(report, form);
  return renderText(report, {
    width: widthOf(stdout),
    colour: coloured(stdout, env),
    ascii: asciiOnly(stdout, env),
  });
}
