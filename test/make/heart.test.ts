import { describe, expect, it } from 'vitest';
import { heartRate, mildConditions } from './heart.ts';
import { Random } from './random.ts';
import type { Heart } from './rider.ts';

const heart: Heart = { rest: 50, max: 190, atCp: 0.86, tau: 56, driftPerHour: 0 };

/** Mean of many hearts, so that their moods even out. */
function meanAnswer(power: Float64Array, of: Heart, conditions = mildConditions): Float64Array {
  const sum = new Float64Array(power.length);
  const count = 60;
  for (let k = 0; k < count; k++) {
    const one = heartRate(power, 300, of, conditions, new Random(`heart ${k}`));
    for (let i = 0; i < sum.length; i++) sum[i]! += one[i]! / count;
  }
  return sum;
}

const step = (from: number, to: number, at: number, seconds: number) =>
  Float64Array.from({ length: seconds }, (_, i) => (i < at ? from : to));

describe('heart rate', () => {
  it('answers a step with its time constant (55.7 s in doi 10.1186/s12938-015-0112-7)', () => {
    const answer = meanAnswer(step(100, 150, 600, 1000), heart);
    const before = answer[599]!;
    const after = answer[950]!;
    const level = before + (after - before) * (1 - Math.exp(-1));
    const reached = answer.findIndex((bpm, i) => i > 600 && bpm >= level) - 600;
    expect(reached).toBeGreaterThan(48);
    expect(reached).toBeLessThan(68);
  });

  it('rises slowly at constant power, more in the heat, and less once a fan runs', () => {
    const power = new Float64Array(3600).fill(210);
    const drifting = { ...heart, driftPerHour: 8 };
    const rise = (answer: Float64Array) => answer[3590]! - answer[900]!;
    const mild = rise(meanAnswer(power, drifting));
    expect(mild).toBeGreaterThan(2);
    expect(mild).toBeLessThan(10);
    expect(rise(meanAnswer(power, drifting, { heat: 2.5, fanFrom: null }))).toBeGreaterThan(mild + 3);
    expect(rise(meanAnswer(power, drifting, { heat: 1, fanFrom: 2000 }))).toBeLessThan(mild - 2);
  });

  it('stays between rest and maximum', () => {
    const hard = heartRate(new Float64Array(1200).fill(500), 300, heart, mildConditions, new Random('hard'));
    expect(Math.max(...hard)).toBeLessThanOrEqual(heart.max + 1);
    expect(Math.min(...hard)).toBeGreaterThan(heart.rest);
  });
});
