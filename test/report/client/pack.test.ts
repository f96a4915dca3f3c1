import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLive, pack, packChart, unpack, unpackChart } from '../../../src/report/client/pack.ts';
import { makeCharts } from '../make-report.ts';

describe('pack', () => {
  it('is plain text, a character for a small change', () => {
    expect(pack([200, 201, 201, null, 175, 300])).toEqual({ scale: 1, changes: '(200)a0_Z(125)' });
    expect(pack([1.5, 1.5])).toEqual({ scale: 10, changes: 'o0' });
  });

  it('gives back every whole number and every tenth', () => {
    const tenths = fc.integer({ min: -20_000, max: 20_000 }).map((value) => value / 10);
    const whole = fc.integer({ min: -2000, max: 2000 });
    for (const number of [whole, tenths]) {
      fc.assert(
        fc.property(fc.array(fc.option(number)), (values) => {
          expect(unpack(pack(values))).toEqual(values);
        }),
      );
    }
  });
});

describe('packChart', () => {
  it('gives back the chart', () => {
    for (const chart of makeCharts(1800).filter(isLive)) expect(unpackChart(packChart(chart))).toEqual(chart);
  });
});
