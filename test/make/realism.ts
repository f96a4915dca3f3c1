import type { Recording } from '../../src/types.ts';

/** Figures by which a simulated trace is held against a real one. None depends on how strong the rider is. */
export interface Figures {
  /** Correlation of power in neighbouring seconds of pedalling. */
  readonly lag1: number;
  /** Variance of second over first differences: 2.1–2.5 in crisp traces, 1.2 after 3 s of averaging. */
  readonly differenceRatio: number;
  /** Robust spread of the change from one second to the next, share of the mean. */
  readonly step: number;
  /** Share of changes beyond four robust spreads. */
  readonly tails: number;
  /** Allan deviation of means over 1, 4, 16 and 64 s, share of the mean. */
  readonly allan1: number;
  readonly allan4: number;
  readonly allan16: number;
  readonly allan64: number;
  /** Longest run of one value above zero, s. */
  readonly longestRun: number;
  /** Share of seconds without power. */
  readonly zeros: number;
  /** Median length of a spell without cadence, s, and spells an hour. */
  readonly coastLength: number;
  readonly coastsPerHour: number;
  /** Seconds with cadence but no power, and with power but no cadence, per spell. */
  readonly turningEmpty: number;
  readonly poweredStill: number;
  /** Correlation of cadence and power, and of their changes, while pedalling. */
  readonly cadencePower: number;
  readonly cadencePowerSteps: number;
  /** Spread of the change of cadence from second to second, rpm (robust), and share of repeats. */
  readonly cadenceStep: number;
  readonly cadenceRepeats: number;
  /** Lag (s) at which heart rate fits power best after a 30 s low pass, and how well. */
  readonly heartLag: number;
  readonly heartFit: number;
  /** Share of seconds that repeat the heart rate before. */
  readonly heartRepeats: number;
}

export function figures({ time, channels }: Pick<Recording, 'time' | 'channels'>): Figures {
  const power = channels.power ?? new Float64Array(time.length).fill(Number.NaN);
  const cadence = channels.cadence ?? power;
  const heart = channels.heartRate ?? new Float64Array(time.length).fill(Number.NaN);
  const pedals = (i: number) => power[i]! > 0 && cadence[i]! > 0;
  const follows = (i: number) => i > 0 && time[i]! - time[i - 1]! === 1;
  const joined = (from: number, to: number) => {
    for (let i = from; i <= to; i++) if (!pedals(i) || (i > from && !follows(i))) return false;
    return true;
  };
  const here: number[] = [];
  const next: number[] = [];
  const steps: number[] = [];
  const seconds: number[] = [];
  const turns: number[] = [];
  const turnSteps: number[] = [];
  for (let i = 2; i < time.length; i++) {
    if (!joined(i - 2, i)) continue;
    here.push(power[i - 1]!);
    next.push(power[i]!);
    steps.push(power[i]! - power[i - 1]!);
    seconds.push(power[i]! - 2 * power[i - 1]! + power[i - 2]!);
    turns.push(cadence[i]!);
    turnSteps.push(cadence[i]! - cadence[i - 1]!);
  }
  const level = mean(next);
  const spread = robust(steps);
  const coasts = spells(time, cadence);
  const [heartLag, heartFit] = heartAnswer(power, heart);
  return {
    lag1: correlation(here, next),
    differenceRatio: variance(seconds) / variance(steps),
    step: spread / level,
    tails: share(steps, (value) => Math.abs(value) > 4 * spread),
    allan1: allan(power, 1, joined) / level,
    allan4: allan(power, 4, joined) / level,
    allan16: allan(power, 16, joined) / level,
    allan64: allan(power, 64, joined) / level,
    longestRun: longestRun(power),
    zeros: share([...power], (watts) => watts === 0),
    coastLength: quantile(coasts, 0.5),
    coastsPerHour: (coasts.length * 3600) / time.length,
    turningEmpty: count(time.length, (i) => power[i] === 0 && cadence[i]! > 0) / Math.max(1, coasts.length),
    poweredStill: count(time.length, (i) => power[i]! > 0 && cadence[i] === 0) / Math.max(1, coasts.length),
    cadencePower: correlation(turns, next),
    cadencePowerSteps: correlation(turnSteps, steps),
    cadenceStep: Math.sqrt(mean(turnSteps.filter((d) => Math.abs(d) < 8).map((d) => d * d))),
    cadenceRepeats: share(turnSteps, (d) => d === 0),
    heartLag,
    heartFit,
    heartRepeats:
      channels.heartRate === undefined
        ? Number.NaN
        : share([...heart.keys()].slice(1), (i) => heart[i] === heart[i - 1]),
  };
}

