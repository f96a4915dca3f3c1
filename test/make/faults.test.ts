import { describe, expect, it } from 'vitest';
import { nextBalance } from './ability.ts';
import { bestOf } from './faults/history.ts';
import { faults } from './faults/index.ts';
import { Random } from './random.ts';
import { drawSubmission, type Submission, type SubmissionWish } from './submission.ts';

const wish: SubmissionWish = {
  kind: 'bunch race',
  minutes: 30,
  places: ['trainer', 'pedal'],
  rider: { standard: 'racer' },
};
const honest = drawSubmission('fault', wish);
const planted = (name: string, strength: 'borderline' | 'moderate' | 'clear', more: SubmissionWish = {}) => {
  const fault = faults.find((f) => f.name === name)!;
  return drawSubmission('fault', {
    ...wish,
    ...more,
    faults: [{ fault, strength: fault.strengths[strength] }],
  });
};
const handedIn = ({ primary, seconds, rider, race }: Submission) => ({ primary, seconds, rider, race });
/** Primary over the honest primary, over a part of the ride. */
const ratio = (one: Submission, from = 0, to = 1) => {
  const length = honest.primary.time.length;
  let [a, b] = [0, 0];
  for (let i = Math.floor(from * length); i < Math.floor(to * length); i++) {
    a += one.primary.channels.power![i]!;
    b += honest.primary.channels.power![i]!;
  }
  return a / b;
};

