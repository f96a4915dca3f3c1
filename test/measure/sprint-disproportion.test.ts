import { describe, expect, it } from 'vitest';
import { settings } from '../../src/history/settings.ts';
import { sprintDisproportion } from '../../src/measure/sprint-disproportion.ts';
import type { Measured, PastRide, Subjects } from '../../src/types.ts';
import { ruleOf } from './measure-of.ts';
import { device, historyOf } from './rider/make.ts';
import { alone, seriesOf, start } from './series.ts';

const { options } = ruleOf('sprint-shape');
const outcome = (all: Subjects) => sprintDisproportion.compute(all, null, options as never);
const percentOf = (all: Subjects) => (outcome(all) as Measured).value;

/** Five past rides: 900 W over 5 s, 450 W over a minute, 340 W over 5 min, give or take a percent. */
const rides: PastRide[] = [1, 2, 3, 4, 5].map((n) => ({
  sha256: n.toString(16).padStart(64, '0'),
  from: start - n * 86_400,
  to: start - n * 86_400 + 3600,
  device,
  indoors: true,
  bests: settings.durations.map((t) =>
    t > 3600 ? null : (1 - n / 500) * (t <= 5 ? 900 : t <= 60 ? 450 : 340),
  ),
}));

/** A race with these watts over 5 s, a minute and 5 min. */
function race(
  sprint: number,
  minute: number,
  five: number,
  past: readonly PastRide[] | null = rides,
): Subjects {
  const power = Array.from({ length: 1200 }, () => 150);
  power.fill(five, 100, 400);
  power.fill(minute, 600, 660);
  power.fill(sprint, 1000, 1005);
  return { ...alone(seriesOf({ power })), history: past === null ? null : historyOf(past) };
}

describe('sprintDisproportion', () => {
  it('is what the sprint rises beyond the rest', () => {
    const best = 900 * 0.998;
    expect(percentOf(race(1.3 * best, 300, 300))).toBeCloseTo(30, 6);
    expect(percentOf(race(best, 300, 300))).toBeCloseTo(0, 6);
    expect(percentOf(race(600, 300, 300))).toBeLessThan(-30);
  });
  it('does not see a rider or meter that is higher throughout', () => {
    expect(percentOf(race(1.2 * 898.2, 1.2 * 449.1, 1.2 * 339.32))).toBeCloseTo(0, 1);
  });
  it('has nothing to say of a history without sprints', () => {
    const flat = rides.map((ride) => ({
      ...ride,
      bests: ride.bests.map((watts) => watts && Math.min(watts, 500)),
    }));
    expect(outcome(race(1200, 300, 300, flat))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(1200, 300, 300, rides.slice(0, 1)))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(1200, 300, 300, []))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(1200, 300, 300, null))).toMatchObject({ reason: 'no-history' });
  });
});
