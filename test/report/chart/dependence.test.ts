import { expect, it } from 'vitest';
import { dependence } from '../../../src/report/chart/dependence.ts';
import type { DependenceChart } from '../../../src/types.ts';

const setting = { id: 'x', marked: [], meter: () => 'second' };

function chart(blocks: number): DependenceChart {
  const points = Array.from({ length: blocks }, (_, k) => ({ x: 150 + k / 4, percent: 95 + (k % 10) }));
  return { kind: 'dependence', id: 'd', subject: 'pair:1', of: 'power', unit: 'W', points, bands: [] };
}

it('draws every block, and of a long ride a regular choice, and says so', () => {
  const drawn = (blocks: number) => String(dependence(chart(blocks), setting).draw(760)).match(/h0/g)!.length;
  expect(dependence(chart(300), setting).description).toContain('300 blocks. Bars');
  expect(drawn(60)).toBe(60);
  expect(dependence(chart(1080), setting).description).toContain(
    '1080 blocks, of which one in 4 is shown. Bars',
  );
  expect(drawn(1080)).toBeLessThanOrEqual(270);
  expect(drawn(1080)).toBeGreaterThan(200);
});
