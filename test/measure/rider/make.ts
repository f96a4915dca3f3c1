import { settings } from '../../../src/history/settings.ts';
import type { History, PastRide, Subjects } from '../../../src/types.ts';
import { Random } from '../../make/random.ts';
import { alone, recordingOf, seriesOf, start } from '../series.ts';

export const device = { maker: 'maker', product: 'head unit', serial: '3' };
export const meter = { maker: 'maker', product: 'meter', serial: '7' };
const otherMeter = { maker: 'maker', product: 'meter', serial: '8' };

/** Mean all-out power (W) of the invented rider: CP 280 W, W′ 18 kJ, Pmax 1050 W, tiring in long efforts. */
export function allOut(seconds: number): number {
  const reserve = 18_000 / (seconds + 18_000 / 770);
  return (280 + reserve) * (1 - 0.045 * Math.log(1 + seconds / 1800));
}

export interface HistoryWish {
  readonly rides: number;
  /** Share of rides with an all-out effort at a random duration; the others fall short by 12 % on average. */
  readonly hard: number;
  /** Power of the oldest ride over that of the newest. */
  readonly first?: number;
  /** Gain of the meter that made the history over that of the race's; another device when given. */
  readonly gain?: number;
  readonly indoors?: boolean;
  readonly heartRate?: boolean;
}

/** Past rides of the last half year: day-to-day form of 1.5 %, windows that are lower bounds. */
export function pastRides(seed: string, wish: HistoryWish): PastRide[] {
  const random = new Random(seed);
  return Array.from({ length: wish.rides }, (_, k) => {
    const age = 3 + (180 * (k + random.uniform())) / wish.rides;
    const form = Math.exp(0.015 * random.normal()) * (1 - ((1 - (wish.first ?? 1)) * age) / 180);
    const hard = random.chance(wish.hard);
    const focus = random.pick([60, 300, 480, 720, 1200, 1800]);
    const short = settings.durations.map((d) => {
      const apart = 0.04 * Math.abs(Math.log(d / focus));
      return hard ? apart + random.exponential(0.01) : 0.05 + apart + random.exponential(0.12);
    });
    const to = Math.round(start - age * 86_400);
    return {
      sha256: (k + 1).toString(16).padStart(64, '0'),
      from: to - 5400,
      to,
      device,
      meter: wish.gain === undefined ? meter : otherMeter,
      indoors: wish.indoors ?? true,
      bests: settings.durations.map((d, i) =>
        d > 5400 ? null : allOut(d) * form * (wish.gain ?? 1) * Math.exp(-short[i]!),
      ),
      ...(wish.heartRate === false
        ? {}
        : {
            heartRates: settings.durations.map((d, i) =>
              d > 5400 ? null : 182 * (1 - 0.7 * short[i]!) + random.normal(),
            ),
          }),
    };
  });
}

/** A race of 20 min all out at `factor` times the rider's power, 10 min of riding around it. */
export function race(factor: number, rides: readonly PastRide[] | null, heartRate = 182): Subjects {
  const random = new Random(`race ${factor}`);
  const effort = allOut(1200) * factor;
  const power = Array.from({ length: 2400 }, (_, i) =>
    Math.max(0, (i >= 600 && i < 1800 ? effort : 150) * (1 + 0.06 * random.normal())),
  );
  const columns = { power, heartRate: power.map((_, i) => (i >= 600 && i < 1800 ? heartRate : 120)) };
  const recording = recordingOf(columns, { device, meter, indoors: true });
  const all = alone(seriesOf(columns, { recording }), {}, [300, 2100]);
  return { ...all, history: rides === null ? null : historyOf(rides) };
}

export function historyOf(rides: readonly PastRide[]): History {
  const profile = { profileVersion: 1, durations: settings.durations, rides, leftOut: [] } as const;
  return { profile, rides, notBefore: 0 };
}
