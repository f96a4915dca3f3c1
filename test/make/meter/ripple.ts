import type { Truth } from '../ride.ts';

/**
 * Torque rises and falls twice a turn. A meter that averages over whole turns does not see it; one that
 * averages over a time of its own catches now more of a stroke, now less.
 */
export interface Ripple {
  /** s */
  readonly window: number;
  /** Height of the wave within a stroke, share of the mean torque; whole turns only: 0. */
  readonly depth: number;
  /** Where in its stroke a meter's clock finds the cranks at first, 0–1. */
  readonly phase: number;
}

/** Multiplies readings by what is left of the strokes after averaging over the window. */
export function applyRipple(power: Float64Array, truth: Truth, { window, depth, phase }: Ripple): void {
  if (depth === 0) return;
  let strokes = phase;
  for (let i = 0; i < power.length; i++) {
    const rate = truth.cadence[i]! / 30;
    strokes += rate * truth.step;
    if (rate === 0) continue;
    const turns = rate * window;
    // Mean of a sine over the window: |sin(π·turns)| / (π·turns).
    const left = (depth * wave(turns / 2)) / (Math.PI * turns);
    power[i]! *= 1 + left * wave(strokes - turns / 2);
  }
}

/** A wave of period 1 and height 1 out of two parabolas: within 6 % of a sine, and the same on every Node. */
function wave(at: number): number {
  const part = at - Math.floor(at);
  return part < 0.5 ? 16 * part * (0.5 - part) : -16 * (part - 0.5) * (1 - part);
}
