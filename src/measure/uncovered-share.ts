import type { Stretch } from '../types.ts';
import { quarterHour } from '../units.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { subjectOf } from './recording/subject.ts';

/** Time zones reach from UTC-12 to UTC+14; two of them lie at most 26 h apart. */
const furthestSlip = 26 * 3600;

/**
 * Share of the race, as the event gives it, that lies before the first or after the last second of the
 * recording: an exact length. Where a clock off by whole quarters of an hour would make the recording
 * cover the race, the smallest such slip is named: time zones differ by quarters, rides by chance.
 */
export const uncoveredShare = defineMeasure({
  id: 'uncovered-share',
  of: 'recording',
  unit: 'share',
  options: {
    slipShare: number('share of the race that may stay uncovered after a slip of the clock is undone'),
  },
  circumstances: { 'zone slip': 'a clock set to another time zone would explain it' },
  compute(all, recording, { slipShare }) {
    const { start, finish } = all.race;
    if (start === undefined) return notApplicable('no-fact', { fact: 'start' });
    if (finish === undefined) return notApplicable('no-fact', { fact: 'finish' });
    const race: Stretch = [Date.parse(start) / 1000, Date.parse(finish) / 1000];
    const seconds = race[1] - race[0];
    if (!(seconds > 0)) return notApplicable('no-fact', { fact: 'finish' });
    const window: Stretch = [race[0] - recording.start, race[1] - recording.start];
    const ride: Stretch = [recording.start, recording.start + recording.length];
    const uncovered = (slip: number) => seconds - overlap(race, [ride[0] + slip, ride[1] + slip]);
    const value = uncovered(0) / seconds;
    const slip = value > slipShare ? slipThat((by) => uncovered(by) <= slipShare * seconds) : null;
    return exact(value, seconds, {
      circumstances: slip === null ? [] : ['zone slip'],
      details: {
        late: { value: clamp(ride[0] - race[0], seconds), unit: 's' },
        early: { value: clamp(race[1] - ride[1], seconds), unit: 's' },
        race: { value: seconds, unit: 's' },
        slip: slip === null ? 'no whole quarter of an hour' : { value: slip, unit: 's' },
      },
      charts:
        value === 0
          ? []
          : [
              {
                kind: 'coverage',
                id: `window:${subjectOf(all, recording)}`,
                recording: [0, recording.length],
                window,
                lost: outside(window, recording.length),
                paused: [],
              },
            ],
    });
  },
});

function overlap(a: Stretch, b: Stretch): number {
  return Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
}

/** What of a stretch lies before the first second or after the last of so many. */
function outside([from, to]: Stretch, length: number): Stretch[] {
  const parts: Stretch[] = [
    [from, Math.min(to, 0)],
    [Math.max(from, length), to],
  ];
  return parts.filter((part) => part[0] < part[1]);
}

function clamp(seconds: number, most: number): number {
  return Math.min(Math.max(0, seconds), most);
}

/** The smallest slip by whole quarters of an hour for which this holds, s. */
function slipThat(holds: (by: number) => boolean): number | null {
  for (let by = quarterHour; by <= furthestSlip; by += quarterHour) {
    if (holds(by)) return by;
    if (holds(-by)) return -by;
  }
  return null;
}
