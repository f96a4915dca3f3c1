import { describe, expect, it } from 'vitest';
import { align } from '../../src/align/index.ts';
import { normalise } from '../../src/normalise/index.ts';
import type { AlignedSecond, Recording } from '../../src/types.ts';
import { type Draft, drawDraft, drawSubmission, realise, type SubmissionWish } from '../make/index.ts';
import { Random } from '../make/random.ts';

function aligned(primary: Recording, second: Recording): AlignedSecond {
  const own = normalise(primary, 'primary').series;
  const other = normalise(second, 'second').series;
  return align(own, other, 'pair:test', [0, own.length]);
}

type Recorder = Draft['recordings'][number]['recorder'];

/** The same ride with the second's recorder changed. */
function withSecond(
  seed: string,
  wish: SubmissionWish,
  change: (recorder: Recorder, draft: Draft) => Partial<Recorder>,
) {
  const draft = drawDraft(seed, wish);
  const recordings = draft.recordings.map((entry, k) =>
    k === 1 ? { ...entry, recorder: { ...entry.recorder, ...change(entry.recorder, draft) } } : entry,
  );
  const { primary, seconds } = realise({ ...draft, recordings });
  return { pair: aligned(primary, seconds[0]!), draft };
}

/** A ride with these stops, over which the primary's clock runs on and the second's stands still. */
function withoutPauses(draft: Draft, stops: Draft['demand']['stops'], change: Partial<Recorder> = {}) {
  const recordings = draft.recordings.map((entry, k) => {
    const pauses = k === 0 ? ('recorded' as const) : ('clock stops' as const);
    return { ...entry, recorder: { ...entry.recorder, ...change, offset: 0, pauses } };
  });
  return realise({ ...draft, demand: { ...draft.demand, stops }, recordings });
}

/** Physical lag and averaging of the two meters shift power by up to this much beside the clocks (s). */
const linkSlack = 3;

