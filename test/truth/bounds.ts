import { gammaln } from 'simple-statistics';

/**
 * Bounds of a proportion (Clopper & Pearson 1934, Biometrika 26:404): one-sided, each at 95 %.
 * The true share lies above `lower` (below `upper`) unless one in twenty such samples came about.
 */
export interface Share {
  readonly count: number;
  readonly of: number;
  readonly share: number;
  readonly lower: number;
  readonly upper: number;
}

export function shareOf(count: number, of: number, confidence = 0.95): Share {
  const miss = 1 - confidence;
  return {
    count,
    of,
    share: of === 0 ? Number.NaN : count / of,
    lower: count === 0 ? 0 : solve((p) => 1 - atMost(count - 1, of, p) < miss),
    upper: count === of ? 1 : solve((p) => atMost(count, of, p) > miss),
  };
}

/** The p at which `holds` stops being true. */
function solve(holds: (p: number) => boolean): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability of at most k successes in n trials. */
function atMost(k: number, n: number, p: number): number {
  if (p <= 0) return 1;
  if (p >= 1) return k >= n ? 1 : 0;
  // The shorter tail, summed from the largest term outwards.
  if (k > n * p) return 1 - atMost(n - k - 1, n, 1 - p);
  let sum = 0;
  let term = Math.exp(logTerm(k, n, p));
  for (let i = k; i >= 0 && term > sum * 1e-16; i--) {
    sum += term;
    term *= (i * (1 - p)) / ((n - i + 1) * p);
  }
  return Math.min(1, sum);
}

function logTerm(k: number, n: number, p: number): number {
  const choose = gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1);
  return choose + k * Math.log(p) + (n - k) * Math.log1p(-p);
}
