import { withParts } from './edit.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['clock-fault'],
  measure: 'share of records that the clock misplaces',
  strengths: { borderline: 0.02, moderate: 0.12, clear: 0.35 },
  needs: [],
  source: practice,
} as const;

/** The clock is set back in mid-ride, so that minutes are written twice. */
export const clockSetBack: Fault = {
  ...shared,
  name: 'clock set back in mid-ride',
  after(submission, strength, random) {
    const time = submission.primary.time.slice();
    const back = Math.round(strength * time.length);
    const at = random.integer(back + 1, time.length - 10);
    for (let k = at; k < time.length; k++) time[k]! -= back;
    return withParts(submission, { primary: { ...submission.primary, time } });
  },
};

/** The clock leaps hours or years away for a while, as after a reset. */
export const clockLeaps: Fault = {
  ...shared,
  name: 'clock leaps away and back',
  after(submission, strength, random) {
    const time = submission.primary.time.slice();
    const leaps = random.integer(1, 4);
    const length = Math.max(1, Math.round((strength * time.length) / leaps));
    for (let leap = 0; leap < leaps; leap++) {
      const from = Math.floor(((leap + random.uniform() * 0.3) * time.length) / leaps);
      const away = random.pick([-3.1e8, -86_400, 7200, 86_400, 3.1e7]);
      for (let k = from; k < Math.min(time.length, from + length); k++) time[k]! += away;
    }
    return withParts(submission, { primary: { ...submission.primary, time } });
  },
};

/** Records arrive in packets that bear one time. */
export const stampedInPackets: Fault = {
  ...shared,
  name: 'records stamped in packets',
  after(submission, strength, random) {
    const time = submission.primary.time.slice();
    const packet = random.integer(3, 6);
    for (let k = 0; k + packet < time.length; k += packet) {
      if (!random.chance((strength * packet) / (packet - 1))) continue;
      for (let j = 1; j < packet; j++) time[k + j] = time[k]!;
    }
    return withParts(submission, { primary: { ...submission.primary, time } });
  },
};
