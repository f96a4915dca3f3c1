import { type Fault, practice, withPrimaryMeter } from './fault.ts';
import { declaredTwoPercent, meterOf, racing, withMeterOf } from './pair.ts';

const shared = {
  rules: ['mean-bias'],
  measure: 'primary above second, share',
  strengths: { borderline: 0.04, moderate: 0.07, clear: 0.18 },
  needs: ['second recording'],
  wish: racing,
} as const;

/** The primary's slope is set too high. */
export const readsHigh: Fault = {
  ...shared,
  name: 'primary reads high',
  source: practice,
  before: (draft, strength) =>
    withPrimaryMeter(declaredTwoPercent(draft), { gain: meterOf(draft, 0).gain * (1 + strength) }),
};

/** The second's cranks are longer than it was told, or its slope is lost: it reads low in proportion. */
export const crankLengthWrong: Fault = {
  ...shared,
  name: 'second reads low: crank length, slope',
  source: '165 for 172.5 mm reads 4.3 % low (computed)',
  before(draft, strength) {
    const { gain } = meterOf(draft, 1);
    return withMeterOf(declaredTwoPercent(draft), 1, { gain: gain / (1 + strength) });
  },
};

/** Left and right are added twice for a part of what is told: a gain that stands on power, not on torque. */
export const countedTwice: Fault = {
  ...shared,
  name: 'left and right counted twice in a share of the readings',
  source: practice,
  before: (draft, strength) =>
    withPrimaryMeter(declaredTwoPercent(draft), {
      twist(power, truth, random) {
        const perSecond = Math.round(1 / truth.step);
        for (let i = 0; i < power.length; i += perSecond) {
          if (!random.chance(strength)) continue;
          for (let q = i; q < Math.min(power.length, i + perSecond); q++) power[q]! *= 2;
        }
      },
    }),
};

/**
 * One leg measured and doubled, of a rider who pushes more with the other: fades towards full effort. The primary is
 * right: where the fading shows, it is not to be referred.
 */
export const weakLegDoubled: Fault = {
  ...shared,
  most: 'query',
  name: 'weaker leg doubled by the second',
  source: 'asymmetry of 5–20 %, shrinking towards full effort (Kell & Greer 2017, JSCR 31:468)',
  wish: (random) => ({ ...racing(random), places: ['trainer', 'pedal'] }),
  before(draft, strength) {
    const plain = declaredTwoPercent(draft);
    // At 85 % of CP about 0.58 of the asymmetry at rest is left, twice.
    const asymmetry = -strength / 2 / 0.58;
    const one = withMeterOf(plain, 1, { sides: 1 });
    return { ...one, rider: { ...draft.rider, asymmetry }, today: { ...draft.today, asymmetry } };
  },
};

/** Offsets at 200 W and 90 rpm: 1 N·m is 9.4 W. */
const torqueFor = (watts: number) => watts / ((90 * 2 * Math.PI) / 60);

const offset = {
  rules: ['zero-offset', 'mean-bias'],
  measure: 'W at 90 rpm',
  strengths: { borderline: 10, moderate: 20, clear: 35 },
  needs: ['second recording', 'cadence'],
  source: '1 N·m is 9.4 W at 90 rpm (computed)',
  // A torque shows where power varies over a wide range.
  wish: () => ({ kind: 'bunch race' as const, minutes: 50 }),
} as const;

/** A zero offset done with a foot on the pedal, the other way round: the primary adds a torque. */
export const offsetHigh: Fault = {
  ...offset,
  name: 'primary adds a torque',
  before: (draft, strength) =>
    withPrimaryMeter(declaredTwoPercent(draft), { torqueOffset: torqueFor(strength) }),
};

/** The second was zeroed under load and lacks a torque ever since. */
export const offsetLow: Fault = {
  ...offset,
  name: 'second zeroed under load',
  before: (draft, strength) =>
    withMeterOf(declaredTwoPercent(draft), 1, { torqueOffset: -torqueFor(strength) }),
};