describe('faults', () => {
  it('have names of their own, rules that name them, and strengths in order', () => {
    expect(new Set(faults.map((f) => f.name)).size).toBe(faults.length);
    for (const { rules, strengths, before, after } of faults) {
      expect(rules.length).toBeGreaterThan(0);
      expect(strengths.borderline).toBeLessThanOrEqual(strengths.moderate);
      expect(strengths.moderate).toBeLessThanOrEqual(strengths.clear);
      expect(before ?? after).toBeDefined();
    }
  });

  it.each(faults.map((f) => f.name))('%s changes what is handed in', (name) => {
    const fault = faults.find((f) => f.name === name)!;
    const own: SubmissionWish = {
      ...wish,
      ...fault.wish?.(new Random(name)),
      minutes: 18,
      seconds: fault.needs.includes('third recording') ? 2 : 1,
      others: fault.needs.includes('event') ? 1 : 0,
    };
    const plain = handedIn(drawSubmission('fault', own));
    const one = drawSubmission('fault', { ...own, faults: [{ fault, strength: fault.strengths.moderate }] });
    expect(handedIn(one)).not.toEqual(plain);
  });

  it.each([
    'drift',
    'sprint high',
    'dead cadence',
    'spikes',
    'whole ride multiplied',
    'loose pedal on the second',
  ])('%s leaves the ride as it was', (name) => {
    expect(planted(name, 'clear').truth.ride.power).toEqual(honest.truth.ride.power);
  });

  it.each(['borderline', 'moderate', 'clear'] as const)(
    'rewritten sprints are higher by the share stated: %s',
    (strength) => {
      const name = 'sprints out of proportion: rewritten';
      const { strengths } = faults.find((f) => f.name === name)!;
      const best = ({ primary }: Submission) => bestOf({ secondPower: primary.channels.power! }, 5);
      expect(best(planted(name, strength)) / best(honest)).toBeCloseTo(1 + strengths[strength], 2);
    },
  );

  it('rewritten sprints stay in bounds where nobody sprinted', () => {
    const fault = faults.find((f) => f.name === 'sprints out of proportion: rewritten')!;
    const { cp } = honest.truth.draft.rider.ability;
    // The best 5 s lie 1 W above where sprints begin, and single readings far above that.
    const ridden = honest.primary.channels.power!.map((_, k) => (k % 60 === 0 ? 2.5 * cp : 1.2 * cp));
    ridden.fill(1.5 * cp + 1, 605, 610);
    const even = { ...honest, primary: { ...honest.primary, channels: { power: ridden } } };
    const { power } = fault.after!(even, fault.strengths.clear, new Random('even')).primary.channels;
    const factors = power!.map((watts, k) => watts / ridden[k]!);
    expect(Math.max(...factors)).toBeLessThan(1 + 5 * fault.strengths.clear);
    const best = (one: Float64Array) => bestOf({ secondPower: one }, 5);
    expect(best(power!.subarray(605, 610)) / best(ridden.subarray(605, 610))).toBeCloseTo(2, 2);
  });

  it.each(['everything above CP reads high', 'all of an all-out ride reads high'])(
    '%s: just what somebody could ride who is stronger by the share stated',
    (name) => {
      const { wish: own, strengths } = faults.find((f) => f.name === name)!;
      const one = planted(name, 'moderate', own?.(new Random(name)) ?? {});
      const { cp, wPrime, pMax } = one.truth.draft.rider.ability;
      const left = (share: number) => {
        const stronger = { cp: cp * (1 + share), wPrime: wPrime * (1 + share), pMax };
        let [balance, least] = [stronger.wPrime, stronger.wPrime];
        for (const watts of one.primary.channels.power!) {
          balance = nextBalance(stronger, balance, watts || 0, 1);
          least = Math.min(least, balance);
        }
        return least / stronger.wPrime;
      };
      expect(left(strengths.moderate - 0.05)).toBe(0);
      expect(left(strengths.moderate + 0.05)).toBeGreaterThan(0.02);
    },
  );

  it.each(['drift', 'warming', 'low when cold, high when warm', 'rises evenly from below to above'])(
    '%s makes the end of the race read higher than its start by its strength',
    (name) => {
      const { strengths } = faults.find((f) => f.name === name)!;
      for (const strength of ['moderate', 'clear'] as const) {
        const { window } = honest.truth.draft.demand;
        const one = planted(name, strength);
        const length = honest.primary.time.length;
        const over = (from: number, to: number) => ratio(one, from / length, to / length);
        const rise = over(window[1] - 30, window[1]) / over(window[0], window[0] + 30);
        // Half a minute at either end shows a little less than the ends themselves.
        expect(rise - 1).toBeGreaterThan(0.92 * strengths[strength]);
        expect(rise - 1).toBeLessThan(1.09 * strengths[strength]);
      }
    },
  );

  it.each(['sprint high', 'sprint overshoot'])('%s lifts the top, not the whole', (name) => {
    const one = planted(name, 'clear');
    const top = Math.max(...one.primary.channels.power!) / Math.max(...honest.primary.channels.power!);
    expect(top).toBeGreaterThan(1.12);
    expect(ratio(one)).toBeLessThan(1.1);
  });

  it('set-point reporting flattens its share of the ride', () => {
    const flat = ({ primary }: Submission) => {
      const power = primary.channels.power!;
      let same = 0;
      for (let i = 1; i < power.length; i++) if (Math.abs(power[i]! - power[i - 1]!) <= 2) same++;
      return same / power.length;
    };
    expect(flat(honest)).toBeLessThan(0.25);
    expect(flat(planted('set-point reporting', 'clear'))).toBeGreaterThan(0.9);
    expect(flat(planted('set-point reporting', 'moderate'))).toBeGreaterThan(flat(honest) + 0.2);
  });

  it('dead cadence is there and zero', () => {
    expect(planted('dead cadence', 'clear').primary.channels.cadence!.every((rpm) => rpm === 0)).toBe(true);
  });

  it('spikes are as many as asked', () => {
    const spikes = (one: Submission) =>
      [...one.primary.channels.power!].filter((watts) => watts >= 1000).length;
    expect(spikes(planted('spikes', 'clear')) - spikes(honest)).toBeGreaterThan(50);
  });

  it('power while coasting lasts as long as asked', () => {
    const { power, cadence } = planted('power while coasting', 'clear').primary.channels;
    let longest = 0;
    let run = 0;
    for (let i = 0; i < power!.length; i++) {
      run = cadence![i] === 0 && power![i]! > 0 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    expect(longest).toBeGreaterThanOrEqual(40);
  });

  it.each(['stronger than the history', 'reads above the history'])('%s leaves the history alone', (name) => {
    const history = { rides: 2, minutes: 10 };
    const one = planted(name, 'clear', { history });
    expect(one.history).toEqual(drawSubmission('fault', { ...wish, history }).history);
    expect(ratio(one)).toBeGreaterThan(1.12);
  });
});
