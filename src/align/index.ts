import { meanOfValid } from '../math/mean.ts';
import { whiten } from '../math/whiten.ts';
import {
  type AlignedSecond,
  type Alignment,
  type AlignmentReason,
  SecondState,
  type Series,
  type Stretch,
  type Subject,
} from '../types.ts';
import { quarterHour } from '../units.ts';
import { recordedBeside } from './belongs.ts';
import { byChannel, correlationAt, detrend } from './by-channel.ts';
import { type Choice, choose } from './choose.ts';
import { lags as correlateLags, correlationAlong, gainWithin, peaks } from './lags.ts';
import { originEvidence, originOf } from './origin.ts';
import { delays, driftOf, lagOf, settle } from './refine.ts';
import { borneOut, type Evidence, segments as findSegments, type Segment } from './segments.ts';
import { settings } from './settings.ts';
import { shift } from './shift.ts';
import { witnessed } from './witness.ts';

/**
 * Puts a second recording on the primary's clock by what both measured, whatever their clocks say:
 * residuals of power correlated over every lag, judged against a time-reversed second and against the
 * next best lag; header times and other channels may only choose between lags that power holds for
 * equal. Where that is not secure, the series is still shifted to the likeliest lag (so that a reader
 * can look), and `alignment.secure` is false: nothing may be concluded from it.
 *
 * @param window the race on the primary's series, for the share that both recorded
 */
export function align(primary: Series, second: Series, subject: Subject, window: Stretch): AlignedSecond {
  const power = primary.channels.power;
  const other = second.channels.power;
  if (power === undefined || other === undefined) return unaligned(primary, second, subject, 'no-power');
  const [own, theirs] = whiten([power, other]) as [Float64Array, Float64Array];
  const lags = correlateLags(own, theirs);
  if (lags === null) return unaligned(primary, second, subject, 'too-short');

  const [written, theirsWritten] = [whereWritten(own, primary.state), whereWritten(theirs, second.state)];
  const evidence: Evidence = {
    surrogateGain: lags.surrogate.gain,
    writtenGain: ([from, to], lag) => gainWithin(written, theirsWritten, from, to, lag),
    ...recordedBeside(primary, second),
  };
  const answers = peaks(lags, settings.segmentCandidates);
  // Grid lag 0 with clocks that agree means that both series begin at the same clock time.
  const clockLag = second.start - primary.start;
  const likeliest = choose({
    answers,
    surrogateGain: lags.surrogate.gain,
    clockLag,
    length: primary.length,
    segmentsAmong: (among) => findSegments(own, theirs, among, evidence),
    gainWithin: (stretch, lag) => gainWithin(own, theirs, stretch[0], stretch[1], lag),
    agreement: (lag) => channelAgreement(primary, second, lag),
  });
  const choice = likeliest.secure ? likeliest : atLeastByClock(likeliest, clockLag, second.length, window);
  const peak = choice.secure
    ? correlationAlong(own, theirs, choice.segments)
    : (lags.correlation[choice.lag - lags.first] ?? 0);
  const placed = (found: readonly Segment[]) => {
    const settled = choice.secure
      ? delays({ power, state: primary.state }, { power: other, state: second.state }, found)
      : [];
    const segments = settle(found, settled);
    const whole = segments.map((segment) => ({ ...segment, lag: Math.round(segment.lag) }));
    return { settled, segments, series: shift(second, primary, whole) };
  };
  const all = placed(choice.segments);
  const weak = peak < settings.weakAgreement || heldOf(choice, primary, second) < settings.mostHeld;
  const denied = choice.secure && weak && !witnessed(primary, all.series, byChannel(primary, all.series));
  const secure = choice.secure && !denied;
  // Only now: whoever leaves out what disagrees before he asks whether the rides are one finds that they are.
  const kept = secure
    ? choice.segments.flatMap((segment) => borneOut(segment, second.length, evidence))
    : choice.segments;
  const seconds = (of: readonly Segment[]) => of.reduce((sum, { stretch: [from, to] }) => sum + to - from, 0);
  const trimmed = kept.length > 0 && seconds(kept) < seconds(choice.segments);
  const { settled, segments, series } = trimmed ? placed(kept) : all;
  const channels = byChannel(primary, series);
  const found = secure ? settled : [];
  const lag = lagOf(found, choice.lag);
  const offset = { value: lag.value - clockLag, low: lag.low - clockLag, high: lag.high - clockLag };
  const alignment: Alignment = {
    subject,
    secure,
    reason: denied ? 'only-surges-agree' : choice.reason,
    offset,
    zoneSlip: zoneSlip(offset.value),
    driftPpm: driftOf(found, choice.lag),
    segments: segments.map((segment) => ({ stretch: segment.stretch, offset: segment.lag - clockLag })),
    peak,
    surrogatePeak: lags.surrogate.correlation,
    margin: choice.margin,
    ...comparison(primary, series, window, secure),
    byChannel: channels,
    sameAs: null,
  };
  return { subject, name: second.recording.name, further: false, series, alignment };
}

/** The further meters of the primary's own file: one recorder, one clock, nothing to find. */
export function alignOwnMeters(primary: Series, subject: Subject, window: Stretch): AlignedSecond[] {
  const clock: Alignment = {
    ...nothingKnown(subject, 'same-recorder'),
    secure: primary.channels.power !== undefined,
    offset: { value: 0, low: 0, high: 0 },
    segments: [{ stretch: [0, primary.length], offset: 0 }],
  };
  return furtherMeters(primary, { subject, series: primary, alignment: clock }, window);
}

