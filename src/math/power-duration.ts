/**
 * Typical fall of all-out power with duration, as a natural logarithm of watts over critical power: the
 * 2-parameter model P = CP + W′/t with the loss of critical power in long efforts on top (two-parameter
 * curves read 6.6 % high at an hour: MacInnis et al. 2019, IJSPP 14:38). Good from about 3 min.
 *
 * @param duration s
 * @param reserve W′/CP, s
 * @param tiring loss of critical power for each natural logarithm of time beyond a quarter of an hour
 */
export function typicalFall(duration: number, reserve: number, tiring: number): number {
  return Math.log(1 + reserve / duration) - tiring * Math.log(1 + duration / 1800);
}
