import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { settings } from '../../src/history/settings.ts';
import { meanMaximal } from '../../src/math/mean-maximal.ts';
import { timesAsLong } from '../cost.ts';

/** The definition, spelled out: every window summed afresh. */
function plainly(power: readonly number[], duration: number): number {
  if (duration > power.length || power.every(Number.isNaN)) return Number.NaN;
  let best = -Infinity;
  for (let from = 0; from + duration <= power.length; from++) {
    let sum = 0;
    for (let i = from; i < from + duration; i++) sum += Number.isNaN(power[i]) ? 0 : power[i]!;
    best = Math.max(best, sum / duration);
  }
  return best;
}

const watts = fc.oneof(
  { weight: 9, arbitrary: fc.integer({ min: 0, max: 1500 }) },
  { weight: 1, arbitrary: fc.constant(Number.NaN) },
);

describe('meanMaximal', () => {
  it('equals the plain definition at every duration', () => {
    fc.assert(
      fc.property(fc.array(watts, { minLength: 1, maxLength: 60 }), (power) => {
        const durations = power.map((_, i) => i + 1);
        const { watts: got, from } = meanMaximal(Float64Array.from(power), durations);
        for (const [k, duration] of durations.entries()) {
          const expected = plainly(power, duration);
          if (Number.isNaN(expected)) expect(got[k]).toBeNaN();
          else expect(got[k]).toBeCloseTo(expected, 9);
          if (from[k]! >= 0) {
            const window = power.slice(from[k]!, from[k]! + duration);
            expect(plainly(window, duration) || 0).toBeCloseTo(got[k]!, 9);
          }
        }
      }),
    );
  });

  it('never rises by losing samples', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 1500 }), { minLength: 5, maxLength: 60 }),
        fc.nat(),
        (power, at) => {
          const gappy = Float64Array.from(power);
          gappy[at % power.length] = Number.NaN;
          const durations = [1, 2, 3, 5];
          const whole = meanMaximal(Float64Array.from(power), durations).watts;
          const less = meanMaximal(gappy, durations).watts;
          for (let k = 0; k < durations.length; k++) expect(less[k]!).toBeLessThanOrEqual(whole[k]!);
        },
      ),
    );
  });

  it('counts a missing second as zero watts and keeps to clock time', () => {
    const power = Float64Array.from([300, Number.NaN, 300, 100]);
    expect([...meanMaximal(power, [1, 2, 3]).watts]).toEqual([300, 200, 200]);
  });

  it('says nothing where there is no window or no power', () => {
    expect([...meanMaximal(Float64Array.of(200, 210), [3]).watts]).toEqual([Number.NaN]);
    expect([...meanMaximal(new Float64Array(5).fill(Number.NaN), [1]).from]).toEqual([-1]);
    expect([...meanMaximal(new Float64Array(0), [1]).watts]).toEqual([Number.NaN]);
  });

  it('looks only inside the stretch asked for', () => {
    const power = Float64Array.from([900, 100, 120, 110, 900]);
    const { watts: best, from } = meanMaximal(power, [1, 2], 1, 4);
    expect([...best]).toEqual([120, 115]);
    expect([...from]).toEqual([2, 2]);
  });

  it('takes an eight-hour ride at every duration of a profile in little more than a pass for each', () => {
    const power = Float64Array.from({ length: 8 * 3600 }, (_, i) => 200 + ((i * 7919) % 101));
    const all = () => meanMaximal(power, settings.durations);
    const passes = 2 * settings.durations.length;
    expect(timesAsLong(all, () => meanMaximal(power, [1]), passes)).toBeLessThan(passes);
  });
});
