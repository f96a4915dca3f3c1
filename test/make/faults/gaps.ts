import type { RecorderSpec } from '../recorder.ts';
import type { Draft } from '../submission.ts';
import { type Fault, practice } from './fault.ts';

const shared = {
  rules: ['recording-gap'],
  measure: 'seconds lost within ten minutes',
  strengths: { borderline: 25, moderate: 100, clear: 240 },
  needs: [],
  source: practice,
} as const;

/** The recorder stops in mid-race and is started again. */
export const recorderStops: Fault = {
  ...shared,
  name: 'recorder stops and is started again',
  before(draft, strength, random) {
    const [first, last] = draft.demand.window;
    const from = random.integer(first + 60, Math.max(first + 61, last - strength - 60));
    return onPrimary(draft, { dropouts: [{ from, to: from + strength, as: 'no record' }] });
  },
};

/**
 * A radio link that keeps failing: what is lost is left empty, written as zero power, or held. Without cadence
 * nobody could tell such a zero from a rest, or a held value from one that the legs held.
 */
export const linkFails: Fault = {
  ...shared,
  needs: ['cadence'],
  name: 'radio link keeps failing',
  wish: (random) => ({ kind: random.pick(['time trial', 'long climb', 'short race'] as const) }),
  before(draft, strength, random) {
    const [first, last] = draft.demand.window;
    const room = Math.min(540, last - first - 120);
    const start = random.integer(first + 30, last - room - 60);
    const as = random.pick(['missing', 'zero power', 'held'] as const);
    const length = random.integer(9, 14);
    const count = Math.max(1, Math.round(strength / length));
    const dropouts = Array.from({ length: count }, (_, k) => {
      const from = start + Math.round(((k + 0.4 * random.uniform()) * room) / count);
      return { from, to: from + length, as };
    });
    return onPrimary(draft, { dropouts });
  },
};

/** Race files change hands in mid-race: another recorder goes on half a minute or more later, on its own clock. */
export const recorderSwapped: Fault = {
  ...shared,
  name: 'recorder swapped in mid-race',
  rules: ['recording-gap', 'clock-fault'],
  before(draft, strength, random) {
    const [first, last] = draft.demand.window;
    const from = Math.round(first + (last - first) * random.between(0.3, 0.6));
    const { from: begin, to } = draft.recordings[0]!.recorder;
    return onPrimary(draft, {
      from: begin,
      to,
      dropouts: [{ from, to: from + strength, as: 'no record' }],
      repeats: 0,
    });
  },
};

function onPrimary(draft: Draft, change: Partial<RecorderSpec>): Draft {
  const [own, ...others] = draft.recordings;
  const recorder = { ...own!.recorder, smart: 0, ...change };
  return { ...draft, recordings: [{ ...own!, recorder }, ...others] };
}
