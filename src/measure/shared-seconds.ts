import type { OtherSubmission, Series } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { type CopySearch, copiesIn } from './recording/copies.ts';

/**
 * Longest stretch that this recording has in common with another rider's, sample by sample, in power or in
 * cadence (which stays when somebody rescales power): an exact length. Compared is content, wherever in the
 * two files it lies; the event says which other submissions to compare with.
 */
export const sharedSeconds = defineMeasure({
  id: 'shared-seconds',
  of: 'recording',
  unit: 's',
  options: {
    windowSamples: number('shortest stretch looked for'),
    tellingShare: number('share of its samples at which the channel must bend'),
    distinctChanges: number('different changes it must hold'),
    chance: number('number of such stretches expected by chance, above which one counts for nothing'),
  },
  compute(all, recording, options) {
    if (all.others === undefined) return notApplicable('no-event');
    const shared = all.others
      .flatMap((other) => [
        common(recording, other, 'power', options),
        common(recording, other, 'cadence', options),
      ])
      .filter((one) => one !== null)
      .sort((a, b) => b.length - a.length);
    const longest = shared[0];
    if (longest === undefined) return exact(0, recording.length, { details: { other: 'none' } });
    const { length, own, theirs, channel, other, total } = longest;
    return exact(length, recording.length, {
      stretches: [[own, own + length]],
      details: { other: other.name, channel, total: { value: total, unit: 's' }, first: own },
      charts: [
        {
          kind: 'copies',
          id: 'shared:primary',
          copies: [
            {
              at: [own, theirs],
              seconds: length,
              first: readings(recording.channels[channel]!, own, own + length),
              second: readings(other[channel]!, theirs, theirs + length),
            },
          ],
        },
      ],
    });
  },
});

function common(
  { channels, length }: Series,
  other: OtherSubmission,
  channel: 'power' | 'cadence',
  options: CopySearch,
) {
  const own = channels[channel];
  const theirs = other[channel];
  if (own === undefined || theirs === undefined) return null;
  const joined = new Float64Array(length + 1 + theirs.length).fill(Number.NaN);
  joined.set(own);
  joined.set(theirs, length + 1);
  const copies = copiesIn(joined, length + 1, options);
  const longest = copies[0];
  if (longest === undefined) return null;
  return {
    channel,
    other,
    own: longest.first,
    theirs: longest.second - length - 1,
    length: longest.length,
    total: copies.reduce((sum, copy) => sum + copy.length, 0),
  };
}
