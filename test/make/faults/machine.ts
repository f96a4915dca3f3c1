import { toldOtherwise } from './edit.ts';
import type { Fault } from './fault.ts';

const shared = {
  rules: ['machine-like', 'flat-setpoint'],
  measure: 'always the whole ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['cadence', 'heart rate'],
  source: 'power and pace of real riders are neither flat nor white (Tucker et al. 2006, BJSM 40:912)',
} as const;

/** A script: even noise on a plan, one cadence, a heart that follows a formula. */
export const script: Fault = {
  ...shared,
  name: 'a script with even noise',
  after(submission, _, random) {
    const told = submission.primary.channels.power!;
    const rest = random.between(90, 110);
    let level = 150;
    const power = told.map((watts, k) => {
      if (k % 60 === 0) level = Math.max(120, mean(told, k, k + 60));
      return Math.max(0, Math.round((watts > 0 ? level : level) + random.between(-8, 8)));
    });
    const turns = random.integer(80, 95);
    const cadence = power.map(() => turns);
    const heartRate = power.map((watts) => Math.round(rest + watts / 4));
    return toldOtherwise(submission, { power, cadence, heartRate });
  },
};

/** A motor on the bench: normal noise without memory, cadence held by a governor, no heart. */
export const motor: Fault = {
  ...shared,
  name: 'a motor at the cranks',
  after(submission, _, random) {
    const told = submission.primary.channels.power!;
    const plan = random.between(180, 320);
    const power = told.map(() => Math.round(plan * random.normal(1, 0.015)));
    const turns = random.between(80, 100);
    const cadence = power.map(() => Math.round(turns + random.normal(0, 0.2)));
    const beats = random.integer(110, 150);
    const heartRate = power.map(() => beats);
    return toldOtherwise(submission, { power, cadence, heartRate });
  },
};

function mean(values: Float64Array, from: number, to: number): number {
  const part = values.subarray(from, Math.min(values.length, to));
  return part.reduce((sum, value) => sum + (value || 0), 0) / Math.max(1, part.length);
}
