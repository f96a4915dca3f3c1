import { drawDraft, realise } from '../submission.ts';
import { driftBetween } from './drift.ts';
import { toldOtherwise } from './edit.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

const shared = {
  rules: ['heart-rate-unresponsive'],
  measure: 'share of the ride',
  strengths: { borderline: 0.33, moderate: 0.5, clear: 1 },
  needs: ['heart rate'],
  source: practice,
  wish: (random: { pick<T>(items: readonly T[]): T }) => ({
    kind: random.pick(['bunch race', 'bunch race', 'time trial'] as const),
    minutes: 45,
  }),
} as const;

/** The strap sits on somebody who rides something else. */
export const strapOfAnother: Fault = {
  ...shared,
  name: 'strap on another rider',
  after(submission, strength, random) {
    const other = realise(drawDraft(`${random.key} other`, { kind: 'bunch race', minutes: 60, seconds: 0 }));
    const foreign = other.primary.channels.heartRate!;
    return partly(submission, strength, random, (k) => foreign[k % foreign.length]!);
  },
};

/** The sensor follows the cadence, or nothing at all. */
export const strapLost: Fault = {
  ...shared,
  name: 'sensor on cadence',
  // Where nobody recorded the cadence it would be a value that hangs.
  needs: ['heart rate', 'cadence'],
  after(submission, strength, random) {
    const cadence = submission.primary.channels.cadence;
    return partly(submission, strength, random, (k) => {
      const rpm = cadence?.[k] ?? Number.NaN;
      return rpm > 0 ? Math.round(rpm * 1.02 + random.normal(0, 1)) : 82;
    });
  },
};

/** A heart that knows of no effort: somebody at rest, whose pulse wanders by itself. */
export const heartAtRest: Fault = {
  ...shared,
  name: 'a heart at rest',
  after(submission, strength, random) {
    let pulse = random.between(75, 95);
    const middle = pulse;
    return partly(submission, strength, random, () => {
      pulse += 0.02 * (middle - pulse) + random.normal(0, 0.5);
      return Math.round(pulse);
    });
  },
};

function partly(
  submission: Parameters<NonNullable<Fault['after']>>[0],
  share: number,
  random: { between(low: number, high: number): number },
  beats: (record: number) => number,
) {
  const heartRate = submission.primary.channels.heartRate!.slice();
  const length = Math.round(heartRate.length * share);
  const from = Math.floor(random.between(0, heartRate.length - length));
  for (let k = from; k < from + length; k++) heartRate[k] = beats(k);
  return toldOtherwise(submission, { heartRate });
}

const late = {
  rules: ['late-power-rise'],
  measure: 'watts at equal heart rate, late above early, share',
  strengths: { borderline: 0.08, moderate: 0.16, clear: 0.24 },
  needs: ['heart rate'],
  wish: (random: { pick<T>(items: readonly T[]): T; integer(low: number, high: number): number }) => ({
    kind: random.pick(['bunch race', 'time trial', 'long climb'] as const),
    minutes: random.integer(40, 60),
    seconds: 0,
  }),
} as const;

/** The meter drifts upwards and nobody has a second one. */
export const driftsUnseen: Fault = {
  ...late,
  name: 'meter drifts, no second',
  source: '0.40–0.65 %/°C (Gardner et al. 2004)',
  before(draft, strength) {
    const [from, to] = draft.demand.window;
    const sixth = (to - from) / 6;
    // From the middle of the first third to the middle of the last.
    return withPrimaryMeter(draft, { driftPerHour: driftBetween([from + sixth, to - sixth], strength) });
  },
};

/** Something helps from the middle of the race on. */
export const helpedFromThere: Fault = {
  ...late,
  name: 'help from the middle of the race on',
  source: practice,
  before(draft, strength, random) {
    const [from, to] = draft.demand.window;
    const at = (from + (to - from) * random.between(0.45, 0.6)) * 4;
    return withPrimaryMeter(draft, {
      twist(power) {
        for (let i = Math.round(at); i < power.length; i++) power[i]! *= 1 + strength;
      },
    });
  },
};
