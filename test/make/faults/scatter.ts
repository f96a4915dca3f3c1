import { wander } from '../noise.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { racing, withMeterOf } from './pair.ts';

const shared = {
  rules: ['wide-spread'],
  measure: 'spread of half-minute efforts, SD, share',
  strengths: { borderline: 0.05, moderate: 0.1, clear: 0.2 },
  needs: ['second recording'],
  source: practice,
  wish: racing,
} as const;

/** A loose pedal: for some seconds it tells less, then all again. */
export const loosePedal: Fault = {
  ...shared,
  name: 'loose pedal on the second',
  before: (draft, strength) =>
    withMeterOf(draft, 1, {
      twist(power, truth, random) {
        const perSecond = Math.round(1 / truth.step);
        // A third of the time at a lower level: SD of 0.47 of the depth.
        const depth = Math.min(0.85, strength / 0.47);
        for (let i = 0, loose = false; i < power.length; loose = !loose) {
          const length = Math.round(random.exponential(loose ? 30 : 60) + 10) * perSecond;
          if (loose) for (let q = i; q < Math.min(power.length, i + length); q++) power[q]! *= 1 - depth;
          i += length;
        }
      },
    }),
};

/** A battery near its end: the bridge's supply sways, and the reading with it. */
export const lowBattery: Fault = {
  ...shared,
  name: 'low battery on the primary',
  before: (draft, strength) =>
    withPrimaryMeter(draft, {
      twist(power, truth, random) {
        const sway = wander(random, truth.seconds, 1, 60);
        const perSecond = Math.round(1 / truth.step);
        for (let i = 0; i < power.length; i++) {
          power[i]! *= Math.max(0.2, 1 + strength * 1.15 * sway[Math.floor(i / perSecond)]!);
        }
      },
    }),
};
