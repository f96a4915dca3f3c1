import { expect, test } from 'vitest';
import { lostSeconds } from '../../src/measure/lost-seconds.ts';
import { SecondState, type Stretch } from '../../src/types.ts';
import { measuredOf } from './measure-of.ts';
import { alone, ride, seriesOf } from './series.ts';

const power = ride(3600);
const cadence = ride(3600, 2, 90, 3);
const inside = (i: number, stretches: readonly Stretch[]) => stretches.some(([a, b]) => i >= a && i < b);
const gaps = (state: number, stretches: readonly Stretch[], window?: Stretch) => {
  const series = seriesOf({ power: power.map((w, i) => (inside(i, stretches) ? Number.NaN : w)), cadence });
  for (const [a, b] of stretches) series.state.fill(state, a, b);
  return measuredOf(lostSeconds, 'recording-gap', alone(series, {}, window));
};

test('one long gap and many short ones within ten minutes weigh alike', () => {
  expect(gaps(SecondState.missing, [[1000, 1070]]).value).toBe(70);
  const many = Array.from({ length: 14 }, (_, k): Stretch => [1000 + 30 * k, 1005 + 30 * k]);
  expect(gaps(SecondState.missing, many).value).toBe(70);
  const spread = Array.from({ length: 14 }, (_, k): Stretch => [100 + 240 * k, 105 + 240 * k]);
  expect(gaps(SecondState.missing, spread)).toMatchObject({ value: 15, details: { total: { value: 70 } } });
});

test('pauses are no losses, and nothing counts outside the race', () => {
  expect(gaps(SecondState.paused, [[1000, 1300]])).toMatchObject({
    value: 0,
    details: { paused: { value: 300 } },
  });
  expect(gaps(SecondState.missing, [[1000, 1070]], [1050, 3600]).value).toBe(20);
});

test('zeros between hard pedalling and held channels count as lost', () => {
  const zeros = power.map((w, i) => (i >= 1000 && i < 1030 ? 0 : w));
  expect(measuredOf(lostSeconds, 'recording-gap', alone(seriesOf({ power: zeros, cadence }))).value).toBe(30);
  const coasting = cadence.map((c, i) => (i >= 1000 && i < 1030 ? 0 : c));
  const honest = alone(seriesOf({ power: zeros, cadence: coasting }));
  expect(measuredOf(lostSeconds, 'recording-gap', honest).value).toBe(0);
  const held = (column: number[]) => column.map((v, i) => (i >= 1000 && i < 1040 ? column[1000]! : v));
  const stalled = alone(seriesOf({ power: held(power), cadence: held(cadence) }));
  expect(measuredOf(lostSeconds, 'recording-gap', stalled).value).toBe(39);
});

test('what a weak rider loses counts as well as what a strong one loses', () => {
  const weak = power.map((w, i) => (i >= 1000 && i < 1030 ? 0 : Math.round(w / 3)));
  expect(measuredOf(lostSeconds, 'recording-gap', alone(seriesOf({ power: weak, cadence }))).value).toBe(30);
});

test('a link that keeps failing is seen by what is held, whatever other sensors say', () => {
  const held = (column: number[]) => column.map((_, i) => column[i - (i % 60 < 10 ? i % 60 : 0)]!);
  const heartRate = power.map((_, i) => 150 + (i % 7));
  const failing = seriesOf({ power: held(power), cadence: held(cadence), heartRate });
  expect(measuredOf(lostSeconds, 'recording-gap', alone(failing)).value).toBeGreaterThan(80);
});

test('a trainer that repeats its target loses nothing', () => {
  const target = power.map((_, i) => 200 + 20 * Math.floor(i / 300));
  const steady = cadence.map((_, i) => 90 + (Math.floor(i / 8) % 2));
  const told = seriesOf({ power: target, cadence: steady });
  expect(measuredOf(lostSeconds, 'recording-gap', alone(told)).value).toBeLessThan(10);
});

test('a meter may sleep while its rider stands', () => {
  const asleep = power.map((w, i) => (i >= 1000 && i < 1090 ? Number.NaN : w));
  const lost = (speed: number[]) =>
    measuredOf(lostSeconds, 'recording-gap', alone(seriesOf({ power: asleep, speed }))).value;
  expect(lost(power.map((_, i) => (i >= 1000 && i < 1090 ? 0 : 9)))).toBe(0);
  expect(lost(power.map(() => 9))).toBe(90);
});
