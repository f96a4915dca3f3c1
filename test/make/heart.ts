import type { Random } from './random.ts';
import type { Heart } from './rider.ts';

/** Cooling and heat on the day. */
export interface Conditions {
  /** Multiplies the slow rise of heart rate; a hot, still room has 2 or more. */
  readonly heat: number;
  /** Second of the ride at which a fan is switched on, or null. */
  readonly fanFrom: number | null;
}
export const mildConditions: Conditions = { heat: 1, fanFrom: null };

/**
 * Heart rate second by second: first-order answer to power with the rider's time constant, a slow
 * component in hard work (Teso et al. 2022), a slow rise over the ride (Coyle & González-Alonso 2001),
 * beat-to-beat wander and slower moods on top; a strap tells the mean of some seconds.
 */
export function heartRate(
  power: Float64Array,
  cp: number,
  heart: Heart,
  conditions: Conditions,
  random: Random,
): Float64Array {
  const out = new Float64Array(power.length);
  const reserve = heart.max - heart.rest;
  const keep = Math.exp(-1 / heart.tau);
  const keepSlow = Math.exp(-1 / 420);
  const keepBeat = Math.exp(-1 / 6);
  const beatGain = Math.sqrt(1 - keepBeat * keepBeat);
  const keepMood = Math.exp(-1 / 180);
  const moodGain = Math.sqrt(1 - keepMood * keepMood);
  const keepHeard = Math.exp(-1 / 2.5);
  let fast = standingShare;
  let slow = 0;
  let drift = 0;
  let fan = 0;
  let beat = random.normal();
  let mood = random.normal();
  const moodSpread = random.between(1, 3);
  let heard = 0;
  for (let i = 0; i < power.length; i++) {
    const intensity = Math.min(1.6, power[i]! / cp);
    fast = fast * keep + (1 - keep) * answer(intensity, heart.atCp);
    slow = slow * keepSlow + (1 - keepSlow) * 0.05 * Math.max(0, intensity - 0.5) * 2;
    if (i > 600) drift += (heart.driftPerHour * conditions.heat * Math.min(1.1, intensity)) / 3600;
    if (conditions.fanFrom !== null && i >= conditions.fanFrom) fan += (1 - fan) / 300;
    beat = beat * keepBeat + beatGain * random.normal();
    mood = mood * keepMood + moodGain * random.normal();
    const steady = heart.rest + reserve * (fast + slow) + drift - fan * Math.min(9, drift + 5);
    const bpm = steady + 1.2 * beat + moodSpread * mood;
    const now = Math.min(heart.max + 1, softly(bpm, heart.max));
    heard = i === 0 ? now : heard * keepHeard + (1 - keepHeard) * now;
    out[i] = heard;
  }
  return out;
}

/** Share of the reserve in use when sitting still on the bicycle. */
const standingShare = 0.2;

/** Share of the reserve that an intensity (power over CP) asks for in the long run. */
function answer(intensity: number, atCp: number): number {
  return standingShare + (atCp - standingShare) * intensity;
}

/** Bends towards the maximum from 6 bpm below it. */
function softly(bpm: number, max: number): number {
  const knee = max - 6;
  return bpm <= knee ? bpm : knee + 6 * (1 - Math.exp(-(bpm - knee) / 6));
}
