import { meanOfValid } from '../math/mean.ts';
import type { Repeat } from '../math/repeats.ts';
import type { CopiesChart, Reading, Stretch } from '../types.ts';
import { defineMeasure, exact, notApplicable, number } from './measure.ts';
import { readings } from './recording/close-ups.ts';
import { copiesIn } from './recording/copies.ts';
import { type Samples, samplesOf } from './recording/samples.ts';
import { subjectOf } from './recording/subject.ts';

/** Copies shown side by side. */
const shown = 4;

/**
 * Seconds of the longest stretch whose changes of power occur a second time, sample by sample: an exact
 * length. A copy is one even where a few samples in it differ (zeros that were not lifted along, a second
 * written twice): pieces that follow one another equally far apart are joined, and add up. Only samples at
 * which power bends (its change differs from the change before) tell anything: constant stretches and even
 * ramps repeat by themselves. A repeat that chance would bring counts for nothing; the chance comes from how
 * often two such changes of this very recording agree.
 */
export const copiedSeconds = defineMeasure({
  id: 'copied-seconds',
  of: 'recording',
  unit: 's',
  options: {
    windowSamples: number('shortest repeat looked for'),
    tellingShare: number('share of its samples at which power must bend'),
    distinctChanges: number('different changes of power it must hold: an even ramp repeats its rounding'),
    chance: number('number of such repeats expected by chance, above which one counts for nothing'),
    joinSamples: number('samples that may differ between two pieces of one copy'),
    shiftSamples: number('by how much their distance from the original may differ'),
    sampleSeconds: number('longest time that a sample stands for, s: a break counts no more'),
    sameMomentSeconds: number('copies closer than this in time are one moment written twice, s'),
    minimumSamples: number('samples of power below which nothing is said'),
  },
  compute(all, recording, options) {
    const samples = samplesOf(all, recording);
    if (samples === null) return notApplicable('no-channel', { channel: 'power' });
    const valid = meanOfValid(samples.power).count;
    if (valid < options.minimumSamples) {
      return notApplicable('too-short', { seconds: valid, needed: options.minimumSamples });
    }
    const pieces = copiesIn(samples.power, 0, options).filter(
      ({ first, second }) => Math.abs(samples.at[second]! - samples.at[first]!) > options.sameMomentSeconds,
    );
    const copies = joined(pieces, options)
      .map((chain) => ({ ...chain, seconds: secondsOf(chain.pieces, samples.at, options.sampleSeconds) }))
      .sort((a, b) => b.seconds - a.seconds || a.first[0] - b.first[0]);
    const longest = copies[0];
    const second = (k: number) => samples.at[k]!;
    return exact(longest?.seconds ?? 0, valid, {
      stretches: copies
        .slice(0, shown)
        .flatMap((copy) =>
          [copy.first, copy.second].map(([from, to]): Stretch => [second(from), second(to - 1) + 1]),
        )
        .sort((a, b) => a[0] - b[0]),
      details: {
        copies: copies.length,
        total: { value: copies.reduce((sum, { seconds }) => sum + seconds, 0), unit: 's' },
        ...(longest === undefined
          ? {}
          : {
              first: second(longest.first[0]),
              second: second(longest.second[0]),
              pieces: longest.pieces.length,
              offset: {
                value: samples.power[longest.second[0]]! - samples.power[longest.first[0]]!,
                unit: 'W',
              },
            }),
      },
      charts:
        longest === undefined
          ? []
          : [chart(`copies:${subjectOf(all, recording)}`, samples, copies, options.sampleSeconds)],
    });
  },
});

/** Pieces that follow one another in both places, about equally far apart; first sample and the one after. */
interface Chain {
  readonly pieces: readonly Repeat[];
  readonly first: Stretch;
  readonly second: Stretch;
}

interface Joining {
  readonly joinSamples: number;
  readonly shiftSamples: number;
}

function joined(pieces: readonly Repeat[], { joinSamples, shiftSamples }: Joining): Chain[] {
  const chains: Chain[] = [];
  /** The last chain at each distance between the two places. */
  const latest = new Map<number, number>();
  for (const piece of [...pieces].sort((a, b) => a.first - b.first)) {
    const shift = piece.second - piece.first;
    let found: number | undefined;
    for (let near = shift - shiftSamples; near <= shift + shiftSamples; near++) {
      const at = latest.get(near);
      if (at !== undefined && follows(piece, chains[at]!, joinSamples)) found = at;
    }
    const single = chainOf(piece);
    if (found === undefined) {
      latest.set(shift, chains.push(single) - 1);
      continue;
    }
    const before = chains[found]!;
    chains[found] = {
      pieces: [...before.pieces, piece],
      first: [before.first[0], single.first[1]],
      second: [before.second[0], single.second[1]],
    };
    latest.set(shift, found);
  }
  return chains;
}

function chainOf(piece: Repeat): Chain {
  const { first, second, length } = piece;
  return { pieces: [piece], first: [first, first + length], second: [second, second + length] };
}

/** Whether a piece goes on where the chain ended, in both places. */
function follows({ first, second }: Repeat, chain: Chain, most: number): boolean {
  const gaps = [first - chain.first[1], second - chain.second[1]];
  // Neighbouring pieces share the sample between them, or the two at a second written twice.
  return gaps.every((gap) => gap >= -3 && gap <= most);
}

/** Time that the samples of the copy stand for, in its second place. */
function secondsOf(pieces: readonly Repeat[], at: Float64Array, most: number): number {
  let seconds = 0;
  for (const { second, length } of pieces) {
    for (let k = second; k < second + length; k++) seconds += Math.min(most, stepAfter(at, k));
  }
  return seconds;
}

/** Seconds from a sample to the next. */
function stepAfter(at: Float64Array, k: number): number {
  return Math.max(0, (at[k + 1] ?? at[k]! + 1) - at[k]!);
}

/** A chain with the time that it lasts. */
interface Copy extends Chain {
  readonly seconds: number;
}

function chart(id: string, samples: Samples, copies: readonly Copy[], most: number): CopiesChart {
  return {
    kind: 'copies',
    id,
    copies: copies.slice(0, shown).map(({ first, second, seconds }) => ({
      at: [samples.at[first[0]]!, samples.at[second[0]]!],
      seconds,
      first: bySecond(samples, first, most),
      second: bySecond(samples, second, most),
    })),
  };
}

/** Samples second by second: each until the next, as a recorder leaves out what did not change. A break is empty. */
function bySecond({ power, at }: Samples, [from, to]: Stretch, most: number): Reading[] {
  const seconds: number[] = [];
  for (let k = from; k < to; k++) {
    const step = stepAfter(at, k);
    for (let t = 0; t < Math.min(most, step); t++) {
      seconds.push(t === 0 || step <= most ? power[k]! : Number.NaN);
    }
  }
  return readings(Float64Array.from(seconds), 0, seconds.length);
}
