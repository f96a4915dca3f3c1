import { describe, expect, it } from 'vitest';
import { setPointsOf } from '../../src/measure/set-points.ts';
import type { AlignedSecond, Series, SetPoints, Subjects } from '../../src/types.ts';
import { ridden, subjectsOf } from './pair/make.ts';

type Change = Parameters<typeof ridden>[2][number];

const session = (seed: string, changes: readonly Change[]) => {
  const all = subjectsOf(
    ridden(seed, { kind: 'set-point session', minutes: 60, places: ['trainer', 'pedal'] }, changes),
  );
  return setPointsOf(all, all.seconds)!;
};

/** What one meter holds more than the other in each block, % of the target. */
const apart = ({ blocks }: SetPoints) =>
  blocks.map(({ target, meters: [own, other] }) => (100 * (own!.over - other!.over)) / target);

describe('set-point blocks', () => {
  it('tell what a meter holds beyond the target', () => {
    const over = apart(session('held high', [{ gain: 1.06 }]));
    expect(over.length).toBeGreaterThan(5);
    expect(over.reduce((a, b) => a + b, 0) / over.length).toBeCloseTo(6, 0);
  });

  it('have honest meters within their intervals of the target', () => {
    const blocks = ['a', 'b', 'c', 'd'].flatMap((seed) => session(`honest ${seed}`, []).blocks);
    const meters = blocks.flatMap((block) => block.meters).filter(({ low }) => low !== null);
    const inside = meters.filter(({ low, high }) => low! <= 0 && high! >= 0);
    expect(meters.length).toBeGreaterThan(80);
    expect(inside.length / meters.length).toBeGreaterThan(0.9);
  });

  // Common practice, no source: a trainer in set-point mode holds too much at a slow flywheel.
  it('tell a meter that depends on the speed of the flywheel', () => {
    for (const seed of ['1', '2', '3']) {
      const { trends, steadiest } = session(`b${seed}`, [{ speedSlope: 0.15 }]);
      const speed = trends.find(({ of }) => of === 'speed')!;
      const trainer = speed.subject === 'primary' ? speed : { low: -speed.high, high: -speed.low };
      expect(speed.subject).not.toBe(steadiest);
      expect(trainer.low).toBeGreaterThan(0);
      // 15 % for 10 m/s are 4.2 % for 10 km/h.
      expect(trainer.low).toBeLessThan(4.2);
      expect(trainer.high).toBeGreaterThan(4);
    }
  });

  it('tell how long a meter takes to rise to the next', () => {
    const step = (seconds: number) =>
      Float64Array.from({ length: 600 }, (_, t) => {
        const share = Math.min(1, Math.max(0, (t - 300) / seconds));
        return 150 + 100 * share + 3 * Math.sin(t) + 2 * Math.cos(2.3 * t);
      });
    const all = of({ primary: step(8), second: step(16) });
    const { blocks } = setPointsOf(all, all.seconds)!;
    const rises = blocks.at(-1)!.meters.map(({ rise }) => rise!);
    expect(rises[0]!).toBeGreaterThan(5);
    expect(rises[0]!).toBeLessThan(8);
    expect(rises[1]!).toBeGreaterThan(11);
    expect(rises[1]!).toBeLessThan(15);
    const ramp = of({ primary: step(10), second: step(60) });
    expect(setPointsOf(ramp, ramp.seconds)!.blocks[1]!.meters[1]!.rise).toBeNull();
    expect(blocks[0]!.meters.map(({ rise }) => rise)).toEqual([null, null]);
  });

  it('tell of no step of less than a fifth', () => {
    const rises = (share: number) => {
      const power = Float64Array.from(
        { length: 600 },
        (_, t) => (t < 300 ? 200 : 200 * share) + 2 * Math.sin(t),
      );
      const all = of({ primary: power, second: power });
      return setPointsOf(all, all.seconds)!.blocks[1]!.meters.map(({ rise }) => rise);
    };
    expect(rises(1.18)).toEqual([null, null]);
    expect(rises(0.82)).toEqual([null, null]);
    expect(rises(1.22).every((rise) => rise !== null && rise < 2)).toBe(true);
    expect(rises(0.78).every((rise) => rise !== null && rise < 2)).toBe(true);
  });

  it('are none where the ride keeps to no level', () => {
    const { primary, seconds, ...rest } = subjectsOf(ridden('none', { kind: 'bunch race', minutes: 20 }, []));
    expect(setPointsOf({ ...rest, primary, seconds, sections: [] }, seconds)).toBeNull();
  });

  it('say nothing of cadence and speed that nobody recorded, nor where power is missing', () => {
    const power = new Float64Array(400).fill(200);
    const all = of({ primary: power, second: new Float64Array(400).fill(Number.NaN) });
    const found = setPointsOf(all, all.seconds)!;
    expect(found.steadiest).toBe('primary');
    expect(found.trends).toEqual([]);
    for (const { cadence, speed, meters } of found.blocks) {
      expect([cadence, speed]).toEqual([null, null]);
      expect(meters.map(({ subject }) => subject)).toEqual(['primary']);
    }
  });
});

/** Two meters on one clock, with a set-point block on either side of second 300. */
function of({ primary, second }: { primary: Float64Array; second: Float64Array }): Subjects {
  const { length } = primary;
  const series = (power: Float64Array) => ({ length, start: 0, channels: { power } }) as unknown as Series;
  return {
    primary: series(primary),
    seconds: [{ subject: 'pair:0', series: series(second) } as unknown as AlignedSecond],
    sections: [
      { kind: 'set-point block', stretch: [0, 300] },
      { kind: 'set-point block', stretch: [Math.min(310, length - 70), length] },
    ],
    window: [0, length],
    rider: {},
    race: {},
    history: null,
  };
}
