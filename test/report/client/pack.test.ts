import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLive, pack, packChart, unpack, unpackChart } from '../../../src/report/client/pack.ts';
import { makeCharts } from '../make-report.ts';

describe('pack', () => {
  it('is plain text, a character for a small change', () => {
    expect(pack([200, 201, 201, null, 175, 300])).toEqual({ scale: 1, changes: '!ra._Z:u' });
    expect(pack([260, 0, 27, 0, 261, 0])).toEqual({ scale: 1, changes: '~z~Z+a+A(261)(-261)' });
    expect(pack([1.5, 1.5])).toEqual({ scale: 10, changes: 'o.' });
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
  it('gives back the ride as it is, and blocks as finely as a drawing shows', () => {
    for (const chart of makeCharts(1800).filter(isLive)) {
      const back = unpackChart(packChart(chart));
      if (chart.kind === 'traces' || back.kind === 'traces') {
        expect(back).toEqual(chart);
        continue;
      }
      expect({ ...back, blocks: null, trend: null }).toEqual({ ...chart, blocks: null, trend: null });
      expect(back.blocks).toHaveLength(chart.blocks.length);
      for (const [i, block] of chart.blocks.entries()) {
        for (const [name, value] of Object.entries(block)) {
          const finest = name === 'percent' ? 0.01 : name === 'watts' ? 1 : 0.1;
          const off = Math.abs(Object.entries(back.blocks[i]!).find(([other]) => other === name)![1] - value);
          expect(off, name).toBeLessThanOrEqual(finest / 2 + 1e-9);
        }
      }
    }
  });
});
