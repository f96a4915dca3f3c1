import { SaxesParser } from 'saxes';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { picture } from '../../src/report/chart/index.ts';
import { redact, renderCsv, renderHtml, renderMarkdown, renderText } from '../../src/report/index.ts';
import { withName } from './hostile.ts';
import { makeCharts, makeReport } from './make-report.ts';
import { payloads } from './payloads.ts';

const report = makeReport({}, 600);
const names = payloads.filter((name) => name.trim() !== '');

/** Elements and attribute names in order; throws when the text is not well formed. */
function structure(markup: string): string {
  const seen: string[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const id = attributes.id ?? '';
    seen.push(`<${name} ${Object.keys(attributes).join(' ')} ${id} ${attributes.href ?? ''}`);
  });
  parser.on('closetag', ({ name }) => seen.push(`</${name}`));
  parser.write(markup).close();
  return seen.join('\n');
}
/** The body without its two scripts, whose text is no markup. */
const bodyOf = (page: string) =>
  page
    .slice(page.indexOf('<body>'), page.indexOf('</html>'))
    .replace(/(<script[^>]*>).*?<\/script>/gs, '$1</script>');

describe('a page', () => {
  it('has the same elements whatever strangers call things', async () => {
    const expected = structure(bodyOf(await renderHtml(withName(report, 'x'))));
    expect(expected.length).toBeGreaterThan(1000);
    for (const name of names) {
      const page = await renderHtml(withName(report, name));
      expect(structure(bodyOf(page)), name).toBe(expected);
      expect(page.match(/<title>/g)!.length, name).toBeGreaterThan(0);
      expect(page.slice(0, page.indexOf('<body>')).match(/<[^>]*>/g)!.length, name).toBe(13);
    }
  });
});

describe('a drawing', () => {
  it('is well-formed XML whatever strangers call things', () => {
    for (const name of payloads) {
      const { charts } = withName({ ...report, charts: makeCharts(600) }, name);
      for (const chart of charts) {
        const made = picture(chart, { id: 'c', marked: [[3, 9]], meter: () => name });
        expect(() => structure(`${made.draw(400)}`), `${chart.kind} ${name}`).not.toThrow();
      }
    }
  });
});

describe('a terminal or log', () => {
  it('gets no control character, no command and no line that is too long', () => {
    for (const name of payloads) {
      for (const width of [40, 80]) {
        const text = renderText(withName(report, name), { width, colour: false, ascii: false });
        expect(text, name).not.toMatch(/[^\P{Cc}\n]|\p{Cs}|[\u202a-\u202e\u2066-\u2069\u2028\u2029]/u);
        expect(text, name).not.toMatch(/::|##\[/);
        for (const line of text.split('\n')) expect(stringWidth(line), line).toBeLessThanOrEqual(width);
      }
    }
  });

  it('gets nothing but ASCII when it knows nothing else', () => {
    for (const name of payloads) {
      expect(renderText(withName(report, name), { width: 80, colour: false, ascii: true })).toMatch(
        /^[\x20-\x7e\n]*$/,
      );
    }
  });

  it('is styled by nothing but the three styles of the form', () => {
    for (const name of names) {
      const text = renderText(withName(report, name), { width: 80, colour: true, ascii: false });
      expect(text.replace(/\u001b\[(1|2|4|22|24)m/g, ''), name).not.toMatch(/[^\P{Cc}\n]/u);
    }
  });
});

describe('Markdown', () => {
  /** What is left when code spans, our own elements and drawings are taken out. */
  const bare = (markdown: string) =>
    markdown
      .replace(/```mermaid\n[^`]*\n```/g, '')
      .replace(/(`+)(?!`)[\s\S]*?(?<!`)\1(?!`)/g, '')
      .replace(/<\/?(details|summary)>/g, '');

  it('keeps strangers’ words from being links, images, mentions, elements or cells', () => {
    const rows = (markdown: string) => markdown.split('\n').filter((line) => line.startsWith('|')).length;
    const expected = rows(renderMarkdown(withName(report, 'x'), { limit: 60_000 }));
    for (const name of names) {
      const markdown = renderMarkdown(withName(report, name), { limit: 300_000 });
      expect(rows(markdown), name).toBe(expected);
      expect(bare(markdown), name).not.toMatch(/<|(?<!\\)\]\(|@\w|#\d|https?:\/\/|www\.|::error/);
      expect(markdown, name).not.toMatch(/[^\P{Cc}\n]/u);
    }
  });
});

describe('CSV', () => {
  /** RFC 4180. */
  const rows = (csv: string) =>
    [...csv.matchAll(/((?:(?:"(?:[^"]|"")*"|[^",\r\n]*)(?:,|(?=\r\n)))+)\r\n/g)].map(([, row]) =>
      [...row!.matchAll(/("(?:[^"]|"")*"|[^",\r\n]*)(?:,|$)/g)].map(([, cell]) => cell!).slice(0, 19),
    );

  it('has the same cells in every row, and none that a spreadsheet would run', () => {
    for (const name of payloads) {
      const csv = renderCsv(withName(report, name));
      const table = rows(csv);
      expect(table.length, name).toBe(1 + report.measurements.length);
      for (const row of table) {
        expect(row.length, name).toBe(19);
        for (const cell of row) {
          const inside = cell.replace(/^"/, '');
          if (!/^-?\d+(\.\d+)?$/.test(inside)) expect(inside, name).not.toMatch(/^\s*[=+\-@]/);
        }
      }
    }
  });
});

describe('a redacted report', () => {
  it('can be made of any', async () => {
    for (const name of payloads)
      await expect(renderHtml(redact(withName(report, name)))).resolves.toContain('redacted');
  });
});
