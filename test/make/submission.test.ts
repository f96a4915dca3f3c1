import { describe, expect, it } from 'vitest';
import { rideKinds } from './ride.ts';
import { drawDraft, drawSubmission } from './submission.ts';

const sum = (values: Float64Array) => values.reduce((a, b) => a + b);

describe('a submission', () => {
  it('is the same for the same seed and wish, and another for another seed', () => {
    const wish = {
      kind: 'short race',
      recorders: 'varied',
      seconds: 2,
      history: { rides: 2, minutes: 8 },
    } as const;
    const [one, again, other] = [drawSubmission(5, wish), drawSubmission(5, wish), drawSubmission(6, wish)];
    expect(again.primary).toEqual(one.primary);
    expect(again.seconds).toEqual(one.seconds);
    expect(again.history).toEqual(one.history);
    expect([again.rider, again.race]).toEqual([one.rider, one.race]);
    expect(other.primary.channels.power).not.toEqual(one.primary.channels.power);
  });

  it.each(rideKinds)('%s: facts fit the recordings', (kind) => {
    for (const seed of [1, 2, 3]) {
      const { primary, seconds, rider, race } = drawSubmission(seed, { kind, seconds: 2 });
      const [start, finish] = [Date.parse(race.start!) / 1000, Date.parse(race.finish!) / 1000];
      expect(start % 60).toBe(0);
      expect(primary.time[0]!).toBeLessThanOrEqual(start + 3);
      expect(primary.time.at(-1)!).toBeGreaterThan(finish - 60);
      expect(rider.devices!.map((device) => device.name)).toEqual(['primary', 'second', 'second 2']);
      expect(seconds.length).toBe(2);
      for (const { time, channels } of [primary, ...seconds]) {
        for (const column of Object.values(channels)) expect(column.length).toBe(time.length);
      }
    }
  });

  it('meters within claims disagree by little more than the claims and the chain', () => {
    for (let seed = 0; seed < 30; seed++) {
      const { primary, seconds, rider } = drawSubmission(`claims ${seed}`, {
        kind: 'short race',
        places: ['trainer', 'pedal'],
      });
      const [own, other] = rider.devices!;
      const percent = 100 * Math.log(sum(primary.channels.power!) / sum(seconds[0]!.channels.power!));
      const leg = other!.sides === 1 ? 7 : 0;
      const room = own!.tolerancePercent + other!.tolerancePercent + leg;
      expect(percent).toBeGreaterThan(-room - 7);
      expect(percent).toBeLessThan(room + 1);
    }
  });

  it('meters as found scatter like 54 meters in the field: -0.9 ± 3.2 % (Maier et al. 2017)', () => {
    const gains = Array.from({ length: 400 }, (_, seed) =>
      drawDraft(`field ${seed}`, { kind: 'short race', cohort: 'as found' }).meters.map(
        (meter) => meter.gain,
      ),
    ).flat();
    const mean = gains.reduce((a, b) => a + b) / gains.length;
    const spread = Math.sqrt(gains.reduce((a, b) => a + (b - mean) * (b - mean), 0) / gains.length);
    expect(100 * (mean - 1)).toBeCloseTo(-0.9, 0);
    expect(100 * spread).toBeGreaterThan(2.7);
    expect(100 * spread).toBeLessThan(3.7);
  });

  it('varied recorders show everything honest files show', () => {
    const recorders = Array.from({ length: 300 }, (_, seed) =>
      drawDraft(`varied ${seed}`, { kind: 'outdoor ride', minutes: 60, recorders: 'varied' }).recordings.map(
        ({ recorder }) => recorder,
      ),
    ).flat();
    expect(recorders.some((r) => Math.abs(r.offset) > 3000)).toBe(true);
    expect(recorders.some((r) => r.pauses === 'clock stops')).toBe(true);
    expect(recorders.some((r) => r.smart > 0)).toBe(true);
    expect(recorders.some((r) => r.doubled > 0)).toBe(true);
    expect(recorders.some((r) => !r.channels.includes('heartRate'))).toBe(true);
    expect(recorders.some((r) => r.strap.length > 0)).toBe(true);
    for (const as of ['missing', 'zero', 'held', 'no record']) {
      expect(recorders.some((r) => r.dropouts.some((dropout) => dropout.as === as))).toBe(true);
    }
    expect(recorders.every((r) => Math.abs(r.driftPpm) <= 60)).toBe(true);
  });

  it('one sensor on two recorders agrees better than two meters do', () => {
    const wish = { kind: 'bunch race', minutes: 30 } as const;
    const both = drawSubmission('one sensor', { ...wish, oneSensor: true });
    const two = drawSubmission('one sensor', wish);
    const correlation = ({ primary, seconds }: typeof both) => {
      const [a, b] = [primary.channels.power!, seconds[0]!.channels.power!];
      let best = 0;
      for (let lag = -5; lag <= 5; lag++) best = Math.max(best, correlate(a, b, lag));
      return best;
    };
    expect(correlation(both)).toBeGreaterThan(0.985);
    expect(correlation(two)).toBeLessThan(correlation(both));
  });

  it('a history lies before the race, oldest first, mostly easier than the rider can', () => {
    const { history, race } = drawSubmission('past', {
      kind: 'short race',
      history: { rides: 8, minutes: 20 },
    });
    expect(history.length).toBe(8);
    const starts = history.map((ride) => ride.time[0]!);
    expect([...starts].sort((a, b) => a - b)).toEqual(starts);
    expect(history.at(-1)!.time.at(-1)!).toBeLessThan(Date.parse(race.start!) / 1000 - 3600);
  });
});

function correlate(a: Float64Array, b: Float64Array, lag: number): number {
  let [n, sa, sb, saa, sbb, sab] = [0, 0, 0, 0, 0, 0];
  for (let i = 10; i < Math.min(a.length, b.length) - 10; i++) {
    const [x, y] = [a[i]!, b[i + lag]!];
    n++;
    sa += x;
    sb += y;
    saa += x * x;
    sbb += y * y;
    sab += x * y;
  }
  return (sab / n - (sa * sb) / n / n) / Math.sqrt((saa / n - (sa / n) ** 2) * (sbb / n - (sb / n) ** 2));
}
