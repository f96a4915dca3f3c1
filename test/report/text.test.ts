import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { renderText } from '../../src/report/index.ts';
import { wrap } from '../../src/report/wrap.ts';
import type { Report } from '../../src/types.ts';
import { makeReport } from './make-report.ts';

const report = makeReport({}, 1800);
const plainly = { width: 80, colour: false, ascii: false };

describe('renderText', () => {
  const lines = renderText(report, plainly).split('\n');

  it('says the grade and its reach first', () => {
    expect(lines[0]).toBe('Refer. Put this before the jury.');
    expect(lines[1]).toContain('6\u00a0'.trim());
    expect(lines.slice(0, 6).join(' ')).toContain('could not be made');
  });

  it('tells findings by level, then what could not be checked', () => {
    const heads = [
      'To put before the jury',
      'To ask the rider about',
      'Worth knowing',
      'What to do next',
      'Checked and found fine',
      'What could not be checked, and why',
      'The recordings',
    ];
    expect(lines.filter((line) => heads.includes(line))).toEqual(heads);
  });

  it('is plain without colour, and only styled with it', () => {
    const coloured = renderText(report, { ...plainly, colour: true });
    expect(coloured).toContain('\u001b[1m');
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(renderText(report, plainly));
  });

  it('keeps to widths that can be read', () => {
    for (const [asked, most] of [
      [0, 40],
      [60, 60],
      [1e9, 100],
    ] as const) {
      const widths = renderText(report, { ...plainly, width: asked })
        .split('\n')
        .map((line) => stringWidth(line));
      expect(Math.max(...widths)).toBeLessThanOrEqual(most);
    }
  });

  it('is the same text every time', () => {
    expect(renderText(makeReport({}, 1800), plainly)).toBe(renderText(report, plainly));
  });
});

describe('wrap', () => {
  it('keeps every word, in order, within the width', () => {
    const words = fc.array(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }).filter((word) => !/\s/.test(word)),
    );
    fc.assert(
      fc.property(words, fc.integer({ min: 10, max: 60 }), (list, width) => {
        const made = wrap(list.join(' '), width);
        expect(made.join('').replaceAll(' ', '')).toBe(list.join(''));
        for (const line of made) expect(stringWidth(line)).toBeLessThanOrEqual(width);
      }),
    );
  });

  it('tells where both meters agree and where not, kind by kind, and each of several beside the others', () => {
    const text = renderText(report, plainly).replace(/\s+/g, ' ');
    expect(text).toContain(
      '· 4 sprints – mean power: 702.5 W; primary against second: 15.4 % (12.1 to 18.7 %)',
    );
    expect(text).toContain('· 3 climbs – mean power: 288 W; primary against second: 1.9 % ·');
    expect(text).toContain('· primary over second – difference: 4.2 %');
  });

  it('names the facts that checks lack, once where they lack the same, and each beside its question elsewhere', () => {
    const said = (measurements: Report['measurements']) =>
      renderText({ ...report, measurements }, plainly).replace(/\s+/g, ' ');
    expect(said(report.measurements)).toContain('· Body mass was not given. Is anything unusual? ·');
    const lacking = report.measurements.find(({ reason }) => reason?.id === 'no-fact')!;
    const other = { ...lacking, reason: { id: 'no-fact' as const, values: { fact: 'age' } } };
    const question = String.raw`Is anything unusual\? \(rider\)`;
    expect(said([lacking, lacking])).toMatch(
      new RegExp(String.raw`· Body mass was not given\. ${question} ${question} Where both meters agree`),
    );
    expect(said([lacking, other])).toMatch(
      new RegExp(
        String.raw`· A fact it needs was not given\. ${question} \(body mass was not given\) ${question} \(“?age”? was not given\)`,
      ),
    );
  });
});
