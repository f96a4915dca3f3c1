import { type Fault, withPrimaryChannels } from './fault.ts';

/** Power is held while the cranks stand. */
export const coastingPower: Fault = {
  name: 'power while coasting',
  rules: ['coasting-power'],
  measure: 'seconds of each hold',
  strengths: { borderline: 4, moderate: 16, clear: 40 },
  needs: [],
  after(submission, strength, random) {
    const power = submission.primary.channels.power?.slice();
    const cadence = submission.primary.channels.cadence?.slice();
    if (power === undefined || cadence === undefined) return submission;
    const count = random.integer(4, 8);
    for (let k = 0; k < count; k++) {
      const from = random.integer(120, cadence.length - 120 - strength);
      const level = Math.max(80, power[from - 1]!);
      for (let i = from; i < from + strength; i++) {
        power[i] = Math.round(level * random.normal(1, 0.03));
        cadence[i] = 0;
      }
    }
    return withPrimaryChannels(submission, { power, cadence });
  },
};
