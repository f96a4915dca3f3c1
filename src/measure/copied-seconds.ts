import type { Repeat } from '../math/repeats.ts';
import type { CopiesChart } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { copiesIn } from './recording/copies.ts';
import { type Samples, samplesOf } from './recording/samples.ts';
import { subjectOf } from './recording/subject.ts';

/** Copies shown side by side. */
const shown = 4;

/**
 * Length of the longest stretch whose changes of power occur a second time, sample by sample: an exact
 * length. Only samples at which power bends (its change differs from the change before) tell anything:
 * constant stretches and even ramps repeat by themselves. A repeat that chance would bring counts for
 * nothing; the chance comes from how often two such changes of this very recording agree.
 */
export const copiedSeconds = defineMeasure({
  id: 'copied-seconds',
  of: 'recording',
  options: {
    windowSamples: number('shortest repeat looked for'),
    tellingShare: number('share of its samples at which power must bend'),
    distinctChanges: number('different changes of power it must hold: an even ramp repeats its rounding'),
    chance: number('number of such repeats expected by chance, above which one counts for nothing'),
    sameMomentSeconds: number('copies closer than this in time are one moment written twice, s'),
    minimumSamples: number('samples of power below which nothing is said'),
  },
  compute(all, recording, options) {
    const samples = samplesOf(all, recording);
    if (samples === null) return notApplicable('no-channel', { channel: 'power' });
    const valid = samples.power.reduce((sum, watts) => (Number.isNaN(watts) ? sum : sum + 1), 0);
    if (valid < options.minimumSamples) {
      return notApplicable('too-short', { seconds: valid, needed: options.minimumSamples });
    }
    const copies = copiesIn(samples.power, 0, options).filter(
      ({ first, second }) => Math.abs(samples.at[second]! - samples.at[first]!) > options.sameMomentSeconds,
    );
    const longest = copies[0];
    return exact(longest?.length ?? 0, 's', valid, {
      stretches: copies
        .slice(0, shown)
        .flatMap(({ first, second, length }) => [
          [samples.at[first]!, samples.at[first]! + length] as const,
          [samples.at[second]!, samples.at[second]! + length] as const,
        ])
        .sort((a, b) => a[0] - b[0]),
      details: {
        copies: copies.length,
        total: { value: copies.reduce((sum, { length }) => sum + length, 0), unit: 's' },
        ...(longest === undefined
          ? {}
          : {
              first: samples.at[longest.first]!,
              second: samples.at[longest.second]!,
              offset: { value: samples.power[longest.second]! - samples.power[longest.first]!, unit: 'W' },
            }),
      },
      charts: longest === undefined ? [] : [chart(`copies:${subjectOf(all, recording)}`, samples, copies)],
    });
  },
});

function chart(id: string, { power, at }: Samples, copies: readonly Repeat[]): CopiesChart {
  return {
    kind: 'copies',
    id,
    copies: copies.slice(0, shown).map(({ first, second, length }) => ({
      at: [at[first]!, at[second]!],
      seconds: length,
      first: readings(power, first, first + length),
      second: readings(power, second, second + length),
    })),
  };
}
