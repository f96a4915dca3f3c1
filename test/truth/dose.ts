/** One draw of a fault at a dose, and whether it was found. */
export interface Trial {
  readonly dose: number;
  readonly found: boolean;
}

/** Chance of being found = 1 / (1 + exp(-(a + b·ln dose))). */
export interface DoseCurve {
  readonly a: number;
  readonly b: number;
  /** Dose at which half are found, and whether it lies outside of what was tried: then nothing tells where. */
  readonly half: number;
  readonly beyond: 'below' | 'above' | null;
}

/**
 * Logistic curve of detection against the logarithm of the dose, by Newton's method with a weak pull of the
 * slope towards 0, so that a clean step has a finite slope.
 */
export function doseCurve(trials: readonly Trial[]): DoseCurve {
  let a = 0;
  let b = 0;
  const x = trials.map(({ dose }) => Math.log(dose));
  const middle = x.reduce((sum, value) => sum + value, 0) / Math.max(1, x.length);
  const pull = 0.02;
  for (let step = 0; step < 60; step++) {
    let [ga, gb, haa, hab, hbb] = [0, -pull * b, 1e-9, 0, pull];
    trials.forEach(({ found }, i) => {
      const u = x[i]! - middle;
      const p = 1 / (1 + Math.exp(-(a + b * u)));
      const w = p * (1 - p);
      ga += (found ? 1 : 0) - p;
      gb += ((found ? 1 : 0) - p) * u;
      haa += w;
      hab += w * u;
      hbb += w * u * u;
    });
    const determinant = haa * hbb - hab * hab;
    const da = (hbb * ga - hab * gb) / determinant;
    const db = (haa * gb - hab * ga) / determinant;
    const shrink = Math.min(1, 3 / Math.max(1e-9, Math.abs(da), Math.abs(db)));
    a += shrink * da;
    b += shrink * db;
    if (Math.abs(da) + Math.abs(db) < 1e-8) break;
  }
  return { a: a - b * middle, b, ...halfOf(a, b, x, middle) };
}

/** Where the curve passes one half; the end of what was tried where it does not. */
function halfOf(
  a: number,
  b: number,
  x: readonly number[],
  middle: number,
): Pick<DoseCurve, 'half' | 'beyond'> {
  const low = x.reduce((least, value) => Math.min(least, value), Infinity);
  const high = x.reduce((most, value) => Math.max(most, value), -Infinity);
  const found = (at: number) => a + b * (at - middle) >= 0;
  if (found(low)) return { half: Math.exp(low), beyond: 'below' };
  if (!found(high)) return { half: Math.exp(high), beyond: 'above' };
  return { half: Math.exp(middle - a / b), beyond: null };
}

/** Share found in bands of equal counts, for a chart. */
export function doseBands(trials: readonly Trial[], bands: number): { dose: number; share: number }[] {
  const sorted = [...trials].sort((one, other) => one.dose - other.dose);
  const size = Math.max(1, Math.ceil(sorted.length / bands));
  return Array.from({ length: Math.ceil(sorted.length / size) }, (_, k) => {
    const band = sorted.slice(k * size, (k + 1) * size);
    const log = band.reduce((sum, { dose }) => sum + Math.log(dose), 0) / band.length;
    return { dose: Math.exp(log), share: band.filter(({ found }) => found).length / band.length };
  });
}
