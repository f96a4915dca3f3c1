/** What {@link plateaus} needs to know beside the values. */
export interface PlateauTerms {
  /** Standard deviation of a single value around its level. */
  readonly noise: number;
  /** Squares of the noise that one more level costs, for each unit of log n. */
  readonly price: number;
  /** Most values that one level may hold: bounds the work to n·longest. */
  readonly longest: number;
}

/**
 * Cuts values into runs of one level each: the partition with the smallest sum of squares around its means,
 * where each level costs `price`·log(n)·noise² (optimal partitioning, Jackson et al. 2005, IEEE Signal Process
 * Lett 12:105; candidates that can never win again are dropped, Killick, Fearnhead & Eckley 2012, J Am Stat
 * Assoc 107:1590).
 *
 * @param values without gaps
 * @returns index at which each run ends, ascending; the last is the number of values; empty for no values
 */
export function plateaus(values: Float64Array, { noise, price, longest }: PlateauTerms): number[] {
  const n = values.length;
  const cost = price * Math.log(n) * noise ** 2;
  const sums = new Float64Array(n + 1);
  const squares = new Float64Array(n + 1);
  const first = values[0] ?? 0;
  for (let i = 0; i < n; i++) {
    const value = values[i]! - first;
    sums[i + 1] = sums[i]! + value;
    squares[i + 1] = squares[i]! + value * value;
  }
  const best = new Float64Array(n + 1);
  const begins = new Int32Array(n + 1);
  const candidates = new Int32Array(n + 1);
  const totals = new Float64Array(n + 1);
  let count = 1;
  for (let end = 1; end <= n; end++) {
    let least = Number.POSITIVE_INFINITY;
    for (let k = 0; k < count; k++) {
      const begin = candidates[k]!;
      const sum = sums[end]! - sums[begin]!;
      totals[k] = best[begin]! + squares[end]! - squares[begin]! - (sum * sum) / (end - begin);
      if (totals[k]! >= least) continue;
      least = totals[k]!;
      begins[end] = begin;
    }
    best[end] = least + cost;
    let kept = 0;
    for (let k = 0; k < count; k++) {
      if (totals[k]! <= best[end]! && end - candidates[k]! < longest) candidates[kept++] = candidates[k]!;
    }
    candidates[kept] = end;
    count = kept + 1;
  }
  const ends: number[] = [];
  for (let end = n; end > 0; end = begins[end]!) ends.push(end);
  return ends.reverse();
}
