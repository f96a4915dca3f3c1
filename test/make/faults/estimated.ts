import { toldOtherwise } from './edit.ts';
import type { Fault } from './fault.ts';

const shared = {
  rules: ['estimated-power'],
  measure: 'always the whole ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: [],
} as const;

/** A wheel-on trainer without a meter: power by a fixed curve of wheel speed. */
export const byTrainerCurve: Fault = {
  ...shared,
  name: 'power by a trainer’s curve of speed',
  source: 'common practice, no source: a curve of third degree, 200–300 W at 36 km/h',
  after(submission, _, random) {
    const speed = heldSpeed(submission.primary.channels.speed);
    if (speed === undefined) return submission;
    const [a, c] = [random.between(4, 9), random.between(0.12, 0.2)];
    const power = speed.map((v) => Math.round(a * v + c * v * v * v));
    return toldOtherwise(submission, { power });
  },
  wish: () => ({ kind: 'bunch race' }),
};

/** The same with the flywheel's inertia counted: power by speed and its change. */
export const byMotion: Fault = {
  ...shared,
  name: 'power by speed and its change',
  source: 'drag, rolling and kinetic terms of Martin et al. 1998, J Appl Biomech 14:276-291',
  wish: (random) => ({ kind: random.pick(['bunch race', 'time trial'] as const) }),
  after(submission, _, random) {
    const speed = heldSpeed(submission.primary.channels.speed);
    if (speed === undefined) return submission;
    const [mass, drag, rolling] = [
      random.between(10, 70),
      random.between(0.15, 0.22),
      random.between(2.5, 4.5),
    ];
    const power = speed.map((v, k) => {
      const force = drag * v * v + rolling + mass * (v - speed[Math.max(0, k - 1)]!);
      return Math.max(0, Math.round((force * v) / 0.976));
    });
    return toldOtherwise(submission, { power });
  },
};

function heldSpeed(speed: Float64Array | undefined): Float64Array | undefined {
  return speed?.map((v) => (Number.isNaN(v) ? 0 : v));
}
