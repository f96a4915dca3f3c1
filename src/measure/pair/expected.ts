import { declaredPair } from '../../declared.ts';
import type { DeviceFacts, HonestRange, Subjects } from '../../types.ts';

/**
 * Scatter of honest meters in the field, % (one standard deviation): 54 meters of 9 makers around a
 * reference, -0.9 ± 3.2 % (Maier et al. 2017, Int J Sports Med 38:456-461).
 */
export const fieldScatter = 3.2;
/**
 * What two zero offsets within a tenth of a newton metre leave of the difference, %: 0.1 N·m is 0.94 W at 90 rpm,
 * 0.47 % of 200 W, on either meter. Scatter found in the field holds it already.
 */
const zeroSpread = 0.67;
/** Loss in the chain, %: 2.1 ± 1.5 (Smit et al. 2023, Sports Eng., doi 10.1007/s12283-023-00439-z). */
export const chainLoss = { centre: 2.1, spread: 1.5 };
/**
 * A meter of one leg, doubled, %: healthy riders' legs differ in power by several percent (Kell & Greer
 * 2017, J Strength Cond Res 31:468-473; Osmani 2022: 50.56 to 49.44 in 23 amateurs).
 */
export const oneSidedSpread = 3;

/**
 * Where the overall difference of an honest pair lies, % of the second: centre from the places of the
 * two meters, spread from what is claimed for each (a rectangle of ±a has a standard deviation of a/√3,
 * JCGM 100:2008) or from scatter found in the field, the place, one-sided meters and the sampling error.
 *
 * @param error standard error of the measured difference, %
 */
export function expectedDifference(
  all: Subjects,
  subject: string,
  error: number,
): { declared: HonestRange; field: HonestRange } {
  const { own, other } = declaredPair(all, subject);
  const place = placeDifference(own, other);
  const sides = [own, other].filter((device) => device?.sides === 1).length * oneSidedSpread ** 2;
  const common = place.spread ** 2 + sides + error ** 2;
  const claims = claimed(own) ** 2 + claimed(other) ** 2;
  return {
    declared: { centre: place.centre, spread: Math.sqrt(claims + zeroSpread ** 2 + common) },
    field: { centre: place.centre, spread: Math.sqrt(2 * fieldScatter ** 2 + common) },
  };
}

function claimed(device: DeviceFacts | null): number {
  return device === null ? fieldScatter : Math.min(device.tolerancePercent / Math.sqrt(3), fieldScatter);
}

/** Primary over second, %: a meter behind the chain reads its loss below one before it. */
function placeDifference(own: DeviceFacts | null, other: DeviceFacts | null): HonestRange {
  const sides = [behindChain(own), behindChain(other)];
  // An undeclared place may be either side: half the loss, and its distance to either as spread.
  if (sides.includes(null)) return { centre: 0, spread: Math.hypot(chainLoss.spread, chainLoss.centre / 2) };
  if (sides[0] === sides[1]) return { centre: 0, spread: 0 };
  return { centre: sides[0] === true ? -chainLoss.centre : chainLoss.centre, spread: chainLoss.spread };
}

export function behindChain(device: DeviceFacts | null): boolean | null {
  return device === null ? null : device.place === 'hub' || device.place === 'trainer';
}
