import { teethOf, toothAt } from '../../math/lattice.ts';
import { type Comb, standing, type WattHistogram } from './watt-histogram.ts';

/** So many histograms are gone through at once: finding a comb's places costs as much as what stands there. */
const abreast = 4;

/** A count beside parts that are due, in one number: sums of 2²⁵ counts and 2²⁸ parts stay whole. */
const oneCount = 2 ** 28;

/** `WattHistogram.scoreAt` of every comb, thousands of them: a list for each histogram. All go up to the same watts. */
export function combScores(combs: readonly Comb[], histograms: readonly WattHistogram[]): Float64Array[] {
  const scores = histograms.map(() => new Float64Array(combs.length));
  for (let k = 0; k < histograms.length; k += abreast) {
    scoreAbreast(combs, histograms.slice(k, k + abreast), scores.slice(k, k + abreast));
  }
  return scores;
}

function scoreAbreast(
  combs: readonly Comb[],
  histograms: readonly WattHistogram[],
  scores: readonly Float64Array[],
): void {
  const { most, dueParts } = histograms[0]!;
  const low = tableOf(histograms, (histogram) => histogram.low);
  const high = tableOf(histograms, (histogram) => histogram.high);
  const sums = new Float64Array(abreast);
  for (let i = 0; i < combs.length; i++) {
    const comb = combs[i]!;
    sumUp(comb, most, comb.factor > 1 ? low : high, sums);
    for (let k = 0; k < scores.length; k++) {
      const counted = Math.floor(sums[k]! / oneCount);
      const expected = (sums[k]! - counted * oneCount) / dueParts;
      scores[k]![i] = standing(comb.factor, counted, expected);
    }
  }
}

/** Counts and what is due of all histograms, watt by watt beside each other. */
function tableOf(
  histograms: readonly WattHistogram[],
  dueIn: (histogram: WattHistogram) => Float64Array,
): Float64Array {
  const table = new Float64Array(abreast * (histograms[0]!.most + 1));
  histograms.forEach((histogram, k) => {
    const { counts, dueParts } = histogram;
    const due = dueIn(histogram);
    for (let watt = 0; watt < due.length; watt++) {
      table[abreast * watt + k] = oneCount * counts[watt]! + Math.round(dueParts * due[watt]!);
    }
  });
  return table;
}

/** What stands at the comb's places in each column of the table. */
function sumUp(comb: Comb, most: number, table: Float64Array, sums: Float64Array): void {
  const teeth = teethOf(comb.factor, comb.rounding);
  let first = 0;
  let second = 0;
  let third = 0;
  let fourth = 0;
  for (let number = 0; number <= most; number++) {
    const watt = toothAt(teeth, number);
    if (watt > most) break;
    const row = abreast * watt;
    first += table[row]!;
    second += table[row + 1]!;
    third += table[row + 2]!;
    fourth += table[row + 3]!;
  }
  sums[0] = first;
  sums[1] = second;
  sums[2] = third;
  sums[3] = fourth;
}
