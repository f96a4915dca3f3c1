import { expect, test } from 'vitest';
import { spikeCount } from '../../src/measure/spike-count.ts';
import { measuredOf } from './measure-of.ts';
import { alone, recordingOf, ride, seriesOf } from './series.ts';

const base = ride(3600);
const withValues = (at: number, ...watts: number[]) =>
  base.map((w, i) => (i >= at && i < at + watts.length ? watts[i - at]! : w));
const count = (power: number[], rest: { indoors?: boolean; speed?: number[] } = {}) => {
  const { speed, indoors = true } = rest;
  const recording = recordingOf({ power, ...(speed && { speed }) }, { indoors });
  return measuredOf(spikeCount, 'power-spike', alone(seriesOf({}, { recording })));
};

test('one false sample between zeros is found', () => {
  const outcome = count(withValues(500, 0, 0, 1336, 0, 0));
  expect(outcome).toMatchObject({ value: 1, stretches: [[502, 503]] });
  expect(outcome.details).toMatchObject({ highest: { value: 1336, unit: 'W' } });
});

test('two seconds wide still counts, a sprint does not', () => {
  expect(count(withValues(500, 1200, 1150)).value).toBe(1);
  expect(count(withValues(500, 420, 760, 980, 1100, 1090, 1000, 930, 800, 500)).value).toBe(0);
  expect(count(withValues(500, 0, 0, 380, 460, 440, 400)).value).toBe(0);
});

test('missing samples around do not hide it', () => {
  expect(count(withValues(500, Number.NaN, 0, 1400, Number.NaN, 0)).value).toBe(1);
});

test('outdoors, energy that became speed was ridden', () => {
  const power = withValues(500, 900);
  const faster = base.map((_, i) => (i <= 500 ? 6 : 7.4));
  expect(count(power, { indoors: false, speed: faster }).value).toBe(0);
  expect(count(power, { indoors: false, speed: base.map(() => 6) }).value).toBe(1);
  expect(count(power, { indoors: true, speed: faster }).value).toBe(1);
});

test('what no rider makes counts second by second, however long it lasts', () => {
  // One place, and not six.
  expect(count(withValues(500, 65_535, 65_535, 65_535, 65_535, 65_535, 65_535))).toMatchObject({
    value: 6,
    stretches: [[500, 506]],
    details: { spikes: 6, places: 1 },
  });
  // Where recording broke off in between there are two.
  const { stretches } = count(withValues(500, 65_535, Number.NaN, 65_535, 65_535));
  expect(stretches).toEqual([
    [500, 501],
    [502, 504],
  ]);
  expect(count(base.map((_, i) => (i % 2 === 0 ? 65_535 : -50))).value).toBe(1800);
  expect(count(withValues(500, 900, 1800, 2600, 2900, 2990, 2700, 2000, 1200)).value).toBe(0);
});
