import { firstOrder } from '../../math/first-order.ts';
import { lastDigits } from '../../math/last-digits.ts';
import { solve } from '../../math/least-squares.ts';
import type { Series, TraitsChart } from '../../types.ts';
import { deviation } from './wander.ts';

export interface Trait {
  /** In few words, for a sentence that names several. */
  readonly named: string;
  readonly drawn: TraitsChart['traits'][number];
}

export interface TraitLimits {
  readonly minimumWatts: number;
  readonly minimumSeconds: number;
  readonly cadenceWander: number;
  readonly scatterRatio: number;
  readonly stillestHeart: number;
  readonly busiestHeart: number;
  readonly heartScatter: number;
  readonly heartFrom: number;
  readonly heartTimes: readonly number[];
  readonly unevenDigits: number;
  readonly digitChance: number;
}

/** What every rider shows, as far as the recording can show it. */
export function traitsOf(series: Series, limits: TraitLimits): Trait[] {
  return [cadenceWander, powerScatter, heartMoves, heartScatter, digits].flatMap(
    (trait) => trait(series, limits) ?? [],
  );
}

function trait(
  [named, name]: readonly [named: string, name: string],
  value: number,
  unit: Trait['drawn']['unit'],
  atLeast: number | null,
  atMost: number | null,
): Trait {
  const shown = (atLeast === null || value >= atLeast) && (atMost === null || value <= atMost);
  const rounded = Math.round(value * 1000) / 1000;
  return { named, drawn: { trait: name, value: rounded, unit, atLeast, atMost, shown } };
}

/** Legs do not keep a cadence: means over half a minute wander. */
function cadenceWander({ channels: { cadence, power }, length }: Series, limits: TraitLimits): Trait | null {
  if (cadence === undefined) return null;
  const means: number[] = [];
  for (let from = 0; from + 30 <= length; from += 30) {
    let sum = 0;
    let turning = 0;
    for (let i = from; i < from + 30; i++) {
      if (!(cadence[i]! > 0) || (power !== undefined && !(power[i]! > 0))) continue;
      sum += cadence[i]!;
      turning++;
    }
    if (turning === 30) means.push(sum / 30);
  }
  if (30 * means.length < limits.minimumSeconds) return null;
  const mean = means.reduce((a, b) => a + b, 0) / means.length;
  const variance = means.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (means.length - 1);
  const wander = (100 * Math.sqrt(variance)) / mean;
  return trait(
    ['wandering cadence', 'cadence wanders from half minute to half minute'],
    wander,
    '%',
    limits.cadenceWander,
    null,
  );
}

/** Pedalling is uneven alike over 2 s and 4 s; numbers drawn at random even out (ratio 1.41). */
function powerScatter({ channels: { power } }: Series, limits: TraitLimits): Trait | null {
  if (power === undefined) return null;
  const pedalled = power.map((watts) => (watts >= limits.minimumWatts ? watts : Number.NaN));
  const short = deviation(pedalled, 2);
  const long = deviation(pedalled, 4);
  if (short.pairs < limits.minimumSeconds || long.whole === 0) return null;
  return trait(
    ['uneven power', 'power scatters over 4 s about as over 2 s'],
    short.whole / long.whole,
    'ratio',
    null,
    limits.scatterRatio,
  );
}

/** A heart rate in whole beats changes now and then, neither never nor every second. */
function heartMoves({ channels: { heartRate } }: Series, limits: TraitLimits): Trait | null {
  if (heartRate === undefined) return null;
  let seconds = 0;
  let moves = 0;
  for (let i = 1; i < heartRate.length; i++) {
    const change = heartRate[i]! - heartRate[i - 1]!;
    if (Number.isNaN(change)) continue;
    seconds++;
    if (change !== 0) moves++;
  }
  if (seconds < limits.minimumSeconds) return null;
  const share = moves / seconds;
  return trait(
    ['changing heart rate', 'heart rate changes from second to second'],
    share,
    'share',
    limits.stillestHeart,
    limits.busiestHeart,
  );
}

/** No formula of power and time tells a heart rate to the beat: the best of several leaves scatter. */
function heartScatter({ channels: { heartRate, power } }: Series, limits: TraitLimits): Trait | null {
  if (heartRate === undefined || power === undefined) return null;
  const known: number[] = [];
  // The start is left out: where the heart came from is not in the file.
  for (let i = limits.heartFrom; i < heartRate.length; i += 5) if (heartRate[i]! > 0) known.push(i);
  if (5 * known.length < limits.minimumSeconds) return null;
  const rows = Int32Array.from(known);
  const y = at(rows, heartRate);
  const ones = new Float64Array(rows.length).fill(1);
  const time = Float64Array.from(rows, (i) => i / heartRate.length);
  let least = Number.POSITIVE_INFINITY;
  for (const tau of limits.heartTimes) {
    const fit = solve([ones, time, at(rows, firstOrder(power, tau))], y);
    if (fit === null) continue;
    const squares = fit.residuals.reduce((sum, residual) => sum + residual * residual, 0);
    least = Math.min(least, Math.sqrt(squares / rows.length));
  }
  if (!Number.isFinite(least)) return null;
  return trait(
    ['own heart scatter', 'heart rate has a scatter of its own'],
    least,
    'bpm',
    limits.heartScatter,
    null,
  );
}

/** The values of a column at some seconds. */
function at(seconds: Int32Array, column: Float64Array): Float64Array {
  const values = new Float64Array(seconds.length);
  for (let k = 0; k < values.length; k++) values[k] = column[seconds[k]!]!;
  return values;
}

/** Watts that were measured end on every digit alike. */
function digits({ recording }: Series, limits: TraitLimits): Trait | null {
  const { power } = recording.channels;
  if (power === undefined) return null;
  const measured: number[] = [];
  for (let i = 1; i < power.length; i++) {
    const watts = power[i]!;
    if (watts >= limits.minimumWatts && watts !== power[i - 1] && Number.isInteger(watts))
      measured.push(watts);
  }
  if (measured.length < limits.minimumSeconds) return null;
  const { uneven, tail } = lastDigits(measured);
  const value = tail <= limits.digitChance ? uneven : 0;
  return trait(['even digits', 'watts end on every digit alike'], value, 'share', null, limits.unevenDigits);
}