/** The further meters of a file that is on the primary's clock already, each under its subject with a number. */
export function furtherMeters(
  primary: Series,
  { subject, series: own, alignment }: Pick<AlignedSecond, 'subject' | 'series' | 'alignment'>,
  window: Stretch,
): AlignedSecond[] {
  return own.extraMeters.map(({ name, power }, i) => {
    const series: Series = { ...own, channels: { ...own.channels, power }, extraMeters: [] };
    const byPower = byChannel(primary, series).filter(({ channel }) => channel === 'power');
    const compared = comparison(primary, series, window, alignment.secure);
    const numbered = `${subject}.${i + 1}`;
    return {
      subject: numbered,
      name,
      further: true,
      series,
      alignment: { ...alignment, subject: numbered, ...compared, byChannel: byPower },
    };
  });
}

/**
 * Where nothing is secure the clocks may be right: their lag is taken if at the likeliest one the second holds less than
 * half as much of the race, so that there is something to look at.
 */
function atLeastByClock(choice: Choice, clockLag: number, length: number, [from, to]: Stretch): Choice {
  const shared = (lag: number) => Math.min(to, length + lag) - Math.max(from, lag);
  if (2 * shared(choice.lag) >= shared(clockLag)) return choice;
  const segments = choice.segments.map(({ stretch }) => ({ stretch, lag: clockLag }));
  return { ...choice, lag: clockLag, segments };
}

/**
 * Residuals of the seconds that the recorder wrote: those carried on are no samples. A recorder that leaves most of
 * them out has a few large ones, and a handful of those meets by chance.
 */
function whereWritten(residuals: Float64Array, state: Uint8Array): Float64Array {
  const written = residuals.slice();
  for (let t = 0; t < written.length; t++) if (state[t] === SecondState.bridged) written[t] = 0;
  return written;
}

/** Share of what both recorded at the chosen lag that its segments hold: the rest was left out. */
function heldOf({ lag, segments }: Choice, primary: Series, second: Series): number {
  const from = Math.max(0, lag);
  const to = Math.min(primary.length, second.length + lag);
  const held = segments.reduce(
    (sum, { stretch }) => sum + Math.max(0, Math.min(stretch[1], to) - Math.max(stretch[0], from)),
    0,
  );
  return held / (to - from);
}

/** What a series on the primary's clock shows against it. */
function comparison(primary: Series, series: Series, window: Stretch, secure: boolean) {
  const own = primary.channels.power ?? new Float64Array(primary.length).fill(Number.NaN);
  const other = series.channels.power!;
  const evidence = secure ? originEvidence(own, other) : null;
  return {
    correlation: correlationAt(centred(own), centred(other), 0) ?? 0,
    coverage: coverage(own, other, window),
    originEvidence: evidence,
    origin: originOf(evidence),
  };
}

/** Marks whoever repeats an earlier second: one sensor on two recorders is one opinion beside the primary. */
export function markRepeats(seconds: readonly AlignedSecond[]): AlignedSecond[] {
  return seconds.map((second, i) => {
    const first = seconds.slice(0, i).find((earlier) => repeats(earlier, second));
    return first === undefined
      ? second
      : { ...second, alignment: { ...second.alignment, sameAs: first.subject } };
  });
}

function repeats(earlier: AlignedSecond, later: AlignedSecond): boolean {
  if (!earlier.alignment.secure || !later.alignment.secure) return false;
  const origin = originOf(originEvidence(earlier.series.channels.power!, later.series.channels.power!));
  return origin === 'same sensor' || origin === 'derived';
}

function unaligned(
  primary: Series,
  second: Series,
  subject: Subject,
  reason: AlignmentReason,
): AlignedSecond {
  const series = shift(second, primary, []);
  return {
    subject,
    name: second.recording.name,
    further: false,
    series,
    alignment: nothingKnown(subject, reason),
  };
}

function nothingKnown(subject: Subject, reason: AlignmentReason): Alignment {
  return {
    subject,
    secure: false,
    reason,
    offset: null,
    zoneSlip: 0,
    driftPpm: null,
    segments: [],
    peak: 0,
    surrogatePeak: 0,
    margin: 0,
    correlation: 0,
    byChannel: [],
    coverage: 0,
    originEvidence: null,
    origin: 'unknown',
    sameAs: null,
  };
}

/** Mean correlation of cadence and heart rate at a lag; null when neither is on both. */
function channelAgreement(
  primary: Series,
  second: Series,
  lag: number,
): { correlation: number; seconds: number } | null {
  const found = (['cadence', 'heartRate'] as const).flatMap((channel) => {
    const own = primary.channels[channel];
    const other = second.channels[channel];
    if (own === undefined || other === undefined) return [];
    const correlation = correlationAt(detrend(own), detrend(other), lag);
    return correlation === null ? [] : [correlation];
  });
  if (found.length === 0) return null;
  const seconds = Math.min(primary.length, second.length + lag) - Math.max(0, lag);
  return { correlation: Math.max(...found), seconds };
}

function zoneSlip(offset: number): number {
  const quarters = Math.round(offset / quarterHour);
  if (quarters === 0) return 0;
  const nearest = quarters * quarterHour;
  return Math.abs(offset - nearest) <= settings.zoneSlackSeconds ? nearest : 0;
}

function centred(column: Float64Array): Float64Array {
  const { mean } = meanOfValid(column);
  const out = column.slice();
  for (let t = 0; t < out.length; t++) out[t]! -= mean;
  return out;
}

function coverage(own: Float64Array, other: Float64Array, [from, to]: Stretch): number {
  let both = 0;
  for (let t = from; t < to; t++) if (!Number.isNaN(own[t]!) && !Number.isNaN(other[t]!)) both++;
  return to > from ? both / (to - from) : 0;
}
