export interface LaggedSums {
  readonly products: number;
  readonly squares: number;
  readonly otherSquares: number;
  /** Pairs in which neither sample is missing. */
  readonly count: number;
}

/**
 * Sums over own[t] and other[t - lag] for t in [from, to), as far as the other reaches, pairs with a
 * missing sample passed over: what a correlation of columns around zero is made of.
 */
export function laggedSums(
  own: Float64Array,
  other: Float64Array,
  lag: number,
  from = 0,
  to = own.length,
): LaggedSums {
  let products = 0;
  let squares = 0;
  let otherSquares = 0;
  let count = 0;
  const end = Math.min(to, other.length + lag);
  for (let t = Math.max(0, from, from + lag); t < end; t++) {
    const a = own[t]!;
    const b = other[t - lag]!;
    if (Number.isNaN(a) || Number.isNaN(b)) continue;
    products += a * b;
    squares += a * a;
    otherSquares += b * b;
    count++;
  }
  return { products, squares, otherSquares, count };
}

/** What several stretches make together, each at a lag of its own. */
export function addedSums(all: readonly LaggedSums[]): LaggedSums {
  const total = (of: keyof LaggedSums) => all.reduce((sum, one) => sum + one[of], 0);
  return {
    products: total('products'),
    squares: total('squares'),
    otherSquares: total('otherSquares'),
    count: total('count'),
  };
}

/** Correlation around zero, -1 to 1; 0 where either is even. */
export function correlationOf({ products, squares, otherSquares }: LaggedSums): number {
  return ratio(products, squares * otherSquares);
}

/** Correlation from a sum of products and the product of both sums of squares. */
export function ratio(product: number, energies: number): number {
  return energies > 0 ? Math.max(-1, Math.min(1, product / Math.sqrt(energies))) : 0;
}
