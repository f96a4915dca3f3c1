import type { Device, Place } from '../../src/types.ts';
import { readCadence } from './meter/cadence.ts';
import { errorOf } from './meter/error.ts';
import { atPlace, readBalance } from './meter/place.ts';
import { applyRipple, type Ripple } from './meter/ripple.ts';
import { delay, type Kernel, smooth } from './meter/smooth.ts';
import { pedallingNoise } from './noise.ts';
import type { Random } from './random.ts';
import type { Truth } from './ride.ts';

/**
 * One meter as it is, every error set apart. An honest, perfect meter at the cranks is `perfectMeter`;
 * each fault changes one or two fields.
 */
export interface MeterSpec {
  /** What tells it from other meters in a file's list of sensors. */
  readonly serial: string;
  readonly place: Place;
  readonly sides: 1 | 2;
  /** The maker's claim, ± percent. */
  readonly tolerancePercent: number;
  /** Reading over truth in steady riding; 1 is right. */
  readonly gain: number;
  /** Share lost between cranks and wheel, seen by hub and trainer only. 0.021 ± 0.015 (Smit et al. 2023). */
  readonly drivetrainLoss: number;
  /** Constant torque added, N·m at the cranks. */
  readonly torqueOffset: number;
  /** A further torque from a moment on: a zero offset done, or lost, in mid-ride. Seconds of the ride. */
  readonly offsetStep: { readonly at: number; readonly torque: number } | null;
  /** Uncorrelated error of a single reading, share. */
  readonly noise: number;
  /** Readings refer to a moment up to this many seconds older, at random: events wait for a message. */
  readonly jitter: number;
  /** Seconds from one message to the next; each reading stands until then. 0: told as it goes. */
  readonly every: number;
  /** What strokes leave in readings over a time that is no whole number of turns; null: nothing. */
  readonly ripple: Ripple | null;
  /** s */
  readonly lag: number;
  readonly kernel: Kernel;
  /** Change of the reading with its own temperature, and how that warms: share per °C, °C, s. */
  readonly temperature: {
    readonly perDegree: number;
    readonly warming: number;
    readonly tau: number;
  };
  /** Straight change of the gain over the ride, share an hour; 0 at the first second. */
  readonly driftPerHour: number;
  /** Slow wander of the gain: SD as a share, time constant in s, and how it is built. */
  readonly wander: { readonly spread: number; readonly tau: number; readonly ramps: boolean };
  /** Error in sprints beyond the steady one, share, growing from nothing at `from` to full at `full` W. */
  readonly sprint: { readonly error: number; readonly from: number; readonly full: number } | null;
  /** Error while power leaps up: share of the rise over the last seconds. */
  readonly overshoot: number;
  /** Share per 100 W above `powerPivot`. */
  readonly powerSlope: number;
  readonly powerPivot: number;
  /** Share per 10 rpm above 85. */
  readonly cadenceSlope: number;
  /** Share per 10 m/s of flywheel speed above 10 m/s; seen by trainers. */
  readonly speedSlope: number;
  /** A further error of another sort, put on power at the meter's place before any averaging. */
  readonly twist: ((power: Float64Array, truth: Truth, random: Random) => void) | null;
  /** Seconds over which power fades when the cranks stop. */
  readonly tail: number;
  /** Reports the wanted power instead of a measurement. */
  readonly reportsTarget: TargetReport | null;
  /** Watts are whole multiples of this; 0 or 1: none. */
  readonly stepWatts: number;
  readonly cadence: CadenceSpec;
}

export interface TargetReport {
  /** Stretches of the ride (s) in which it does so. */
  readonly stretches: readonly (readonly [from: number, to: number])[];
  /** Watts of noise put on top, SD. */
  readonly noise: number;
  /** Where nobody set a target: power held for this many seconds. */
  readonly hold: number;
}

export interface CadenceSpec {
  /** No cadence at all, cadence that stays at zero, or cadence that works. */
  readonly state: 'absent' | 'dead' | 'works';
  /** rpm, SD of a reading. */
  readonly noise: number;
  /** Seconds of averaging. */
  readonly width: number;
  /** Seconds for which the last value is held after the cranks stop. */
  readonly hold: number;
  /** Share of readings that repeat the one before. */
  readonly sticky: number;
}

