import { describe, expect, it } from 'vitest';
import { settings } from '../../src/history/settings.ts';
import { sprintDisproportion } from '../../src/measure/sprint-disproportion.ts';
import type { Measured, PastRide, Subjects } from '../../src/types.ts';
import { ruleOf } from './measure-of.ts';
import { device, historyOf, meter } from './rider/make.ts';
import { alone, recordingOf, seriesOf, start } from './series.ts';

const { options } = ruleOf('sprint-shape');
const outcome = (all: Subjects) => sprintDisproportion.compute(all, null, options as never);
const percentOf = (all: Subjects) => (outcome(all) as Measured).value;

/** Five past rides: 900 W over 5 s, 450 W over a minute, 340 W over 5 min, give or take a percent. */
const rides: PastRide[] = [1, 2, 3, 4, 5].map((n) => ({
  sha256: n.toString(16).padStart(64, '0'),
  from: start - n * 86_400,
  to: start - n * 86_400 + 3600,
  device,
  meter,
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
  const recording = recordingOf({ power }, { device, meter });
  return { ...alone(seriesOf({ power }, { recording })), history: past === null ? null : historyOf(past) };
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
  const spreadOf = (past: readonly PastRide[]) =>
    (outcome(race(1200, 300, 300, past)) as Measured).expected!.field.spread;
  it('allows more above few sprints, and above those of another meter', () => {
    // 3.3 % · (1 + 5.6/n²) for n sprints; another meter adds 6 %.
    expect(spreadOf(rides)).toBeCloseTo(3.3 * (1 + 5.6 / 25), 9);
    expect(spreadOf(rides.slice(0, 3))).toBeCloseTo(3.3 * (1 + 5.6 / 9), 9);
    const other = rides.map((ride) => ({ ...ride, meter: { ...meter, serial: 'another' } }));
    expect(spreadOf(other)).toBeCloseTo(Math.hypot(3.3 * (1 + 5.6 / 25), 6), 9);
    const unlisted = rides.map(({ meter: _, ...ride }) => ride);
    expect(spreadOf(unlisted)).toBe(spreadOf(other));
  });
  it('asks for the more sprints the less they stand above 5 min', () => {
    // 900 W over 340 W is a ratio of 2.6: three sprints are needed; of 750 W (2.2) four, of 650 W (1.9) six.
    const lower = (watts: number) =>
      rides.map((ride) => ({
        ...ride,
        bests: ride.bests.map((b, k) => (settings.durations[k]! <= 5 ? watts : b)),
      }));
    const speaks = (past: readonly PastRide[]) => outcome(race(1200, 300, 300, past)).state === 'measured';
    expect([2, 3].map((n) => speaks(rides.slice(0, n)))).toEqual([false, true]);
    expect([3, 4].map((n) => speaks(lower(750).slice(0, n)))).toEqual([false, true]);
    expect(speaks(lower(650))).toBe(false);
    expect(speaks([...lower(650), { ...lower(650)[0]!, sha256: 'f'.repeat(64) }])).toBe(true);
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
