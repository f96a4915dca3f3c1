import { expect, it } from 'vitest';
import { grubbsVariances } from '../../src/math/grubbs.ts';
import { distanceFromOthers } from '../../src/measure/distance-from-others.ts';
import type { MetersChart, Place, Subjects } from '../../src/types.ts';
import { Random } from '../make/index.ts';
import { ruleOf } from './measure-of.ts';
import { ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 40, seconds: 2, places: ['crank', 'pedal', 'crank'] } as const;
const put = (all: Subjects) => distanceFromOthers.compute(all, null, ruleOf('odd-one-out').options as never);

it('names the meter of three that lies apart', () => {
  const found = put(subjectsOf(ridden('odd', ride, [{ gain: 1.12 }])));
  expect(found).toMatchObject({ state: 'measured', circumstances: [], details: { meter: 'primary' } });
  expect(found.state === 'measured' && Math.abs(found.value - 12)).toBeLessThan(1.5);
});

it('says when it is not the primary, and when there is no odd one', () => {
  const second = put(subjectsOf(ridden('second', ride, [{}, { gain: 0.88 }])));
  expect(second).toMatchObject({ circumstances: ['not the primary'], details: { meter: 'pair:0' } });
  const none = put(subjectsOf(ridden('none', ride, [{ gain: 1.08 }, { gain: 0.94 }])));
  expect(none.state === 'measured' && none.circumstances).toContain('no odd one');
});

it('asks nothing of seconds in which a link was lost and zeros were written', () => {
  const all = subjectsOf(ridden('lost', ride, []));
  const [from] = all.window;
  all.primary.channels.power!.fill(0, from + 600, from + 1500);
  const found = put(all);
  expect(found.state === 'measured' && Math.abs(found.value)).toBeLessThan(3);
});

it('needs three', () => {
  expect(put(subjectsOf(ridden('two', { ...ride, seconds: 1 }, [])))).toMatchObject({ reason: 'no-third' });
});

it('expects the farthest of three about where pairs are expected: scatter, zero offsets and loss in the chain', () => {
  const at = (places: readonly Place[]) => {
    const all = subjectsOf(ridden('odd', { ...ride, places }, [{ gain: 1.12 }]));
    const found = put(all);
    if (found.state !== 'measured') throw new Error(found.state);
    const { meters } = found.charts[0] as MetersChart;
    const single = all.rider.devices!.map(({ sides }) => sides === 1);
    return { spread: found.expected!.field.spread, watts: meters.map(({ watts }) => watts), single };
  };
  const { spread, watts, single } = at(['crank', 'pedal', 'crank']);
  // 3.2 % (Maier et al. 2017), a quarter of a newton metre, 2.36 W, and 3 % where one leg is doubled; of the mean of
  // two each has a quarter.
  const of = (power: number, k: number) => 3.2 ** 2 + (236 / power) ** 2 + (single[k] ? 9 : 0);
  const [own, second, third] = watts.map(of) as [number, number, number];
  // One in twenty outside, whichever of three lies farthest: 2.394 in place of 1.960.
  const farthest = 2.394 / 1.96;
  expect(spread).toBeCloseTo(farthest * Math.sqrt(own + (second + third) / 4), 2);
  const across = at(['crank', 'hub', 'trainer']);
  expect(across.spread).toBeGreaterThan(farthest * Math.hypot(3.2 * Math.sqrt(1.5), 1.9));
});

it('recovers the error variances of three instruments by the estimator of Grubbs', () => {
  const random = new Random('grubbs');
  const truth = Float64Array.from({ length: 5000 }, () => random.normal(0, 10));
  const readings = [1, 2, 3].map((sd) => truth.map((value) => value + random.normal(0, sd)));
  const found = grubbsVariances(readings).map(Math.sqrt);
  for (const [i, sd] of [1, 2, 3].entries()) expect(Math.abs(found[i]! - sd)).toBeLessThan(0.25);
});
