/**
 * Error variance of each of three or more instruments that measured the same items, from the variances of
 * their pairwise differences (Grubbs 1948, J Am Stat Assoc 43:243-264; 1973, Technometrics 15:53-66). With
 * three, σ₁² = (s₁₂² + s₁₃² - s₂₃²)/2; with more, the mean over all such triples. May come out negative,
 * which says that the data do not tell that instrument's error from nothing.
 *
 * @param readings one array for each instrument, item by item
 */
export function grubbsVariances(readings: readonly Float64Array[]): number[] {
  const size = readings.length;
  const pairs = readings.map((a) => readings.map((b) => varianceOfDifference(a, b)));
  return readings.map((_, i) => {
    let sum = 0;
    let triples = 0;
    for (let j = 0; j < size; j++) {
      for (let k = j + 1; k < size; k++) {
        if (j === i || k === i) continue;
        sum += (pairs[i]![j]! + pairs[i]![k]! - pairs[j]![k]!) / 2;
        triples++;
      }
    }
    return sum / triples;
  });
}

function varianceOfDifference(a: Float64Array, b: Float64Array): number {
  const n = a.length;
  let mean = 0;
  for (let i = 0; i < n; i++) mean += (a[i]! - b[i]!) / n;
  let squares = 0;
  for (let i = 0; i < n; i++) squares += (a[i]! - b[i]! - mean) ** 2;
  return squares / (n - 1);
}
