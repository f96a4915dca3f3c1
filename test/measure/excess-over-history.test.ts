import { describe, expect, it } from 'vitest';
import { excessOverHistory } from '../../src/measure/excess-over-history.ts';
import type { Measured, PastRide, Subjects } from '../../src/types.ts';
import { timesAsLong } from '../cost.ts';
import { ruleOf } from './measure-of.ts';
import { allOut, historyOf, pastRides, race } from './rider/make.ts';

const rule = ruleOf('above-history');
const outcome = (all: Subjects) => excessOverHistory.compute(all, null, rule.options as never);
function measuredOf(all: Subjects): Measured {
  const got = outcome(all);
  if (got.state !== 'measured') throw new Error(JSON.stringify(got));
  return got;
}
/** In honest spreads: what the rule's limits are counted in. */
const spreads = ({ value, expected }: Measured) => value / expected!.field.spread;
const query = rule.limits.query!['at least']!;
const asks = (all: Subjects) => {
  const got = outcome(all);
  return got.state === 'measured' && spreads(got) >= query;
};

describe('excessOverHistory', () => {
  const usual = pastRides('usual', { rides: 60, hard: 0.3 });

  it('has nothing to say without a history, or with a thin one', () => {
    expect(outcome(race(1, null))).toMatchObject({ state: 'not applicable', reason: 'no-history' });
    expect(outcome(race(1.3, []))).toMatchObject({ reason: 'history-too-thin' });
    expect(outcome(race(1.3, usual.slice(0, 1)))).toMatchObject({ reason: 'history-too-thin' });
  });

  it('lets a usual personal best pass and asks about what is far beyond', () => {
    for (const factor of [0.9, 1, 1.02, 1.03]) expect(asks(race(factor, usual))).toBe(false);
    expect(asks(race(1.12, usual))).toBe(true);
    expect(asks(race(1.2, usual))).toBe(true);
  });

  it('states the excess, the window it argues from, and how rare it is', () => {
    const got = measuredOf(race(1.2, usual));
    expect(got.value).toBeGreaterThan(14);
    expect(got.value).toBeLessThan(26);
    expect(got.interval[0]).toBeLessThan(got.value);
    expect(got.interval[1]).toBeGreaterThan(got.value);
    const [[from, to]] = got.stretches as [[number, number]];
    expect(from).toBeGreaterThanOrEqual(300);
    expect(to).toBeLessThanOrEqual(2100);
    expect(got.chance).toBeLessThan(0.0005);
    expect(measuredOf(race(1, usual)).chance).toBeGreaterThan(0.05);
    const chart = got.charts[0];
    if (chart?.kind !== 'curve') throw new Error('no curve');
    const twenty = chart.points.find((point) => point.duration === 1200);
    expect(twenty?.race).toBeGreaterThan(twenty!.allowed!);
    expect(twenty?.best).toBeCloseTo(
      Math.max(...usual.map((ride) => ride.bests[chart.points.indexOf(twenty!)]!)),
      6,
    );
  });

  it('says less when another meter made the history', () => {
    const other = pastRides('usual', { rides: 60, hard: 0.3, gain: 1 });
    expect(spreads(measuredOf(race(1.12, other)))).toBeLessThan(spreads(measuredOf(race(1.12, usual))));
    expect(asks(race(1.03, pastRides('low', { rides: 60, hard: 0.3, gain: 0.95 })))).toBe(false);
  });

  it('takes the same recorder for most likely the same meter where no file lists one, and says so', () => {
    const unlisted = (rides: readonly PastRide[]) => rides.map(({ meter: _, ...ride }) => ride);
    const without = (all: Subjects): Subjects => {
      const { meter: _, ...recording } = all.primary.recording;
      return { ...all, primary: { ...all.primary, recording } };
    };
    const app = without(race(1.12, unlisted(usual)));
    const elsewhere = unlisted(usual).map((ride) => ({
      ...ride,
      device: { ...ride.device, product: 'other' },
    }));
    const [own, likely, unknown] = [race(1.12, usual), app, { ...app, history: historyOf(elsewhere) }].map(
      (all) => measuredOf(all),
    );
    expect(own!.circumstances).toEqual([]);
    expect(likely!.circumstances).toEqual(['meter unlisted']);
    expect(unknown!.circumstances).toEqual(['meter unknown']);
    expect(spreads(likely!)).toBeLessThan(spreads(own!));
    expect(spreads(likely!)).toBeGreaterThan(spreads(unknown!));
    // The race's file lists its meter, the past ones list none: nobody knows.
    expect(measuredOf(race(1.12, unlisted(usual))).circumstances).toEqual(['meter unknown']);
  });

  it('keeps indoors and outdoors apart', () => {
    const outdoors = pastRides('usual', { rides: 60, hard: 0.3, indoors: false });
    expect(outcome(race(1.2, outdoors))).toMatchObject({ reason: 'history-too-thin' });
  });

  it('does not take a held-back history for the rider’s best', () => {
    const easy = pastRides('easy', { rides: 80, hard: 0 });
    expect(asks(race(1, easy))).toBe(false);
    expect(
      asks(
        race(
          1,
          easy.map((ride) => ({ ...ride, controlled: 0.9 })),
        ),
      ),
    ).toBe(false);
  });

  it('believes rides of long ago less', () => {
    const old = usual.map((ride) => ({
      ...ride,
      from: ride.from - 300 * 86_400,
      to: ride.to - 300 * 86_400,
    }));
    expect(spreads(measuredOf(race(1.12, old)))).toBeLessThan(spreads(measuredOf(race(1.12, usual))));
    const ancient = usual.map((ride) => ({ ...ride, from: 0, to: 1000 }));
    expect(outcome(race(1.2, ancient))).toMatchObject({ reason: 'history-too-thin' });
  });

  it('ignores a sprint history without sprints', () => {
    const at = historyOf(usual).profile.durations.indexOf(5);
    const noSprints = usual.map((ride) => ({
      ...ride,
      bests: ride.bests.map((b, k) => (k <= at ? 450 : b)),
    }));
    const sprinting = race(1, noSprints);
    sprinting.primary.channels.power!.fill(900, 1700, 1705);
    expect(asks(sprinting)).toBe(false);
  });

  /*
   * Honest riders, all of them all out on the day: how often they are asked does not depend on how many past
   * rides there are, how many were all out, growing strength (6 % in half a year), or the meter.
   */
  const changes = [{}, { gain: 1.03 }, { gain: 0.97 }, { first: 0.94 }, { heartRate: false }];
  it.each([3, 10, 40, 300])('hardly ever asks an honest rider with %i past rides', (rides) => {
    let asked = 0;
    let drawn = 0;
    for (const hard of [0, 0.3, 1]) {
      changes.forEach((change, c) => {
        // Never all out and stronger since: nothing but heart rate can tell, and not always.
        if (hard === 0 && c > 2) return;
        for (let k = 0; k < 6; k++) {
          const history = pastRides(`${rides} ${hard} ${c} ${k}`, { rides, hard, ...change });
          if (asks(race(1 + 0.015 * (k / 2.5 - 1), history))) asked++;
          drawn++;
        }
      });
    }
    expect(drawn).toBe(78);
    expect(asked).toBeLessThanOrEqual(2);
  });

  it('costs at most in proportion to the length of the history', () => {
    const [few, many] = [50, 500].map((rides) => race(1, pastRides('long', { rides, hard: 0.3 })));
    expect(
      timesAsLong(
        () => outcome(many!),
        () => outcome(few!),
        10,
      ),
    ).toBeLessThan(10);
  });

  it('is right about its own rider: 20 min all out is about 282 W', () => {
    const top = (rides: readonly PastRide[]) =>
      Math.max(...rides.map((ride) => ride.bests[historyOf([]).profile.durations.indexOf(1200)]!));
    expect(allOut(1200)).toBeGreaterThan(275);
    expect(top(usual)).toBeLessThan(allOut(1200) * 1.05);
  });
});
