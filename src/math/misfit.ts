/**
 * How much better one fit of some values is than another: their number times the logarithm of the squares that the
 * other leaves over those that the one leaves. Of fits with as many coefficients it is twice the difference of
 * their log-likelihoods, for normal errors.
 *
 * @param left residuals of the one
 * @param otherLeft residuals of the other
 */
export function evidenceFor(left: Float64Array, otherLeft: Float64Array): number {
  return left.length * Math.log(squaresOf(otherLeft) / squaresOf(left));
}

function squaresOf(residuals: Float64Array): number {
  return residuals.reduce((sum, residual) => sum + residual ** 2, 0);
}
