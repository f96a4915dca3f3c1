import { describe, expect, it } from 'vitest';
import { Random } from './random.ts';
import { type Figures, figures, fractalDimension, quantile } from './realism.ts';
import type { RideKind } from './ride.ts';
import { drawSubmission } from './submission.ts';

const draw = (kind: RideKind, count = 8): Figures[] =>
  Array.from({ length: count }, (_, seed) =>
    figures(drawSubmission(`real ${seed}`, { kind, minutes: 45, seconds: 0, places: ['pedal'] }).primary),
  );
const middle = (drawn: readonly Figures[], name: keyof Figures) =>
  quantile(
    drawn.map((one) => one[name]),
    0.5,
  );

describe('figures of a trace', () => {
  it('know white noise, its averages, and a walk', () => {
    const random = new Random('white');
    const white = Float64Array.from({ length: 20_000 }, () => 200 + 10 * random.normal());
    const averaged = white.map(
      (_, i) => (white[i]! + white[Math.max(0, i - 1)]! + white[Math.max(0, i - 2)]!) / 3,
    );
    const of = (power: Float64Array) =>
      figures({ time: power.map((_, i) => i), channels: { power, cadence: power.map(() => 90) } });
    // Second over first differences of white noise: 6 over 2 variances; after a box of three: 4/9 over 2/9.
    expect(of(white).differenceRatio).toBeCloseTo(3, 1);
    expect(of(averaged).differenceRatio).toBeCloseTo(2, 1);
    expect(of(white).lag1).toBeCloseTo(0, 1);
    expect(of(averaged).lag1).toBeCloseTo(2 / 3, 1);
    expect(fractalDimension(white)).toBeCloseTo(2, 1);
  });
});

describe('simulated rides against real ones', () => {
  // Real crisp traces: 2.1–2.5 second over first differences, longest run 3 or 4 s, steps of 7 to 18 % (robust),
  // Allan deviation level from 1 to 64 s at 7 to 24 %; heart rate follows power best 4 to 32 s late.
  const outdoors = draw('outdoor ride');
  const trial = draw('time trial');

  it('have crisp seconds', () => {
    for (const drawn of [outdoors, trial]) {
      expect(middle(drawn, 'differenceRatio')).toBeGreaterThan(2.1);
      expect(middle(drawn, 'differenceRatio')).toBeLessThan(2.6);
      expect(middle(drawn, 'longestRun')).toBeGreaterThanOrEqual(2);
      expect(middle(drawn, 'longestRun')).toBeLessThanOrEqual(5);
      expect(middle(drawn, 'tails')).toBeGreaterThan(0.003);
      expect(middle(drawn, 'tails')).toBeLessThan(0.03);
    }
    expect(middle(outdoors, 'lag1')).toBeGreaterThan(0.8);
    expect(middle(outdoors, 'lag1')).toBeLessThan(0.95);
  });

  it('vary alike over 1 to 64 s', () => {
    for (const name of ['allan1', 'allan4', 'allan16', 'allan64'] as const) {
      expect(middle(outdoors, name)).toBeGreaterThan(0.08);
      expect(middle(outdoors, name)).toBeLessThan(0.28);
      expect(middle(trial, name)).toBeGreaterThan(0.04);
      expect(middle(trial, name)).toBeLessThan(0.15);
    }
  });

  it('coast as often, and turn the cranks as evenly', () => {
    expect(middle(outdoors, 'zeros')).toBeGreaterThan(0.05);
    expect(middle(outdoors, 'zeros')).toBeLessThan(0.28);
    expect(middle(outdoors, 'coastLength')).toBeGreaterThanOrEqual(3);
    expect(middle(outdoors, 'coastLength')).toBeLessThanOrEqual(8);
    expect(middle(outdoors, 'poweredStill')).toBeLessThan(0.3);
    expect(Math.abs(middle(outdoors, 'cadencePower'))).toBeLessThan(0.5);
    expect(middle(outdoors, 'cadenceStep')).toBeGreaterThan(1);
    expect(middle(outdoors, 'cadenceStep')).toBeLessThan(2.5);
  });

  it('have hearts that follow', () => {
    for (const drawn of [outdoors, trial]) {
      expect(middle(drawn, 'heartLag')).toBeGreaterThanOrEqual(2);
      expect(middle(drawn, 'heartLag')).toBeLessThanOrEqual(32);
      expect(middle(drawn, 'heartFit')).toBeGreaterThan(0.7);
      expect(middle(drawn, 'heartRepeats')).toBeGreaterThan(0.4);
      expect(middle(drawn, 'heartRepeats')).toBeLessThan(0.8);
    }
  });
});
