import { expect, test } from 'vitest';
import { deviation, stepOf } from '../../../src/measure/recording/wander.ts';
import { uniform } from '../series.ts';

test('is the spread of differences of neighbouring means', () => {
  const random = uniform(3);
  // Sums of twelve: as good as normal, SD 20.
  const noise = Float64Array.from({ length: 40_000 }, () => {
    let sum = -6;
    for (let k = 0; k < 12; k++) sum += random();
    return 300 + Math.round(20 * sum);
  });
  for (const span of [1, 4, 9]) {
    // Two independent means of `span` values: 20·√(2/span).
    expect(deviation(noise, span).whole / (20 * Math.sqrt(2 / span))).toBeCloseTo(1, 1);
  }
  expect(deviation(noise, 4).without).toHaveLength(10);
});

test('takes off what rounding adds, and skips what is missing', () => {
  const slow = Float64Array.from({ length: 20_000 }, (_, i) => Math.round(200 + 0.3 * Math.sin(i)));
  expect(deviation(slow, 2).whole).toBeLessThan(0.4);
  const gappy = Float64Array.from({ length: 100 }, (_, i) => (i % 10 === 9 ? Number.NaN : i % 10));
  expect(deviation(gappy, 4).pairs).toBe(20);
  expect(deviation(gappy, 5)).toMatchObject({ pairs: 0, whole: 0 });
});

test('knows the steps of a meter, and measures the same through them', () => {
  const random = uniform(5);
  const noise = Float64Array.from(
    { length: 20_000 },
    () => 200 + 12 * (random() + random() + random() - 1.5),
  );
  const steps = (by: number) => noise.map((watts) => by * Math.round(watts / by));
  const fine = deviation(steps(1), 2).whole;
  expect(stepOf(steps(10))).toBe(10);
  for (const by of [1, 2, 5]) {
    expect(stepOf(steps(by))).toBe(by);
    expect(deviation(steps(by), 2).whole / fine).toBeCloseTo(1, 1);
  }
  expect(stepOf(new Float64Array(0))).toBe(1);
});
