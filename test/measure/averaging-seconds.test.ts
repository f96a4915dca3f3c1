import { expect, test } from 'vitest';
import { averagingSeconds } from '../../src/measure/averaging-seconds.ts';
import { SecondState } from '../../src/types.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, seriesOf, uniform } from './series.ts';

/** 1/f noise, as legs make it: wanders of doubling length added up. Unrounded watts. */
function pedalling(seconds: number, seed: number): number[] {
  const random = uniform(seed);
  const keeps = [0, 0.5, 0.75, 0.88, 0.94, 0.97, 0.985];
  const states = keeps.map(() => 0);
  return Array.from({ length: seconds }, () => {
    let watts = 230;
    keeps.forEach((keep, k) => {
      const push = random() + random() + random() - 1.5;
      states[k] = keep * states[k]! + Math.sqrt(1 - keep * keep) * push;
      watts += 14 * states[k]!;
    });
    return watts;
  });
}

const raw = pedalling(5400, 4);
const whole = (watts: number[]) => watts.map((one) => Math.max(0, Math.round(one)));
const plain = (seconds: number) =>
  raw.map((_, i) => {
    const last = raw.slice(Math.max(0, i - seconds + 1), i + 1);
    return last.reduce((a, b) => a + b, 0) / last.length;
  });
const weighted = (seconds: number) => {
  const keep = Math.exp(-2 / seconds);
  let state = raw[0]!;
  return raw.map((watts) => {
    state = keep * state + (1 - keep) * watts;
    return state;
  });
};
const of = (power: number[]) =>
  measuredOf(averagingSeconds, 'over-smoothed', alone(seriesOf({ power: whole(power) })));

test('a crisp trace is one of about a second', () => {
  expect(of(raw).value).toBeLessThan(2);
});

test.each([5, 10, 30])('a plain mean over %i s is told to the second', (seconds) => {
  expect(of(plain(seconds))).toMatchObject({
    value: seconds,
    interval: [seconds - 0.5, seconds + 0.5],
    details: { averaging: 'plain mean' },
  });
});

test.each([6, 12])('a weighted mean of the same age as %i s is told about right', (seconds) => {
  const outcome = of(weighted(seconds));
  expect(Math.abs(Math.log(outcome.value / seconds))).toBeLessThan(0.4);
  expect(outcome.interval[0]).toBeLessThan(outcome.value);
  expect(outcome.details.averaging).toBe('weighted mean');
});

test('smoothing switched on in mid-ride shows in the half that it fills', () => {
  const smooth = plain(12);
  const outcome = of(raw.map((watts, i) => (i < 1500 ? watts : smooth[i]!)));
  expect(outcome).toMatchObject({ value: 12, details: { part: 'in one half of the ride' } });
  expect(outcome.stretches[0]![0]).toBeGreaterThan(2000);
});

test('so it does where the meter itself averages over two seconds, and dips there throughout', () => {
  const crisp = plain(2);
  const smooth = crisp.map((_, i) => {
    const last = crisp.slice(Math.max(0, i - 11), i + 1);
    return last.reduce((a, b) => a + b, 0) / last.length;
  });
  const outcome = of(crisp.map((watts, i) => (i < 2800 ? watts : smooth[i]!)));
  expect(outcome.details).toMatchObject({ part: 'in one half of the ride' });
  expect(outcome.interval[0]).toBeGreaterThan(5);
});

test('a meter that works in coarse steps looks no more averaged for it', () => {
  const step = (watts: number, by: number) => by * Math.round(watts / by);
  // Even legs on a meter that averages over a second: next to nothing is left between the steps.
  const even = weighted(3).map((watts) => 230 + 0.2 * (watts - 230));
  const { value } = of(even);
  for (const by of [2, 3, 4]) {
    expect(Math.abs(Math.log(of(even.map((watts) => step(watts, by))).value / value))).toBeLessThan(0.6);
  }
});

test('the chart dips at the seconds of averaging', () => {
  const chart = of(plain(10)).charts[0]!;
  if (chart.kind !== 'averaging') throw new Error(chart.kind);
  expect(chart.correlation.indexOf(Math.min(...chart.correlation)) + 1).toBe(10);
});

test('the chart of a weighted mean, which leaves no dip, shows its short means scatter less', () => {
  const chart = of(weighted(10)).charts[0]!;
  if (chart.kind !== 'averaging') throw new Error(chart.kind);
  expect(chart.correlation).toEqual([]);
  expect(chart.scatter.map(({ span }) => span)).toEqual([2, 4, 8, 16]);
  expect(chart.scatter[0]!.watts).toBeLessThan(0.5 * chart.scatter[3]!.watts);
});

test('a recorder that leaves seconds out cannot be asked', () => {
  const sparse = seriesOf({ power: whole(raw) });
  for (let i = 0; i < sparse.length; i++) if (i % 4 > 0) sparse.state[i] = SecondState.bridged;
  const outcome = outcomeOf(averagingSeconds, 'over-smoothed', alone(sparse));
  // No record follows another.
  expect(outcome).toMatchObject({ reason: 'irregular-recorder', values: { share: 0 } });
});
