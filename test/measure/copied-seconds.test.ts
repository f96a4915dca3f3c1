import { expect, test } from 'vitest';
import { copiedSeconds } from '../../src/measure/copied-seconds.ts';
import { normalise } from '../../src/normalise/index.ts';
import type { CopiesChart } from '../../src/types.ts';
import { millisecondsOf } from '../cost.ts';
import { measuredOf } from './measure-of.ts';
import { alone, recordingOf, ride, seriesOf, start } from './series.ts';

const base = ride(7200);
const copied = (from: number, to: number, seconds: number, change = (watts: number) => watts) => {
  const power = [...base];
  for (let i = 0; i < seconds; i++) power[to + i] = change(base[from + i]!);
  return power;
};
const of = (power: number[]) => measuredOf(copiedSeconds, 'repeated-block', alone(seriesOf({ power })));

test('a ride does not repeat itself', () => {
  expect(of(base)).toMatchObject({ value: 0, stretches: [], charts: [] });
});

test('finds a copy of a minute, with both places', () => {
  const outcome = of(copied(1000, 4000, 60));
  expect(outcome.value).toBeGreaterThanOrEqual(60);
  expect(outcome.value).toBeLessThanOrEqual(62);
  expect(outcome.details).toMatchObject({ copies: 1, first: 1000, second: 4000 });
  expect(outcome.charts[0]).toMatchObject({ kind: 'copies', copies: [{ at: [1000, 4000] }] });
});

test('finds it raised by a constant', () => {
  const outcome = of(copied(1000, 4000, 200, (watts) => watts + 15));
  expect(outcome.value).toBe(200);
  expect(outcome.details).toMatchObject({ offset: { value: 15, unit: 'W' } });
});

test('a copy in pieces is one copy: zeros that were not lifted, a second written twice', () => {
  const power = copied(1000, 4000, 200, (watts) => watts + 15);
  power.fill(0, 4080, 4083);
  const outcome = of([...power.slice(0, 4140), power[4139]!, ...power.slice(4140)]);
  expect(outcome.details).toMatchObject({ copies: 1, first: 1000, second: 4000, pieces: 3 });
  expect(outcome.value).toBeGreaterThan(190);
  expect(outcome.value).toBeLessThanOrEqual(202);
  // Far from each other, they are two.
  const two = copied(1000, 4000, 80);
  for (let i = 0; i < 60; i++) two[5000 + i] = base[2000 + i]!;
  expect(of(two)).toMatchObject({ value: 80, details: { copies: 2, pieces: 1 } });
});

test('a sparing recorder is counted in seconds, and a break in it hardly at all', () => {
  const time = Float64Array.from({ length: 1800 }, (_, i) => start + 4 * i + (i >= 1250 ? 3600 : 0));
  const power = base.slice(0, 1800);
  for (let i = 0; i < 60; i++) power[1220 + i] = base[300 + i]!;
  const { series } = normalise(recordingOf({ power }, { time }), 'primary');
  const { value, charts } = measuredOf(copiedSeconds, 'repeated-block', alone(series));
  expect(value).toBe(4 * 59 + 10);
  // The chart counts seconds as the finding does: 59 samples stand for four, the break is left empty.
  const [copy] = (charts[0] as CopiesChart).copies;
  expect(copy).toMatchObject({ at: [1200, 1220 * 4], seconds: 4 * 59 + 10 });
  expect(copy!.first).toHaveLength(240);
  expect(copy!.first.slice(0, 8)).toEqual([...Array(4).fill(base[300]), ...Array(4).fill(base[301])]);
  expect(copy!.second.filter((watts) => watts === null)).toHaveLength(9);
});

test('constant stretches, repeated targets and even ramps tell nothing', () => {
  const targets = base.map((_, i) => [150, 280, 210][Math.floor(i / 90) % 3]!);
  expect(of(targets).value).toBe(0);
  expect(of(base.map((_, i) => Math.round(100 + 0.23 * (i % 600)))).value).toBe(0);
  expect(of(base.map((watts, i) => (i % 600 < 200 ? 0 : watts))).value).toBe(0);
});

test('a moment that was written twice is no copy', () => {
  const time = Float64Array.from(base, (_, i) => start + (i < 4000 ? i : i - 200));
  const power = base.map((_, i) => base[i < 4000 ? i : i - 200]!);
  const { series } = normalise(recordingOf({ power }, { time }), 'primary');
  expect(measuredOf(copiedSeconds, 'repeated-block', alone(series)).value).toBe(0);
});

test('eight hours take well under a second', () => {
  const long = ride(8 * 3600, 3);
  for (let i = 0; i < 60; i++) long[20_000 + i] = long[3000 + i]!;
  expect(of(long).value).toBeGreaterThanOrEqual(60);
  expect(millisecondsOf(() => of(long), 500)).toBeLessThan(500);
});
