import type { MeterSpec } from '../meter.ts';
import { rampWander, wander } from '../noise.ts';
import type { Random } from '../random.ts';
import type { Truth } from '../ride.ts';
import { powerOf } from '../torque.ts';

/**
 * The meter's errors that have a cause: gain, temperature, wander, power, cadence, flywheel speed, sprints,
 * and torque that is added. They multiply, torque is added at the end.
 */
export function errorOf(truth: Truth, spec: MeterSpec, random: Random): { apply(power: Float64Array): void } {
  return {
    apply(power) {
      const perSecond = Math.round(1 / truth.step);
      const slow = slowGain(truth, spec, random);
      const calm = new Calm(truth.step);
      const { powerSlope, powerPivot, cadenceSlope, speedSlope, sprint, overshoot } = spec;
      for (let second = 0, i = 0; i < power.length; second++) {
        const atSpeed = speedSlope === 0 ? 1 : 1 + (speedSlope * (truth.speed[second]! - 10)) / 10;
        const step = spec.offsetStep !== null && second >= spec.offsetStep.at ? spec.offsetStep.torque : 0;
        const torque = spec.torqueOffset + step;
        for (const end = Math.min(power.length, i + perSecond); i < end; i++) {
          const base = power[i]!;
          const cadence = truth.cadence[i]!;
          let gain = slow[second]! * (1 + (powerSlope * (base - powerPivot)) / 100);
          if (cadence > 0) gain *= 1 + (cadenceSlope * (cadence - 85)) / 10;
          gain *= atSpeed;
          if (sprint !== null) gain *= 1 + sprint.error * ramp(base, sprint.from, sprint.full);
          if (overshoot !== 0) gain *= 1 + overshoot * calm.rise(base);
          power[i] = base * gain + (cadence > 0 && base > 0 ? powerOf(torque, cadence) : 0);
        }
      }
    },
  };
}

/** Gain once a second: constant, warming, drifting, wandering. */
function slowGain(truth: Truth, spec: MeterSpec, random: Random): Float64Array {
  const out = new Float64Array(truth.seconds).fill(spec.gain);
  const { perDegree, warming, tau } = spec.temperature;
  if (perDegree !== 0) {
    const first = truth.temperature[0] ?? 0;
    for (let i = 0; i < out.length; i++) {
      const degrees = warming * (1 - Math.exp(-i / tau)) + truth.temperature[i]! - first;
      out[i]! *= 1 + perDegree * degrees;
    }
  }
  if (spec.driftPerHour !== 0) {
    for (let i = 0; i < out.length; i++) out[i]! *= 1 + (spec.driftPerHour * i) / 3600;
  }
  if (spec.wander.spread > 0) {
    const make = spec.wander.ramps ? rampWander : wander;
    const sway = make(random, truth.seconds, 1, spec.wander.tau);
    for (let i = 0; i < out.length; i++) out[i]! *= 1 + spec.wander.spread * sway[i]!;
  }
  return out;
}

/** 0 below `from`, 1 above `full`, straight between. */
export function ramp(value: number, from: number, full: number): number {
  return Math.max(0, Math.min(1, (value - from) / (full - from)));
}

/**
 * How far power stands above its own last ten seconds as it leaps up to hard efforts (0 to 1): nothing below
 * `from`, in full above `full` W.
 */
export function leaps(power: Float64Array, step: number, from: number, full: number): Float64Array {
  const calm = new Calm(step);
  return power.map((watts) => calm.rise(watts) * ramp(watts, from, full));
}

/** How far power stands above its own last ten seconds, as a share (0 to 1). */
class Calm {
  private readonly keep: number;
  private level = 0;

  constructor(step: number) {
    this.keep = Math.exp(-step / 10);
  }

  rise(power: number): number {
    this.level = this.level * this.keep + power * (1 - this.keep);
    if (power <= this.level || power < 50) return 0;
    return Math.min(1, (power - this.level) / power);
  }
}
