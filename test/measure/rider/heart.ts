import { firstOrder } from '../../../src/math/first-order.ts';
import { Random } from '../../make/random.ts';

export interface HeartWish {
  readonly seconds?: number;
  /** Rise of heart rate at equal power, bpm an hour. */
  readonly driftPerHour?: number;
  /** Rise of the reading from start to end, as a share of power. */
  readonly rise?: number;
  readonly watts?: (second: number) => number;
}

/** A ride with surges and a heart that answers to true power: 60 + 0.4 bpm/W, time constant 55 s. */
export function heartRide(seed: string, wish: HeartWish = {}) {
  const random = new Random(seed);
  const seconds = wish.seconds ?? 3600;
  let surge = 0;
  const truth = Float64Array.from({ length: seconds }, (_, i) => {
    surge = 0.99 * surge + 8 * random.normal();
    return Math.max(0, (wish.watts?.(i) ?? 230 + surge) + 12 * random.normal());
  });
  const answer = firstOrder(truth, 55);
  const heartRate = answer.map((watts, i) =>
    Math.round(60 + 0.4 * watts + ((wish.driftPerHour ?? 0) * i) / 3600 + 0.7 * random.normal()),
  );
  const power = truth.map((watts, i) => watts * (1 + ((wish.rise ?? 0) * i) / seconds));
  return { power, heartRate, cadence: power.map(() => 88 + random.normal()) };
}
