import type { Random } from '../random.ts';
import type { Draft, Submission, SubmissionWish } from '../submission.ts';
import { withMeterOf } from './pair.ts';

/**
 * One thing that can be wrong with a submission. A fault changes what is drawn before the ride (a meter,
 * a rider, a clock) or the recordings after it; never both the truth and what is claimed about it.
 */
export interface Fault {
  readonly name: string;
  /** Rules that name this fault when they answer to it. */
  readonly rules: readonly string[];
  /** What `strength` is, with unit. */
  readonly measure: string;
  /** Strengths at which detection is measured. */
  readonly strengths: { readonly borderline: number; readonly moderate: number; readonly clear: number };
  /** The one strength of a fault that is there or not; clear when left out and all three are alike. */
  readonly only?: 'moderate' | 'clear';
  /** What its first rule may make of it at most, where a ceiling holds it below the rule's own highest level. */
  readonly most?: 'note' | 'query';
  /** Evidence without which nobody could see it. */
  readonly needs: readonly Evidence[];
  /** Where the strengths or parameters are from: a citation, or "common practice, no source". */
  readonly source: string;
  /** Rides and meters in which the fault can be met; anything when left out. */
  readonly wish?: (random: Random) => Partial<SubmissionWish>;
  readonly before?: (draft: Draft, strength: number, random: Random) => Draft;
  readonly after?: (submission: Submission, strength: number, random: Random) => Submission;
}

/** What has no better source. */
export const practice = 'common practice, no source';

export type Evidence =
  | 'second recording'
  | 'third recording'
  | 'history'
  /** A history that holds sprints: one without them says nothing of what its rider can do in one. */
  | 'sprints in history'
  | 'heart rate'
  | 'cadence'
  | 'event'
  /** A recorder that writes every second: one that leaves out where little changes leaves out the fault. */
  | 'every second'
  /** A meter that works in single watts: the coarse steps of another hide what was done to its readings. */
  | 'single watts';

/** The draft with the primary's meter changed. */
export function withPrimaryMeter(draft: Draft, change: Partial<Draft['meters'][number]>): Draft {
  return withMeterOf(draft, 0, change);
}