/** What a meter sends, on the truth's fine clock. NaN: nothing. */
export interface Signal {
  readonly step: number;
  readonly power: Float64Array;
  readonly meter: Device;
  /** rpm; null where the meter tells none. Made when asked for, as the next one: not every file keeps them. */
  cadence(): Float64Array | null;
  /** Left share each second, %; null where the meter does not tell legs apart. */
  balance(): Float64Array | null;
}

export const workingCadence: CadenceSpec = { state: 'works', noise: 0.5, width: 1.5, hold: 1, sticky: 0.1 };

export const perfectMeter: MeterSpec = {
  serial: '1',
  place: 'crank',
  sides: 2,
  tolerancePercent: 1,
  gain: 1,
  drivetrainLoss: 0,
  torqueOffset: 0,
  offsetStep: null,
  noise: 0,
  jitter: 0,
  every: 0,
  ripple: null,
  lag: 0,
  kernel: { shape: 'box', seconds: 1 },
  temperature: { perDegree: 0, warming: 0, tau: 900 },
  driftPerHour: 0,
  wander: { spread: 0, tau: 600, ramps: false },
  sprint: null,
  overshoot: 0,
  powerSlope: 0,
  powerPivot: 200,
  cadenceSlope: 0,
  speedSlope: 0,
  twist: null,
  tail: 0,
  reportsTarget: null,
  stepWatts: 0,
  cadence: workingCadence,
};

/** Truth as this meter tells it. */
export function read(truth: Truth, spec: MeterSpec, random: Random): Signal {
  const power = atPlace(truth, spec, random.fork('sides'));
  errorOf(truth, spec, random.fork('slow')).apply(power);
  spec.twist?.(power, truth, random.fork('twist'));
  noisy(power, truth.step, spec, random.fork('noise'));
  const smoothed = smooth(power, truth.step, spec.kernel);
  if (spec.ripple !== null) applyRipple(smoothed, truth, spec.ripple);
  const told = delay(smoothed, truth.step, spec, random);
  if (spec.reportsTarget !== null) tellTarget(told, truth, spec.reportsTarget, random.fork('target'));
  for (let i = 0; i < told.length; i++) {
    const watts = Math.max(0, told[i]!);
    told[i] = spec.stepWatts > 1 ? Math.round(watts / spec.stepWatts) * spec.stepWatts : watts;
  }
  return {
    step: truth.step,
    power: told,
    meter: { maker: 'development', product: spec.place, serial: spec.serial },
    cadence: () => readCadence(truth, spec, random.fork('cadence')),
    balance: () => readBalance(truth, spec, random.fork('balance')),
  };
}

/** Error of single readings: independent from second to second, so drawn before the averaging kernel. */
function noisy(power: Float64Array, step: number, spec: MeterSpec, random: Random): void {
  if (spec.noise === 0) return;
  const spread = spec.noise * Math.sqrt(Math.max(1, spec.kernel.seconds) / step);
  for (let i = 0; i < power.length; i++) power[i]! *= 1 + spread * random.normal();
}

/** A plateau for every change of the target, with next to nothing on it. */
function tellTarget(told: Float64Array, truth: Truth, report: TargetReport, random: Random): void {
  const perSecond = Math.round(1 / truth.step);
  const breath = pedallingNoise(random, truth.seconds, 1, 0);
  for (const [from, to] of report.stretches) {
    let held = 0;
    for (let i = from; i < Math.min(to, truth.seconds); i++) {
      if (truth.demand.control === 'set-point') held = truth.demand.effort[i]!;
      else if ((i - from) % report.hold === 0) held = meanEffort(truth, i, report.hold);
      const watts =
        truth.demand.effort[i] === 0 ? 0 : Math.round(held) + Math.round(report.noise * breath[i]!);
      told.fill(Math.max(0, watts), i * perSecond, (i + 1) * perSecond);
    }
  }
}

function meanEffort(truth: Truth, from: number, seconds: number): number {
  let sum = 0;
  let count = 0;
  for (let i = from; i < Math.min(truth.seconds, from + seconds); i++) {
    const watts = truth.secondPower[i]!;
    if (watts > 0) {
      sum += watts;
      count++;
    }
  }
  return count === 0 ? 0 : sum / count;
}
