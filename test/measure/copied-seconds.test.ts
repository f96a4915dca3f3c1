import { expect, test } from 'vitest';
import { copiedSeconds } from '../../src/measure/copied-seconds.ts';
import { normalise } from '../../src/normalise/index.ts';
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
  const began = performance.now();
  expect(of(long).value).toBeGreaterThanOrEqual(60);
  expect(performance.now() - began).toBeLessThan(500);
});
