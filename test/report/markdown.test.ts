import { describe, expect, it } from 'vitest';
import { renderMarkdown } from '../../src/report/index.ts';
import { code, text } from '../../src/report/markdown.ts';
import { makeReport } from './make-report.ts';
import { payloads } from './payloads.ts';

const report = makeReport({}, 3600);
const whole = renderMarkdown(report, { limit: 60_000 });
const bytes = (markdown: string) => new TextEncoder().encode(markdown).length;

describe('renderMarkdown', () => {
  it('says the grade first, then a table of what was found', () => {
    expect(whole.split('\n')[0]).toBe('## Refer. Put this before the jury.');
    const rows = whole.split('\n').filter((line) => line.startsWith('|'));
    expect(rows.map((row) => row.split(' | ')[0])).toEqual([
      '| level',
      '| ---',
      '| refer',
      '| query',
      '| note',
    ]);
  });

  it('shows the evidence in a row of blocks, and at most two drawings with a legend in words', () => {
    expect(whole).toMatch(/`[▁▂▃▄▅▆▇█ ]+`/);
    expect(whole.match(/```mermaid\n/g)).toHaveLength(2);
    expect(whole).toContain('Lines: primary over second (blue), equal (orange).');
  });

  it('draws with our own words, numbers and colours alone', () => {
    for (const [, source] of whole.matchAll(/```mermaid\n([\s\S]*?)\n```/g)) {
      expect(source).toMatch(/^%%\{init: .*plotColorPalette.*\}%%\nxychart-beta\n/);
      const [, places] = /x-axis \[(.*)\]/.exec(source!)!;
      const count = places!.split(', ').length;
      expect(count).toBeLessThanOrEqual(18);
      for (const [, line] of source!.matchAll(/line \[(.*)\]/g))
        expect(line!.split(', ')).toHaveLength(count);
      expect(source).not.toMatch(/race-primary|Maker/);
    }
  });

  it('names the fact that a check lacks, once', () => {
    expect(whole.replace(/\s+/g, ' ')).toContain('- Body mass was not given. Is anything unusual? -');
  });

  it('keeps to the limit, and says how much it left out', () => {
    for (const limit of [1500, 3000]) {
      const cut = renderMarkdown(report, { limit });
      expect(bytes(cut)).toBeLessThanOrEqual(limit);
      expect(cut).toMatch(/Left out here for length: \d+\u00a0parts?\./);
    }
    expect(whole).not.toContain('Left out');
  });
});

describe('text', () => {
  it('is read by Markdown as it stands', () => {
    expect(text('*a* _b_ [c](d) `e` <f> & @g #1 | ~h~ !i')).toBe(
      '\\*a\\* \\_b\\_ \\[c\\](d) \\`e\\` &lt;f&gt; &amp; @\u2060g #\u20601 \\| \\~h\\~ \\!i',
    );
  });
});

describe('code', () => {
  it('is fenced by more backticks than it holds', () => {
    for (const name of payloads) {
      const span = code(name);
      const [, fence, inside] = /^(`+)(?!`)([\s\S]*?)(?<!`)\1$/.exec(span)!;
      expect(inside!.includes(fence!), name).toBe(false);
      expect(span).not.toMatch(/\n|(?<!\\)\|/);
    }
  });
});
