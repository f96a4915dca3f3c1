import type { Random } from './random.ts';

/** What the innovations look like: the corpus for tuning and the one for reporting differ in this. */
export type NoiseFamily = 'normal' | 'heavy';

/** Time constants (s) of the one-pole filters whose sum falls like 1/f between their corners. */
const fastCorners = [0.12, 0.3, 0.75, 1.9, 4.7, 12, 29] as const;
const slowCorners = [60, 150, 400, 1000] as const;

/**
 * Pedalling variation: 1/f noise, so that means over 1, 4 and 30 s scatter alike. Real crisp traces show
 * just that up to about half a minute; slower than that riders hold themselves to a pace, so the slow part
 * is weaker. Unit: the Allan deviation (SD of the difference of neighbouring 8 s means, over √2) is 1.
 *
 * A sum of one-poles at ω_k weighted by ω_k^(-1/2), all driven by one white source, has |H|² ∝ 1/ω.
 *
 * @param step seconds between samples
 * @param slow weight of the part slower than a minute
 */
export function pedallingNoise(
  random: Random,
  length: number,
  step: number,
  slow: number,
  family: NoiseFamily = 'normal',
): Float64Array {
  const poles = filterBank(step, slow);
  const states = new Float64Array(poles.length);
  for (let k = 0; k < poles.length; k++) states[k] = random.normal() * poles[k]!.stationary;
  const out = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const white = family === 'normal' ? random.normal() : random.heavy(5);
    let sum = 0;
    for (let k = 0; k < poles.length; k++) {
      const { keep, gain } = poles[k]!;
      const state = states[k]! * keep + white * gain;
      states[k] = state;
      sum += state;
    }
    out[i] = sum;
  }
  return out;
}

interface Pole {
  readonly keep: number;
  readonly gain: number;
  readonly stationary: number;
}
const banks = new Map<string, readonly Pole[]>();

function filterBank(step: number, slow: number): readonly Pole[] {
  const key = `${step} ${slow}`;
  const known = banks.get(key);
  if (known !== undefined) return known;
  const raw = [
    ...fastCorners.map((tau) => [tau, 1] as const),
    ...slowCorners.map((tau) => [tau, slow] as const),
  ]
    .filter(([tau, weight]) => tau >= step / 4 && weight > 0)
    .map(([tau, weight]) => {
      const keep = Math.exp(-step / tau);
      return { keep, gain: weight * Math.sqrt(tau) * (1 - keep) };
    });
  const scale = 1 / allanDeviation(raw, step, 8);
  const bank = raw.map(({ keep, gain }) => ({
    keep,
    gain: gain * scale,
    stationary: (gain * scale) / Math.sqrt(1 - keep * keep),
  }));
  banks.set(key, bank);
  return bank;
}

/** From the impulse response: exact, no sampling. */
function allanDeviation(
  poles: readonly { keep: number; gain: number }[],
  step: number,
  seconds: number,
): number {
  const block = Math.round(seconds / step);
  const length = Math.round(6000 / step);
  const states = poles.map((pole) => pole.gain);
  const cumulative = new Float64Array(length + 1);
  for (let i = 0; i < length; i++) {
    let sum = 0;
    for (let k = 0; k < poles.length; k++) {
      sum += states[k]!;
      states[k] = states[k]! * poles[k]!.keep;
    }
    cumulative[i + 1] = cumulative[i]! + sum;
  }
  const at = (i: number) => cumulative[Math.max(0, Math.min(length, i))]!;
  let power = 0;
  for (let i = 0; i < length; i++) {
    const difference = (at(i + 1) - 2 * at(i + 1 - block) + at(i + 1 - 2 * block)) / block;
    power += difference * difference;
  }
  return Math.sqrt(power / 2);
}

/** First-order wander around zero (Ornstein–Uhlenbeck), SD 1 at every moment. */
export function wander(random: Random, length: number, step: number, tau: number): Float64Array {
  const keep = Math.exp(-step / tau);
  const gain = Math.sqrt(1 - keep * keep);
  const out = new Float64Array(length);
  let state = random.normal();
  for (let i = 0; i < length; i++) {
    out[i] = state;
    state = state * keep + gain * random.normal();
  }
  return out;
}

/**
 * Wander of another build, for the corpus that reports: straight ramps between turning points at random
 * moments. SD about 1, no exponential memory.
 */
export function rampWander(random: Random, length: number, step: number, tau: number): Float64Array {
  const out = new Float64Array(length);
  let from = random.normal(0, 1.2);
  let i = 0;
  while (i < length) {
    const to = random.normal(0, 1.2);
    const count = Math.max(1, Math.round((tau * random.between(0.7, 2.3)) / step));
    for (let j = 0; j < count && i < length; j++, i++) out[i] = from + ((to - from) * j) / count;
    from = to;
  }
  return out;
}
