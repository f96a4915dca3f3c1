import type { Random } from './random.ts';

/** Joins the seconds smoothly, and lets power sag while the chain changes sprocket. */
export function joinSeconds(
  power: Float64Array,
  wished: Float64Array,
  perSecond: number,
  shifts: readonly number[],
  random: Random,
): void {
  if (perSecond === 1) return;
  for (let i = 1; i + 1 < wished.length; i++) {
    const [last, here, next] = [wished[i - 1]!, wished[i]!, wished[i + 1]!];
    if (last === 0 || here === 0 || next === 0) continue;
    for (let q = 0; q < perSecond; q++) {
      const phase = (q + 0.5) / perSecond - 0.5;
      const towards = phase < 0 ? last : next;
      power[i * perSecond + q]! *= 1 + (Math.abs(phase) * (towards - here)) / here;
    }
  }
  const scale = (from: number, count: number, factor: number) => {
    for (let i = from; i < Math.min(power.length, from + count); i++) power[i]! *= factor;
  };
  for (const second of shifts) {
    scale(
      second * perSecond + random.integer(0, perSecond - 1),
      random.integer(2, 3),
      random.between(0.55, 0.9),
    );
  }
  // A drink, a hand off the bar, a change of seat.
  for (let at = random.exponential(slipEvery); at < wished.length; at += random.exponential(slipEvery)) {
    scale(Math.floor(at * perSecond), random.integer(3, 8), random.between(0.55, 0.9));
  }
}

/** Seconds between moments of uneven pedalling. */
const slipEvery = 80;

/** Cadence between the seconds, with the unevenness of legs. */
export function fillCadence(
  turning: Float64Array,
  perSecond: number,
  step: number,
  unevenness: number,
  random: Random,
): Float64Array {
  const cadence = new Float64Array(turning.length * perSecond);
  const keep = Math.exp(-step / 1.5);
  const gain = unevenness * Math.sqrt(1 - keep * keep);
  let uneven = 0;
  for (let i = 0; i < turning.length; i++) {
    const here = turning[i]!;
    const next = turning[i + 1] ?? here;
    const slope = here > 0 && next > 0 ? next - here : 0;
    for (let q = 0; q < perSecond; q++) {
      uneven = uneven * keep + gain * random.normal();
      cadence[i * perSecond + q] = here === 0 ? 0 : Math.max(20, here + (slope * q) / perSecond + uneven);
    }
  }
  return cadence;
}

/** Pedalling starts and stops inside a second, not on its edge. */
export function cutEdges(
  power: Float64Array,
  cadence: Float64Array,
  perSecond: number,
  random: Random,
): void {
  if (perSecond === 1) return;
  for (let edge = perSecond; edge < power.length; edge += perSecond) {
    const stops = power[edge - 1]! > 0 && power[edge] === 0;
    const starts = power[edge - 1] === 0 && power[edge]! > 0;
    if (!stops && !starts) continue;
    const count = random.integer(0, perSecond - 1);
    const from = stops ? edge - count : edge;
    power.fill(0, from, from + count);
    cadence.fill(0, from, from + count);
  }
}
