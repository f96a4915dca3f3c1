import type { Stretch } from '../../types.ts';

/**
 * How much more the first trace varies from second to second than the other: its mean square of first differences
 * over the other's, in seconds that both recorded; NaN where neither varies. A meter that averages n seconds is
 * about n² lower.
 */
export function stepRatio(own: Float64Array, other: Float64Array, [from, to]: Stretch): number {
  let a = 0;
  let b = 0;
  for (let t = from + 1; t < to; t++) {
    const ownStep = own[t]! - own[t - 1]!;
    const otherStep = other[t]! - other[t - 1]!;
    if (Number.isNaN(ownStep + otherStep)) continue;
    a += ownStep ** 2;
    b += otherStep ** 2;
  }
  return a / b;
}

/** How much more the livelier of two traces varies from second to second than the other, at least 1. */
export function detailRatio(own: Float64Array, other: Float64Array, within: Stretch): number {
  const ratio = stepRatio(own, other, within);
  return Number.isNaN(ratio) ? Number.POSITIVE_INFINITY : Math.max(ratio, 1 / ratio);
}
