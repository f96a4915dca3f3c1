import { defineMeasure, exact, notApplicable, number, numbers } from './measure.ts';
import { subjectOf } from './recording/subject.ts';
import { traitsOf } from './recording/traits.ts';

/**
 * Counts the things that every rider shows and this recording does not: cadence that wanders, power uneven
 * over longer and shorter stretches alike, a heart rate that moves and keeps a scatter of its own, last
 * digits as they fall. An exact count of those that the recording could show.
 */
export const missingTraits = defineMeasure({
  id: 'missing-traits',
  of: 'recording',
  unit: 'count',
  options: {
    minimumWatts: number('power from which seconds count, W'),
    minimumSeconds: number('seconds below which a trait is not looked at'),
    fewest: number('traits that a recording must be able to show'),
    cadenceWander: number('standard deviation of half-minute means of cadence from which it wanders, %'),
    scatterRatio: number('scatter of 2 s means over that of 4 s means up to which pedalling is uneven alike'),
    stillestHeart: number('share of seconds in which heart rate changes, at least'),
    busiestHeart: number('and at most'),
    heartScatter: number('scatter of heart rate around what power and time explain, at least, bpm'),
    heartFrom: number('second of the recording from which that is looked at'),
    heartTimes: numbers('time constants tried for the answer of heart rate to power, s'),
    unevenDigits: number('share of watts that would have to end otherwise, at most'),
    digitChance: number('probability by chance up to which uneven digits count'),
  },
  compute(all, recording, options) {
    const traits = traitsOf(recording, options);
    if (traits.length < options.fewest) {
      return notApplicable('too-short', { seconds: recording.length, needed: options.minimumSeconds });
    }
    const missing = traits.filter(({ drawn }) => !drawn.shown);
    return exact(missing.length, traits.length, {
      details: {
        missing: missing.length,
        looked: traits.length,
        traits: missing.map(({ named }) => named).join(', ') || 'none',
      },
      charts:
        missing.length === 0
          ? []
          : [
              {
                kind: 'traits',
                id: `traits:${subjectOf(all, recording)}`,
                traits: traits.map(({ drawn }) => drawn),
              },
            ],
    });
  },
});