function allan(values: Float64Array, block: number, joined: (from: number, to: number) => boolean): number {
  let sum = 0;
  let pairs = 0;
  for (let i = 0; i + 2 * block <= values.length; i += Math.max(1, block >> 1)) {
    if (!joined(i, i + 2 * block - 1)) continue;
    let difference = 0;
    for (let j = 0; j < block; j++) difference += values[i + block + j]! - values[i + j]!;
    sum += (difference / block) * (difference / block);
    pairs++;
  }
  return pairs < 12 ? Number.NaN : Math.sqrt(sum / pairs / 2);
}

function longestRun(power: Float64Array): number {
  let longest = 0;
  let run = 0;
  for (let i = 0; i < power.length; i++) {
    run = power[i]! > 0 && power[i] === power[i - 1] ? run + 1 : 1;
    if (power[i]! > 0 && run > longest) longest = run;
  }
  return longest;
}

function spells(time: Float64Array, cadence: Float64Array): number[] {
  const out: number[] = [];
  let length = 0;
  for (let i = 0; i <= time.length; i++) {
    if (i < time.length && cadence[i] === 0) length++;
    else {
      if (length > 0) out.push(length);
      length = 0;
    }
  }
  return out;
}

function heartAnswer(power: Float64Array, heart: Float64Array): [lag: number, fit: number] {
  const filtered = new Float64Array(power.length);
  let state = power[0]! || 0;
  for (let i = 0; i < power.length; i++) {
    const watts = power[i]!;
    if (!Number.isNaN(watts)) state += (watts - state) / 30;
    filtered[i] = state;
  }
  let best: [number, number] = [Number.NaN, Number.NaN];
  for (let lag = -40; lag <= 120; lag += 2) {
    const x: number[] = [];
    const y: number[] = [];
    for (let i = 600; i < power.length; i += 2) {
      if (!(heart[i]! > 0) || i - lag < 0 || i - lag >= power.length) continue;
      x.push(filtered[i - lag]!);
      y.push(heart[i]!);
    }
    const fit = x.length > 120 ? correlation(x, y) : Number.NaN;
    if (fit > best[1] || (Number.isNaN(best[1]) && fit > -1)) best = [lag, fit];
  }
  return best;
}

/**
 * Higuchi's fractal dimension (Higuchi 1988): how the length of the curve falls with the step it is walked
 * in. 1 smooth, 2 white noise; 1.5–1.9 in self-paced riding (Tucker et al. 2006).
 */
export function fractalDimension(values: ArrayLike<number>, longest = 8): number {
  const x: number[] = [];
  const y: number[] = [];
  for (let k = 1; k <= longest; k++) {
    let length = 0;
    for (let m = 0; m < k; m++) {
      let sum = 0;
      let parts = 0;
      for (let i = m + k; i < values.length; i += k, parts++) sum += Math.abs(values[i]! - values[i - k]!);
      length += (sum * (values.length - 1)) / (parts * k) / k;
    }
    x.push(-Math.log(k));
    y.push(Math.log(length / k));
  }
  return correlation(x, y) * Math.sqrt(variance(y) / variance(x));
}

function mean(values: readonly number[]): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
}

function variance(values: readonly number[]): number {
  const middle = mean(values);
  let sum = 0;
  for (const value of values) sum += (value - middle) * (value - middle);
  return sum / values.length;
}

function correlation(x: readonly number[], y: readonly number[]): number {
  const [mx, my] = [mean(x), mean(y)];
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += (x[i]! - mx) * (y[i]! - my);
  return sum / x.length / Math.sqrt(variance(x) * variance(y));
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  return sorted.length === 0 ? Number.NaN : sorted[Math.round(share * (sorted.length - 1))]!;
}

/** Median of absolute values, scaled to a standard deviation of normal values. */
function robust(values: readonly number[]): number {
  return 1.4826 * quantile(values.map(Math.abs), 0.5);
}

function share<T>(values: readonly T[], holds: (value: T) => boolean): number {
  return values.filter(holds).length / values.length;
}

function count(length: number, holds: (index: number) => boolean): number {
  let found = 0;
  for (let i = 0; i < length; i++) if (holds(i)) found++;
  return found;
}
