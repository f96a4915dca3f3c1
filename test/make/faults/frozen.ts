import { withMeter } from '../honest.ts';
import { toldOtherwise } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['frozen-value', 'recording-gap'],
  measure: 'seconds frozen: one stretch, three, or a quarter of the ride',
  strengths: { borderline: 30, moderate: 270, clear: 900 },
  needs: ['cadence'],
  source: practice,
} as const;

const wish = () => ({ minutes: 60 });

/** A head unit goes on with the last power it heard; cadence, heart rate and speed move. */
export const powerFrozen: Fault = {
  ...shared,
  name: 'power frozen',
  wish,
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    for (const [from, to] of stretchesOf(strength, power.length, random)) power.fill(power[from]!, from, to);
    return toldOtherwise(submission, { power });
  },
};

/** The meter is gone, and both that it told stand still. */
export const meterFrozen: Fault = {
  ...shared,
  name: 'power and cadence frozen',
  wish,
  after(submission, strength, random) {
    const power = submission.primary.channels.power!.slice();
    const cadence = submission.primary.channels.cadence!.slice();
    for (const [from, to] of stretchesOf(strength, power.length, random)) {
      power.fill(power[from]!, from, to);
      cadence.fill(cadence[from]!, from, to);
    }
    return toldOtherwise(submission, { power, cadence });
  },
};

/** A meter at both legs that states their shares without measuring them. */
export const balanceStill: Fault = {
  ...shared,
  name: 'balance that never moves',
  rules: ['frozen-value'],
  measure: 'left share that stands still throughout, %',
  strengths: { borderline: 50, moderate: 50, clear: 50 },
  wish: () => ({ minutes: 40, places: ['pedal', 'trainer'] }),
  before: (draft) => withMeter(draft, 0, { sides: 2 }),
  after(submission, share) {
    const { power } = submission.primary.channels;
    return toldOtherwise(submission, {
      balance: power!.map((watts) => (watts > 0 ? share : Number.NaN)),
    });
  },
};

function stretchesOf(
  seconds: number,
  length: number,
  random: { integer(low: number, high: number): number },
): [number, number][] {
  const count = seconds < 60 ? 1 : 3;
  const each = Math.round(Math.min(seconds, length / 4) / count);
  const spacing = Math.floor((length - 120) / count);
  return Array.from({ length: count }, (_, k) => {
    const from = 60 + k * spacing + random.integer(0, Math.max(1, spacing - each - 1));
    return [from, from + each];
  });
}