describe('align', () => {
  it.each([0, 3, -47, 312, 900, -3600, 7200 + 5])('finds a clock that is %d s off', (offset) => {
    const { pair } = withSecond(`offset ${offset}`, { kind: 'bunch race', minutes: 40 }, () => ({ offset }));
    expect(pair.alignment.secure).toBe(true);
    expect(Math.abs(pair.alignment.offset!.value + offset)).toBeLessThan(linkSlack);
    const slip = Math.round(offset / 900) * -900;
    expect(pair.alignment.zoneSlip).toBe(Math.abs(offset) >= 600 ? slip : 0);
  });

  it('finds the date that is a day wrong', () => {
    const { pair } = withSecond('day', { kind: 'time trial', minutes: 30 }, () => ({ offset: 86_400 }));
    expect(pair.alignment.secure).toBe(true);
    expect(Math.abs(pair.alignment.offset!.value + 86_400)).toBeLessThan(linkSlack);
  });

  it('aligns a second that started late and stopped early', () => {
    const { pair } = withSecond('part', { kind: 'outdoor ride', minutes: 60 }, () => ({
      from: 900,
      to: 3000,
    }));
    expect(pair.alignment.secure).toBe(true);
    expect(Math.abs(pair.alignment.offset!.value)).toBeLessThan(linkSlack + 1);
    expect(pair.alignment.coverage).toBeLessThan(0.7);
  });

  it('follows a clock that skips pauses, one offset a stretch', () => {
    const draft = drawDraft('pauses', { kind: 'outdoor ride', minutes: 60 });
    const stops = [
      [1000, 1090],
      [2000, 2240],
    ] as const;
    const { primary, seconds } = withoutPauses(draft, stops);
    const { alignment } = aligned(primary, seconds[0]!);
    expect(alignment.secure).toBe(true);
    const at = (t: number) =>
      alignment.segments.find(({ stretch }) => stretch[0] <= t && t < stretch[1])?.offset;
    expect(Math.abs(at(500)!)).toBeLessThan(linkSlack);
    expect(Math.abs(at(1600)! - 87)).toBeLessThan(linkSlack + 1);
    expect(Math.abs(at(3000)! - 87 - 237)).toBeLessThan(linkSlack + 1);
  });

  it('finds the lag of every stretch between many stops, and leaves out what lies in none', () => {
    const draft = drawDraft('many stops', { kind: 'outdoor ride', minutes: 100 });
    const stops = [
      [528, 575],
      [1153, 1212],
      [1433, 1470],
      [1774, 1798],
      [2282, 2331],
      [2887, 2940],
      [4405, 4469],
    ] as const;
    const { primary, seconds } = withoutPauses(draft, stops, { smart: 0 });
    const { alignment, series } = aligned(primary, seconds[0]!);
    const skippedBefore = (t: number) =>
      stops.reduce((sum, [stop, go]) => sum + (go <= t ? go - stop - 3 : 0), 0);
    expect(alignment.secure).toBe(true);
    for (const [, go] of stops) {
      const found = alignment.segments.find(({ stretch: [from, to] }) => from <= go + 60 && go + 60 < to);
      expect(Math.abs(found!.offset - skippedBefore(go))).toBeLessThan(linkSlack + 1);
    }
    const held = series.channels.power!.filter((watts) => !Number.isNaN(watts)).length;
    expect(held).toBeGreaterThan(0.9 * seconds[0]!.time.length);
    expect(held).toBeLessThanOrEqual(seconds[0]!.time.length);
  });

  it.each([
    ['K92', 80, [1046, 1177]],
    ['K356', 80, [1052, 1190]],
    ['K379', 65, [1097, 1284]],
  ] as const)(
    'carries no lag over a stop of the clock to the first minutes of a workout: %s',
    (seed, minutes, stop) => {
      const draft = drawDraft(seed, { kind: 'set-point session', minutes });
      const { primary, seconds } = withoutPauses(draft, [stop]);
      const { secure, segments } = aligned(primary, seconds[0]!).alignment;
      expect(secure).toBe(true);
      // A clock stops three seconds after its rider.
      const stood = stop[1] - stop[0] - 3;
      for (const { stretch, offset } of segments)
        expect(Math.abs(offset - (stretch[0] < stop[0] ? 0 : stood))).toBeLessThan(linkSlack);
    },
  );

  it('does not take values that a sparing recorder carried on for a late meter', () => {
    const { pair } = withSecond('sparing', { kind: 'bunch race', minutes: 60 }, () => ({ smart: 6 }));
    expect(pair.alignment.secure).toBe(true);
    expect(Math.abs(pair.alignment.offset!.value)).toBeLessThan(linkSlack);
  });

  it.each(['time trial', 'outdoor ride', 'bunch race'] as const)(
    'leaves out the half that is of another ride: %s',
    (kind) => {
      const { primary, seconds } = drawSubmission(`spliced ${kind}`, { kind, minutes: 50 });
      const other = drawSubmission(`spliced, other ${kind}`, { kind, minutes: 50 }).seconds[0]!;
      const second = seconds[0]!;
      const half = second.time.length >> 1;
      const channels = { ...second.channels };
      for (const channel of ['power', 'cadence', 'heartRate'] as const) {
        const column = second.channels[channel];
        const theirs = other.channels[channel];
        if (column !== undefined && theirs !== undefined)
          channels[channel] = Float64Array.from(column, (value, k) =>
            k < half ? (theirs[k] ?? value) : value,
          );
      }
      const { alignment } = aligned(primary, { ...second, channels });
      expect(alignment.secure).toBe(true);
      expect(Math.abs(alignment.segments[0]!.stretch[0] - half)).toBeLessThan(180);
      expect(alignment.coverage).toBeGreaterThan(0.4);
      expect(alignment.coverage).toBeLessThan(0.6);
    },
  );

  it('estimates how two clocks run apart', () => {
    const { pair } = withSecond('drift', { kind: 'bunch race', minutes: 170 }, () => ({ driftPpm: 60 }));
    const { driftPpm } = pair.alignment;
    expect(driftPpm!.low).toBeLessThan(-60 + 25);
    expect(driftPpm!.high).toBeGreaterThan(-60 - 25);
    expect(driftPpm!.value).toBeLessThan(-20);
  });

  it('is not secure for the ride of another day', () => {
    const one = drawSubmission('monday', { kind: 'time trial', minutes: 30 });
    const other = drawSubmission('friday', { kind: 'time trial', minutes: 30 });
    expect(aligned(one.primary, other.primary).alignment).toMatchObject({
      secure: false,
      reason: 'nothing-fits',
    });
  });

  it('is not secure for another rider of the same race, who shares its surges', () => {
    const race = { kind: 'bunch race', minutes: 40, race: 'one race' } as const;
    const riders = Array.from({ length: 6 }, (_, k) => drawSubmission(`rider ${k}`, race).primary);
    for (const other of riders.slice(1)) expect(aligned(riders[0]!, other).alignment.secure).toBe(false);
  });

  // Of these few minutes agree, and the rest would be left out of a pair of one ride.
  it.each([
    [1, 2],
    [2, 1],
    [9, 2],
  ])('nor where the end of race %i is alike for rider %i', (number, other) => {
    const race = { kind: 'bunch race', minutes: 40, race: `race ${number}` } as const;
    const [own, theirs] = [0, other].map((k) => drawSubmission(`rider ${number} ${k}`, race).primary);
    expect(aligned(own!, theirs!).alignment.secure).toBe(false);
  });

  it('is secure where a sixth of the readings count double, or one meter answers slowly', () => {
    const draft = drawDraft('rough', { kind: 'long climb', minutes: 40 });
    const meterOf = (k: number) => draft.recordings[k]!.meter;
    const withMeter = (k: number, change: Partial<Draft['meters'][number]>) =>
      realise({
        ...draft,
        meters: draft.meters.map((meter, m) => (m === meterOf(k) ? { ...meter, ...change } : meter)),
      });
    const doubled = withMeter(0, {
      twist(power, truth, random) {
        const perSecond = Math.round(1 / truth.step);
        for (let i = 0; i < power.length; i += perSecond) {
          if (!random.chance(1 / 6)) continue;
          for (let q = i; q < Math.min(power.length, i + perSecond); q++) power[q]! *= 2;
        }
      },
    });
    expect(aligned(doubled.primary, doubled.seconds[0]!).alignment.secure).toBe(true);
    const slow = withMeter(1, { kernel: { shape: 'exponential', seconds: 10 } });
    expect(aligned(slow.primary, slow.seconds[0]!).alignment.secure).toBe(true);
  });

  it('takes a lag between two seconds for one lag, not for a clock that jumps', () => {
    const { primary } = drawSubmission('between', { kind: 'time trial', minutes: 40 });
    const own = primary.channels.power!;
    // The mean of two readings in a row lies half a second between their seconds.
    const power = own.map((watts, k) => Math.round((watts + own[Math.max(0, k - 1)]!) / 2));
    const { alignment } = aligned(primary, { ...primary, channels: { ...primary.channels, power } });
    expect(alignment.segments).toHaveLength(1);
  });

  it('says that a recording is too short, or has no power', () => {
    const { primary, seconds } = drawSubmission('short', { kind: 'time trial', minutes: 30 });
    const second = seconds[0]!;
    const cut = {
      ...second,
      time: second.time.slice(0, 60),
      channels: { power: second.channels.power!.slice(0, 60) },
    };
    expect(aligned(primary, cut).alignment).toMatchObject({ secure: false, reason: 'too-short' });
    const { power, ...rest } = second.channels;
    expect(power).toBeDefined();
    expect(aligned(primary, { ...second, channels: rest }).alignment).toMatchObject({
      secure: false,
      reason: 'no-power',
    });
  });

  it('moves values and never mixes them', () => {
    const { primary, seconds } = drawSubmission('values', { kind: 'bunch race', minutes: 30 });
    const { series } = aligned(primary, seconds[0]!);
    const known = new Set(seconds[0]!.channels.power);
    for (const value of series.channels.power!) expect(Number.isNaN(value) || known.has(value)).toBe(true);
  });
});

