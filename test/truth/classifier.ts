/**
 * A simple classifier: a straight boundary between two groups of traces (Fisher 1936), each figure scaled to
 * its spread, the pooled covariance pulled towards its diagonal because there are few traces of one group.
 */
export interface Sample {
  readonly figures: readonly number[];
  readonly real: boolean;
  /** Pieces of one ride are never on both sides of a trial. */
  readonly ride: string;
}

/** Mean of the shares of real and of simulated pieces told rightly, each by a boundary drawn without its ride. */
export function balancedAccuracy(samples: readonly Sample[]): number {
  const rides = [...new Set(samples.map(({ ride }) => ride))];
  const right = { real: [0, 0], made: [0, 0] };
  for (const ride of rides) {
    const boundary = boundaryOf(samples.filter((one) => one.ride !== ride));
    for (const sample of samples.filter((one) => one.ride === ride)) {
      const tally = sample.real ? right.real : right.made;
      tally[1]!++;
      if (boundary(sample.figures) === sample.real) tally[0]!++;
    }
  }
  return (right.real[0]! / right.real[1]! + right.made[0]! / right.made[1]!) / 2;
}

function boundaryOf(samples: readonly Sample[]): (figures: readonly number[]) => boolean {
  const size = samples[0]!.figures.length;
  const centre = (real: boolean) => {
    const group = samples.filter((one) => one.real === real);
    return Array.from(
      { length: size },
      (_, j) => group.reduce((sum, { figures }) => sum + figures[j]!, 0) / group.length,
    );
  };
  const centres = { real: centre(true), made: centre(false) };
  const covariance = pooled(samples, centres);
  const difference = centres.real.map((value, j) => value - centres.made[j]!);
  const weights = solve(covariance, difference);
  const project = (figures: readonly number[]) =>
    figures.reduce((sum, value, j) => sum + value * weights[j]!, 0);
  const middle = (project(centres.real) + project(centres.made)) / 2;
  return (figures) => project(figures) > middle;
}

/** Both groups weigh alike, however many samples each has. */
function pooled(
  samples: readonly Sample[],
  centres: { readonly real: readonly number[]; readonly made: readonly number[] },
): number[][] {
  const size = centres.real.length;
  const out = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const real = samples.filter((one) => one.real).length;
  for (const sample of samples) {
    const middle = sample.real ? centres.real : centres.made;
    const weight = 0.5 / (sample.real ? real : samples.length - real);
    const away = sample.figures.map((value, j) => value - middle[j]!);
    for (let j = 0; j < size; j++) for (let k = 0; k < size; k++) out[j]![k]! += weight * away[j]! * away[k]!;
  }
  const pull = 0.3;
  return out.map((row, j) => row.map((value, k) => (j === k ? value + 1e-9 : value * (1 - pull))));
}

/** Gaussian elimination with pivots. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, j) => [...row, right[j]!]);
  const size = right.length;
  for (let j = 0; j < size; j++) {
    let pivot = j;
    for (let k = j + 1; k < size; k++) if (Math.abs(rows[k]![j]!) > Math.abs(rows[pivot]![j]!)) pivot = k;
    [rows[j], rows[pivot]] = [rows[pivot]!, rows[j]!];
    for (let k = j + 1; k < size; k++) {
      const factor = rows[k]![j]! / rows[j]![j]!;
      for (let c = j; c <= size; c++) rows[k]![c]! -= factor * rows[j]![c]!;
    }
  }
  const out = new Array<number>(size).fill(0);
  for (let j = size - 1; j >= 0; j--) {
    let sum = rows[j]![size]!;
    for (let k = j + 1; k < size; k++) sum -= rows[j]![k]! * out[k]!;
    out[j] = sum / rows[j]![j]!;
  }
  return out;
}
