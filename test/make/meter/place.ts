import type { MeterSpec } from '../meter.ts';
import { wander } from '../noise.ts';
import type { Random } from '../random.ts';
import type { Truth } from '../ride.ts';

/** Watts where the loss of the chain is its mean share; below, the share grows. */
const lossPivot = 200;

/** True power at the meter's own place: cranks, one leg doubled, or the wheel. */
export function atPlace(truth: Truth, spec: MeterSpec, random: Random): Float64Array {
  if (spec.place === 'hub' || spec.place === 'trainer') return atWheel(truth, spec);
  return spec.sides === 2 ? truth.power.slice() : oneLegDoubled(truth, random);
}

/** A part of the loss is constant watts, so that the share grows at low power. */
function atWheel(truth: Truth, { drivetrainLoss, tail }: MeterSpec): Float64Array {
  const out = new Float64Array(truth.power.length);
  const fade = tail > 0 ? Math.exp(-truth.step / tail) : 0;
  let last = 0;
  for (let i = 0; i < out.length; i++) {
    const crank = truth.power[i]!;
    const wheel = Math.max(0, crank - drivetrainLoss * (0.3 * lossPivot + 0.7 * crank));
    // The wheel runs on: a meter at the wheel may go on telling power for a while.
    out[i] = crank === 0 ? (last * fade < 8 ? 0 : last * fade) : wheel;
    last = out[i]!;
  }
  return out;
}

/** The left leg's power, twice. */
function oneLegDoubled(truth: Truth, random: Random): Float64Array {
  const left = leftShare(truth, random);
  return truth.power.map((power, i) => 2 * left(i) * power);
}

/** The left leg's share of each step (0–1). Asymmetry fades towards full effort (Kell & Greer 2017). */
function leftShare(truth: Truth, random: Random): (step: number) => number {
  const { asymmetry, ability } = truth.rider;
  const perSecond = Math.round(1 / truth.step);
  const sway = wander(random, truth.seconds, 1, 240);
  return (i) => {
    const fade = Math.max(0.15, 1 - (0.5 * truth.power[i]!) / ability.cp);
    return 0.5 + asymmetry * fade + 0.003 * sway[Math.floor(i / perSecond)]!;
  };
}

/**
 * The left share (%, whole) as a meter at both legs tells it each second, NaN while coasting; null from any
 * other. From turn to turn it moves by a percent (common practice, no source).
 */
export function readBalance(truth: Truth, spec: MeterSpec, random: Random): Float64Array | null {
  if (spec.sides !== 2 || spec.place === 'hub' || spec.place === 'trainer') return null;
  const left = leftShare(truth, random);
  const perSecond = Math.round(1 / truth.step);
  return Float64Array.from({ length: truth.seconds }, (_, second) => {
    const turn = 0.01 * random.normal();
    return truth.secondPower[second]! > 0 ? Math.round(100 * (left(second * perSecond) + turn)) : Number.NaN;
  });
}
