import { combOf } from '../math/lattice.ts';
import { inSteadyWindow } from '../math/steady-windows.ts';
import type { CombChart, Stretch } from '../types.ts';
import { defineMeasure, exact, measured, notApplicable, number, numbers } from './measure.ts';
import { findLattice, isPart, type Lattice, type LatticeSearch } from './recording/lattice.ts';
import { samplesOf } from './recording/samples.ts';
import { subjectOf } from './recording/subject.ts';
import { countsOf, neverRecorded } from './recording/watt-histogram.ts';

/**
 * By how many percent whole watts look multiplied: the factor whose comb the histogram of power shows, with
 * the range of factors that explain it as well; 0 where no comb goes beyond chance. Blind to factors within
 * `blindShare` of 1, to decimals, and to what was smoothed after multiplying.
 */
export const latticeExcess = defineMeasure({
  id: 'lattice-excess',
  of: 'recording',
  unit: '%',
  options: {
    leastFactor: number('smallest factor looked for'),
    greatestFactor: number('greatest factor looked for'),
    blindShare: number('factors nearer to 1 than this are not looked for'),
    stepWatts: number('how far the far end of the comb moves from one factor tried to the next, W'),
    strayShare: number('share of samples that may miss the comb'),
    flankWatts: number('watts on either side that say how often a watt is due, W'),
    commonShare: number('share of the samples up to whose watts a comb is looked for'),
    firstLook: number('standard deviations from which the stretches of a comb are looked at'),
    candidates: number('how many combs are looked at so'),
    halvesFrom: numbers(
      'where the halves of the ride begin that are looked at beside the whole, share of it',
    ),
    chance: number('probability of such a comb by chance, above which it counts for nothing'),
    fromWatts: number('power from which samples count, W'),
    toWatts: number(
      'power up to which they do, W: what no rider makes tells of no meter, and is slow to look through',
    ),
    minimumSamples: number('such samples below which nothing is said'),
    wholeShare: number('share of the samples on whole watts below which power counts as decimal'),
    steadySamples: number('length of a window that may stand still, samples'),
    steadyWatts: number('standard deviation up to which it does and is left out, W'),
    dueCounts: number(
      'counts that its flanks must lead to expect of a watt before its absence tells anything',
    ),
    coarseShare: number(
      'share of never recorded watts from which the meter counts as working in coarse steps',
    ),
    outsideExpected: number('counts due at the comb outside the stretch that can tell a part from the whole'),
    outsideLoss: number('log-likelihood by which these must speak against the comb'),
  },
  circumstances: {
    throughout:
      'the comb runs through the whole recording: a meter that works in coarse steps makes the same one',
    lowered: 'the factor is below 1: such a change only lowers the power',
  },
  compute(all, recording, options) {
    const samples = samplesOf(all, recording);
    if (samples === null) return notApplicable('no-channel', { channel: 'power' });
    const { whole, valid, used } = wholeWatts(samples.power, options);
    if (valid > 0 && whole < options.wholeShare * valid) {
      return notApplicable('decimal-power', { share: 1 - whole / valid });
    }
    const watts = used.map((i) => samples.power[i]!);
    const needed = options.minimumSamples;
    if (valid < needed) return notApplicable('too-short', { seconds: valid, needed });
    if (watts.length < needed) return notApplicable('too-few-readings', { readings: watts.length, needed });
    const coarse = neverRecorded(watts, options.dueCounts, options);
    if (coarse >= options.coarseShare) {
      return notApplicable('coarse-steps', { share: coarse });
    }
    const lattice = findLattice(watts, options);
    const chance = lattice === null ? 1 : Math.min(1, Math.exp(lattice.logTried - lattice.gain));
    if (lattice === null || chance > options.chance) {
      return exact(0, watts.length, { details: { samples: watts.length } });
    }
    const percent = (factor: number) => 100 * Math.abs(factor - 1);
    const ends = [percent(lattice.low), percent(lattice.high)].sort((a, b) => a - b) as [number, number];
    const at = (k: number) => samples.at[used[k]!]!;
    const throughout = !isPart(watts, lattice, options.outsideExpected, options.outsideLoss, options);
    const stretch: Stretch = throughout
      ? [at(0), at(watts.length - 1) + 1]
      : [at(lattice.from), at(lattice.to - 1) + 1];
    return measured(percent(lattice.factor), ends, watts.length, {
      stretches: [stretch],
      circumstances: [...(throughout ? ['throughout'] : []), ...(lattice.factor < 1 ? ['lowered'] : [])],
      chance,
      details: {
        factor: { value: lattice.factor, unit: 'ratio' },
        counted: lattice.counted,
        expected: Math.round(lattice.expected),
        samples: lattice.to - lattice.from,
        from: stretch[0],
        to: stretch[1],
      },
      charts: [
        chart(
          `comb:${subjectOf(all, recording)}`,
          watts.subarray(lattice.from, lattice.to),
          lattice,
          stretch,
          options,
        ),
      ],
    });
  },
});

interface Sifting {
  readonly fromWatts: number;
  readonly toWatts: number;
  readonly steadySamples: number;
  readonly steadyWatts: number;
}

/** Samples with digits that tell something: whole, pedalled, no repeat of the one before, not standing still. */
function wholeWatts(power: Float64Array, { fromWatts, toWatts, steadySamples, steadyWatts }: Sifting) {
  const steady = inSteadyWindow(power, steadySamples, steadyWatts);
  const used: number[] = [];
  let valid = 0;
  let whole = 0;
  for (let i = 0; i < power.length; i++) {
    const watts = power[i]!;
    if (!(watts >= fromWatts && watts <= toWatts)) continue;
    valid++;
    if (!Number.isInteger(watts)) continue;
    whole++;
    if (steady[i] === 0 && watts !== power[i - 1]) used.push(i);
  }
  return { valid, whole, used: Int32Array.from(used) };
}

function chart(
  id: string,
  watts: Int32Array,
  lattice: Lattice,
  stretch: Stretch,
  search: LatticeSearch,
): CombChart {
  const { counts, expected } = countsOf(watts, search);
  const from = Math.max(
    0,
    counts.findIndex((count) => count > 0),
  );
  return {
    kind: 'comb',
    id,
    from,
    counts: [...counts.subarray(from)],
    expected: Array.from(expected.subarray(from), (due) => Math.round(due * 10) / 10),
    factor: lattice.factor,
    marked: combOf(lattice.factor, counts.length - 1, lattice.rounding).filter((k) => k >= from),
    stretch,
  };
}
