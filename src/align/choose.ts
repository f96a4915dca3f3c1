import { gainOf } from '../math/correlation-gain.ts';
import type { AlignmentReason, Stretch } from '../types.ts';
import { type Segment, sameAnswer } from './segments.ts';
import { settings } from './settings.ts';

export interface Choice {
  /** The lag that holds for the longest stretch. */
  readonly lag: number;
  readonly secure: boolean;
  readonly reason: AlignmentReason;
  /** Log-likelihood by which the chosen lag beats every other answer of its kind of evidence. */
  readonly margin: number;
  readonly segments: readonly Segment[];
}

export interface Answers {
  /** Lags at which power agrees, best first. */
  readonly answers: readonly { readonly lag: number; readonly gain: number }[];
  readonly surrogateGain: number;
  /** The lag at which the recorders' own clocks agree. */
  readonly clockLag: number;
  readonly length: number;
  readonly segmentsAmong: (answers: readonly number[]) => readonly Segment[];
  readonly gainWithin: (stretch: Stretch, lag: number) => number;
  readonly agreement: (lag: number) => { readonly correlation: number; readonly seconds: number } | null;
}

/**
 * One independent sample of detrended cadence or heart rate in so many seconds (from memory: cadence
 * forgets itself in a few seconds, heart rate in about half a minute; the cautious side is taken).
 */
const secondsPerSample = 20;

/**
 * Chooses the lag, or one lag per stretch where a clock skips pauses. Power alone decides when it beats
 * chance, and every other answer by the margin, in each stretch. Otherwise clocks that agree, or else
 * cadence or heart rate, may choose among the lags that power cannot tell apart; never against power.
 */
export function choose(from: Answers): Choice {
  const { answers, surrogateGain } = from;
  const best = answers[0];
  const whole = (lag: number): Segment[] => [{ stretch: [0, from.length], lag }];
  if (best === undefined) {
    return {
      lag: from.clockLag,
      secure: false,
      reason: 'nothing-fits',
      margin: 0,
      segments: whole(from.clockLag),
    };
  }
  const margin = best.gain - (answers[1]?.gain ?? 0);
  if (best.gain < settings.surrogateFactor * surrogateGain || best.gain < settings.margin) {
    return { lag: best.lag, secure: false, reason: 'nothing-fits', margin, segments: whole(best.lag) };
  }
  const real = answers.filter(({ gain }) => gain > settings.surrogateFactor * surrogateGain);
  const segments = from.segmentsAmong(real.map(({ lag }) => lag));
  if (segments.length === 0) {
    return { lag: best.lag, secure: false, reason: 'nothing-fits', margin, segments: whole(best.lag) };
  }
  const elsewhere = segments.some(({ lag }) => !sameAnswer(lag, best.lag));
  if (elsewhere) return chooseBySegment(from, segments);
  if (margin >= settings.margin) {
    return { lag: best.lag, secure: true, reason: 'power-agrees', margin, segments };
  }
  return chooseAmongEquals(from, margin, segments);
}

/** Each stretch must stand on its own: one that another answer fits as well is left out. */
function chooseBySegment(from: Answers, segments: readonly Segment[]): Choice {
  const margins = segments.map(({ stretch, lag }) => {
    const others = from.answers.filter((answer) => !sameAnswer(answer.lag, lag));
    return (
      from.gainWithin(stretch, lag) -
      Math.max(0, ...others.map((answer) => from.gainWithin(stretch, answer.lag)))
    );
  });
  const kept = segments.filter((_, i) => margins[i]! >= settings.margin);
  const longest = longestOf(kept.length > 0 ? kept : segments);
  const seconds = kept.reduce((sum, { stretch }) => sum + stretch[1] - stretch[0], 0);
  const all = segments.reduce((sum, { stretch }) => sum + stretch[1] - stretch[0], 0);
  const secure = seconds * 2 >= all;
  return {
    lag: longest.lag,
    secure,
    reason: secure ? 'power-agrees' : 'several-lags-fit',
    margin: Math.min(...(secure ? margins.filter((m) => m >= settings.margin) : margins)),
    segments: secure ? kept : [{ stretch: [0, from.length], lag: longest.lag }],
  };
}

function chooseAmongEquals(from: Answers, margin: number, segments: readonly Segment[]): Choice {
  const best = from.answers[0]!;
  const equals = from.answers.filter(({ gain }) => best.gain - gain < settings.margin);
  const unsure: Choice = { lag: best.lag, secure: false, reason: 'several-lags-fit', margin, segments };
  const chosen = (lag: number, reason: AlignmentReason, lead: number): Choice => {
    const held = from.segmentsAmong([lag]);
    // Where a stretch by itself fits elsewhere, nothing was chosen.
    if (held.length === 0 || held.some((segment) => !sameAnswer(segment.lag, lag))) return unsure;
    return { lag, secure: true, reason, margin: lead, segments: held };
  };
  const near = equals.filter(({ lag }) => Math.abs(lag - from.clockLag) <= settings.clockSeconds);
  if (near.length === 1) return chosen(near[0]!.lag, 'clock-chose', margin);
  const byOthers = equals
    .map(({ lag }) => ({ lag, gain: evidence(from.agreement(lag)) }))
    .sort((a, b) => b.gain - a.gain);
  const lead = byOthers[0]!.gain - (byOthers[1]?.gain ?? 0);
  if (lead >= settings.margin) return chosen(byOthers[0]!.lag, 'channel-chose', lead);
  return unsure;
}

function evidence(agreement: ReturnType<Answers['agreement']>): number {
  return agreement === null ? 0 : gainOf(agreement.correlation, agreement.seconds / secondsPerSample);
}

function longestOf(segments: readonly Segment[]): Segment {
  const length = ({ stretch }: Segment) => stretch[1] - stretch[0];
  return segments.reduce((longest, segment) => (length(segment) > length(longest) ? segment : longest));
}
