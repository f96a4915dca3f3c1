import { claimedSpread, declaredPair } from '../../declared.ts';
import { mean } from '../../math/mean.ts';
import type { DeviceFacts, HonestRange, Subjects } from '../../types.ts';

/**
 * Scatter of honest meters in the field, % (one standard deviation): 54 meters of 9 makers around a
 * reference, -0.9 ± 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461).
 */
export const fieldScatter = 3.2;
/**
 * What a zero offset leaves on one meter, W (one standard deviation) at 90 rpm: a tenth of a newton metre where it
 * is done, a quarter where nobody sees to it (common practice, no source; 1 N·m is 9.42 W). Of low power it is a
 * larger share, so that a scatter in percent does not hold it.
 */
export const zeroWatts = { declared: 0.94, field: 2.36 };
/**
 * Loss in the chain, %: 2.1 ± 1.5 (Smit et al. 2023, Sports Eng., doi 10.1007/s12283-023-00439-z). No chain gives
 * power, so that losses lean: `more` is the standard deviation of those above the mean in a gamma distribution of
 * that mean and spread. Below the mean the whole spread stands: a trainer may make up for the loss by itself.
 */
export const chainLoss = { centre: 2.1, spread: 1.5, more: 1.9 };
/**
 * A meter of one leg, doubled, %: healthy riders' legs differ in power by several percent (Kell & Greer
 * 2017, J Strength Cond Res 31:468-473; Osmani 2022: 50.56 to 49.44 in 23 amateurs).
 */
export const oneSidedSpread = 3;

/**
 * Where the overall difference of an honest pair lies, % of the second: centre from the places of the
 * two meters, spread from what is claimed for each (a rectangle of ±a has a standard deviation of a/√3,
 * JCGM 100:2008) or from scatter found in the field, zero offsets, the place, one-sided meters and the sampling
 * error. The spread is that of primaries that read high.
 *
 * @param watts mean power of the second
 * @param error standard error of the measured difference, %
 */
export function expectedDifference(
  all: Subjects,
  subject: string,
  watts: number,
  error: number,
): { declared: HonestRange; field: HonestRange } {
  const { own, other } = declaredPair(all, subject);
  const place = placeDifference(own, [other]);
  const range = (varianceOf: typeof fieldVariance): HonestRange => ({
    centre: place.centre,
    spread: Math.sqrt(varianceOf(own, watts) + varianceOf(other, watts) + place.spread ** 2 + error ** 2),
  });
  return { declared: range(claimedVariance), field: range(fieldVariance) };
}

/** Variance of what an honest meter of this kind reads, as found in the field, %², around what its place lets it. */
export function fieldVariance(device: DeviceFacts | null, watts: number): number {
  return variance(device, watts, fieldScatter, zeroWatts.field);
}

function claimedVariance(device: DeviceFacts | null, watts: number): number {
  const claim = Math.min(claimedSpread(device, fieldScatter), fieldScatter);
  return variance(device, watts, claim, zeroWatts.declared);
}

function variance(device: DeviceFacts | null, watts: number, gain: number, zero: number): number {
  const sides = device?.sides === 1 ? oneSidedSpread ** 2 : 0;
  return gain ** 2 + ((100 * zero) / watts) ** 2 + sides;
}

/** One meter over the mean of others, %: a meter behind the chain reads its loss below one before it. */
export function placeDifference(
  own: DeviceFacts | null,
  others: readonly (DeviceFacts | null)[],
): HonestRange {
  const sides = [own, ...others].map(behindChain);
  // An undeclared place may be either side: half the loss, and its distance to either as spread.
  if (sides.includes(null)) return { centre: 0, spread: Math.hypot(chainLoss.spread, chainLoss.centre / 2) };
  const [behind, ...among] = sides.map(Number) as [number, ...number[]];
  const share = mean(among) - behind;
  // Much is lost where a meter before the chain reads high.
  return {
    centre: chainLoss.centre * share,
    spread: Math.abs(share) * (share > 0 ? chainLoss.more : chainLoss.spread),
  };
}

export function behindChain(device: DeviceFacts | null): boolean | null {
  return device === null ? null : device.place === 'hub' || device.place === 'trainer';
}
