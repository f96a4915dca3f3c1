/** From a value to a place on the drawing. */
export type Scale = (value: number) => number;
type Ends = readonly [from: number, to: number];

export function linear([low, high]: Ends, [start, end]: Ends): Scale {
  const share = (end - start) / (high - low);
  return (value) => start + (value - low) * share;
}

/** Equal factors become equal distances; both ends of the domain above nought. */
export function logarithmic([low, high]: Ends, range: Ends): Scale {
  const scale = linear([Math.log(low), Math.log(high)], range);
  return (value) => scale(Math.log(value));
}

/** 1, 2 or 5 times a power of ten, whichever divides the domain most nearly into `count`. */
function step([low, high]: Ends, count: number): number {
  const rough = (high - low) / Math.max(1, count);
  const power = 10 ** Math.floor(Math.log10(rough));
  const over = rough / power;
  // The borders are the geometric means of neighbouring steps.
  return power * (over < Math.SQRT2 ? 1 : over < Math.sqrt(10) ? 2 : over < Math.sqrt(50) ? 5 : 10);
}

/** Multiples of the step from `first` to `last`, free of the dust that adding fractions leaves. */
function multiples(first: number, last: number, by: number): readonly number[] {
  const inverse = Math.round(1 / by);
  const at = (index: number) => (by < 1 ? index / inverse : index * by);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => at(first + index));
}

/** About `count` round values inside the domain. */
export function ticks(domain: Ends, count: number): readonly number[] {
  const by = step(domain, count);
  return multiples(Math.ceil(domain[0] / by), Math.floor(domain[1] / by), by);
}

/** The domain widened to round values, with about `count` of them across it. */
export function roundedOut(
  domain: Ends,
  count: number,
): { readonly domain: Ends; readonly ticks: readonly number[] } {
  const by = step(domain, count);
  const found = multiples(Math.floor(domain[0] / by), Math.ceil(domain[1] / by), by);
  return { domain: [found[0]!, found.at(-1)!], ticks: found };
}