describe('origin', () => {
  it('calls a scaled copy derived and another meter independent', () => {
    const { primary, seconds } = drawSubmission('origin', { kind: 'bunch race', minutes: 40 });
    const scaled = {
      ...primary,
      channels: { ...primary.channels, power: primary.channels.power!.map((w) => Math.round(w * 0.95)) },
    };
    expect(aligned(primary, scaled).alignment.origin).toBe('derived');
    expect(aligned(primary, seconds[0]!).alignment.origin).toBe('independent');
  });

  it('calls a second derived that was computed from an even ride with 2 % of noise on top', () => {
    const { primary, seconds } = drawSubmission('even', { kind: 'time trial', minutes: 40 });
    const random = new Random('even');
    const power = primary.channels.power!.map((w) => Math.round(0.97 * w * (1 + 0.02 * random.normal())));
    const made = { ...primary, channels: { ...primary.channels, power } };
    expect(aligned(primary, made).alignment.origin).toBe('derived');
    expect(aligned(primary, seconds[0]!).alignment.origin).toBe('independent');
  });

  it('calls one sensor on two recorders just that', () => {
    const draft = drawDraft('sensor', { kind: 'bunch race', minutes: 40 });
    const recordings = draft.recordings.map((entry) => ({
      ...entry,
      meter: 0,
      recorder: { ...entry.recorder, offset: 4 },
    }));
    const { primary, seconds } = realise({ ...draft, recordings });
    expect(aligned(primary, seconds[0]!).alignment.origin).toBe('same sensor');
  });
});
