import { describe, expect, it } from 'vitest';
import type { Blocks } from '../../../src/measure/pair/blocks.ts';
import { effectOf, fitRatio, halfInterval } from '../../../src/measure/pair/ratio-fit.ts';
import { rampWander, wander } from '../../make/noise.ts';
import { Random } from '../../make/random.ts';

const count = 120;
const seconds = 30;

/** Blocks of an hour: a ratio of the two meters as told, with noise of 1.5 % and what else is wanted. */
function hour(random: Random, ratio: (i: number, watts: number, rpm: number) => number): Blocks {
  const column = () => new Float64Array(count);
  const [at, own, other, cadence, speed] = [column(), column(), column(), column(), column()];
  const [rise, turn] = [column(), column()];
  const within = random.fork('within');
  for (let i = 0; i < count; i++) {
    at[i] = (i + 0.5) * seconds;
    const watts = 200 * Math.exp(0.2 * random.normal());
    cadence[i] = 85 + 6 * random.normal();
    speed[i] = 36 + random.normal();
    own[i] = watts * Math.exp(ratio(i, watts, cadence[i]!) + 0.015 * random.normal());
    other[i] = watts;
    rise[i] = 0.01 * within.normal();
    turn[i] = 0.01 * within.normal();
  }
  return { at, own, other, cadence, cadenceOfWork: cadence, speedOfWork: speed, rise, turn, count };
}

describe.each([
  ['exponential memory', wander],
  ['ramps', rampWander],
])('with meters that wander by 0.4 %%, with %s', (_, make) => {
  it('holds the growth about as often as a 95 % interval is to, which the quick part alone does not', () => {
    const random = new Random('growth');
    const draws = 300;
    let held = 0;
    let heldByQuick = 0;
    for (let draw = 0; draw < draws; draw++) {
      const slow = make(random, count, seconds, 600);
      const blocks = hour(random, (i) => 0.03 * ((2 * i) / (count - 1) - 1) + 0.004 * slow[i]!);
      const { coefficient, half, quick } = effectOf(fitRatio(blocks, 'time')!, 'time')!;
      if (Math.abs(coefficient - 0.03) <= half) held++;
      if (Math.abs(coefficient - 0.03) <= quick) heldByQuick++;
    }
    expect(held / draws).toBeGreaterThan(0.92);
    expect(held / draws).toBeLessThan(0.985);
    expect(heldByQuick / draws).toBeLessThan(0.9);
  });
});

it('tells an error that grows with power throughout, and one that begins at the median, alike', () => {
  const random = new Random('slopes');
  const mean = (asked: 'power' | 'cadence', ratio: (watts: number, rpm: number) => number) => {
    let sum = 0;
    for (let draw = 0; draw < 60; draw++) {
      const blocks = hour(random, (_, watts, rpm) => ratio(watts, rpm));
      sum += effectOf(fitRatio(blocks, asked)!, asked)!.coefficient;
    }
    return sum / 60;
  };
  expect(mean('power', (watts) => 0.1 * Math.log(watts / 200))).toBeCloseTo(0.1, 2);
  expect(mean('power', (watts) => 0.1 * Math.max(0, Math.log(watts / 200)))).toBeCloseTo(0.1, 2);
  // A slope below the median, as a zero offset leaves it, is none above.
  expect(mean('power', (watts) => 0.1 * Math.min(0, Math.log(watts / 200)))).toBeCloseTo(0, 2);
  expect(mean('cadence', (watts, rpm) => 0.002 * rpm + 0.1 * Math.log(watts / 200))).toBeCloseTo(0.002, 3);
});

it('widens the interval of a sum of coefficients by those that it holds', () => {
  const blocks = hour(new Random('sum'), () => 0);
  const ratio = fitRatio(blocks, 'time')!;
  const level = halfInterval(ratio, [[0, 1]]);
  const both = halfInterval(ratio, [
    [0, 1],
    [1, 1],
  ]);
  expect(both).toBeGreaterThan(level);
  expect(both).toBeLessThan(level + effectOf(ratio, 'time')!.half);
});
