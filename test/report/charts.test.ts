import { describe, expect, it } from 'vitest';
import { picture } from '../../src/report/chart/index.ts';
import { renderCharts } from '../../src/report/index.ts';
import type { Chart } from '../../src/types.ts';
import { makeCharts, makeReport } from './make-report.ts';

const setting = { id: 'c', marked: [[100, 130]] as const, meter: (subject: string) => subject };
const kinds = makeCharts(1800).map((chart) => [chart.kind, chart] as const);

/** The compiler names a kind that no chart below has. */
const every: Readonly<Record<Chart['kind'], true>> = {
  traces: true,
  sections: true,
  ratio: true,
  dependence: true,
  agreement: true,
  meters: true,
  efforts: true,
  curve: true,
  response: true,
  'close-ups': true,
  coverage: true,
  totals: true,
  comb: true,
  copies: true,
  plateaus: true,
  averaging: true,
  'speed-curve': true,
  climbs: true,
  traits: true,
};

describe('charts', () => {
  it('are tried in every kind', () => {
    expect(new Set(kinds.map(([kind]) => kind))).toEqual(new Set(Object.keys(every)));
  });

  it.each(kinds)('%s says what it shows in words and numbers, at any width', (_, chart) => {
    const made = picture(chart, setting);
    expect(made.title).not.toBe('');
    expect(made.description).toMatch(/[.]$/);
    expect(made.table.rows.length).toBeGreaterThan(0);
    for (const row of made.table.rows) expect(row).toHaveLength(made.table.head.length);
    for (const width of [280, 328, 760, 1200]) {
      const drawing = `${made.draw(width)}`;
      expect(drawing).toContain(`viewBox="0 0 ${width} `);
      expect(drawing).toContain('role="img"');
      expect(drawing).toContain('<title id="c-t">');
      expect(drawing).not.toMatch(/NaN|Infinity|undefined|null|style=/);
    }
  });

  it.each(kinds)('%s is the same drawing every time', (_, chart) => {
    expect(`${picture(chart, setting).draw(500)}`).toBe(`${picture(chart, setting).draw(500)}`);
  });

  it('stand with too little data as well', () => {
    const bare = (value: unknown): unknown => {
      if (Array.isArray(value)) return [];
      if (value === null || typeof value !== 'object') return value;
      return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, bare(one)]));
    };
    for (const [, chart] of kinds) {
      const empty = {
        ...(bare(chart) as Chart),
        ...('stretch' in chart ? { stretch: [0, 0] } : {}),
        ...('window' in chart ? { recording: [0, 0], window: [0, 0] } : {}),
      } as Chart;
      for (const width of [328, 760]) {
        const made = picture(empty, setting);
        expect(`${made.draw(width)}${made.description}`, chart.kind).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  it('are files of their own, named by their place and kind', () => {
    const files = renderCharts(makeReport({}, 600), { width: 760 });
    expect(files[0]!.name).toBe('01-traces.svg');
    expect(new Set(files.map(({ name }) => name)).size).toBe(files.length);
    for (const { svg } of files)
      expect(svg).toMatch(
        /^<\?xml version="1.0" encoding="UTF-8"\?>\n<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/,
      );
  });
});
