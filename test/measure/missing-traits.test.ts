import { expect, test } from 'vitest';
import { missingTraits } from '../../src/measure/missing-traits.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { alone, seriesOf, uniform } from './series.ts';

const seconds = 3600;
const target = (i: number) => [160, 290, 210, 250][Math.floor(i / 300) % 4]!;

/** Numbers added up as legs, hearts and sensors add them: slow wanders under quick ones. */
function living(seed: number, mean: (i: number) => number, spread: number): number[] {
  const random = uniform(seed);
  const keeps = [0, 0.6, 0.9, 0.97, 0.99];
  const states = keeps.map(() => 0);
  return Array.from({ length: seconds }, (_, i) => {
    let value = mean(i);
    keeps.forEach((keep, k) => {
      states[k] = keep * states[k]! + Math.sqrt(1 - keep * keep) * (random() + random() - 1);
      value += spread * states[k]!;
    });
    return Math.round(value);
  });
}
/** A mean and numbers drawn at random: how a recording is made up. */
function drawn(seed: number, mean: (i: number) => number, spread: number): number[] {
  const random = uniform(seed);
  return Array.from({ length: seconds }, (_, i) =>
    Math.round(mean(i) + spread * 2 * (random() + random() + random() - 1.5)),
  );
}
let slow = 100;
const formula = Array.from({ length: seconds }, (_, i) => {
  slow += (70 + 0.35 * target(i) - slow) / 45;
  return Math.round(slow);
});
const put = (columns: Record<string, number[]>) => alone(seriesOf(columns));
const of = (columns: Record<string, number[]>) => measuredOf(missingTraits, 'machine-like', put(columns));

test('a ride shows them all', () => {
  const outcome = of({
    power: living(1, target, 15),
    cadence: living(2, () => 88, 3),
    heartRate: living(3, (i) => formula[i]!, 1.2),
  });
  expect(outcome).toMatchObject({ value: 0, count: 5, charts: [] });
});

test('a recording drawn from a plan lacks most', () => {
  const outcome = of({
    power: drawn(1, target, 12),
    cadence: drawn(2, () => 90, 2),
    heartRate: formula,
  });
  expect(outcome.value).toBeGreaterThanOrEqual(3);
  expect(outcome.charts[0]).toMatchObject({ kind: 'traits' });
  expect(outcome.details.traits).toContain('wandering cadence');
});

test('a meter in steps of two watts lacks one, which is no more than its own habit', () => {
  const outcome = of({
    power: living(1, target, 15).map((watts) => 2 * Math.round(watts / 2)),
    cadence: living(2, () => 88, 3),
  });
  expect(outcome).toMatchObject({ value: 1, count: 3 });
});

test('says nothing of a short recording', () => {
  const power = living(1, target, 15).slice(0, 300);
  expect(outcomeOf(missingTraits, 'machine-like', put({ power }))).toMatchObject({ reason: 'too-short' });
});
