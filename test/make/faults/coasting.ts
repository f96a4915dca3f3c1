import { toldOtherwise } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['coasting-power'],
  measure: 'seconds of each hold',
  strengths: { borderline: 4, moderate: 16, clear: 40 },
  needs: ['cadence'],
  source: practice,
} as const;

/** Power goes on while the cranks stand. */
export const coastingPower: Fault = {
  ...shared,
  name: 'power while coasting',
  after(submission, strength, random) {
    const power = submission.primary.channels.power?.slice();
    const cadence = submission.primary.channels.cadence?.slice();
    if (power === undefined || cadence === undefined) return submission;
    const count = random.integer(4, 8);
    for (let k = 0; k < count; k++) {
      const from = random.integer(120, cadence.length - 120 - strength);
      const level = Math.max(80, power[from - 1] || 0);
      for (let i = from; i < from + strength; i++) {
        power[i] = Math.round(level * random.normal(1, 0.03));
        cadence[i] = 0;
      }
    }
    return toldOtherwise(submission, { power, cadence });
  },
};

/** A flywheel runs down slowly and the trainer takes that for work: power fades instead of ending. */
export const flywheelTail: Fault = {
  ...shared,
  name: 'flywheel runs down as power',
  after(submission, strength, random) {
    const power = submission.primary.channels.power?.slice();
    const cadence = submission.primary.channels.cadence?.slice();
    if (power === undefined || cadence === undefined) return submission;
    for (let k = 0, count = random.integer(6, 10); k < count; k++) {
      const from = random.integer(120, cadence.length - 120 - 2 * strength);
      const level = Math.max(150, power[from - 1] || 0);
      // From its level to 30 W in the seconds stated, then to nothing.
      const tau = strength / Math.log(level / 30);
      for (let i = 0; i < 1.4 * strength; i++) {
        const watts = level * Math.exp(-i / tau);
        power[from + i] = watts < 15 ? 0 : Math.round(watts);
        cadence[from + i] = 0;
      }
    }
    return toldOtherwise(submission, { power, cadence });
  },
};
