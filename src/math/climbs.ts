import { median } from 'simple-statistics';
import { SecondState, type Series, type Stretch } from '../types.ts';
import { leastSquares } from './least-squares.ts';
import { airDensity, massTerms } from './road-power.ts';

/** First second, mean power (W) and mass of rider and bicycle (kg) of one steep, steady stretch. */
export interface Climb {
  readonly at: number;
  readonly watts: number;
  readonly mass: number;
}

/** What the climbs of a ride say of the mass that its power moved. */
export interface Climbing {
  readonly climbs: readonly Climb[];
  /** Middle of their masses, kg; NaN where there are none. */
  readonly mass: number;
  /** Middle of how far single ones lie from it, share of it; NaN where there are none. */
  readonly scatter: number;
  /** m², as the ride itself shows it. */
  readonly dragArea: number;
}

/*
 * What counts as climbing. These are no options: past rides are kept in profiles by what they showed, and
 * what is compared must have been worked out in one way.
 */
export const stretchSeconds = 30;
/** Rise over run: above it gravity outweighs the rest; and from which a stretch says something of drag. */
const steepGrade = 0.04;
const leastGrade = 0;
/** m/s; below it grade is not known well. */
const leastSpeed = 1.5;
/** Coefficient of rolling resistance of a road, and of simulated courses (common practice, no source). */
const rolling = 0.004;
/** Drag area (m²) deep in a bunch, and upright: what a ride shows is held between them. */
const dragAreas = [0.15, 0.4] as const;
/** Where nothing else is known: sea level, Pa, air of middling humidity, °C. On a climb air hardly counts. */
const pressure = 101_325;
const humidity = 0.5;
const usualCelsius = 20;

/**
 * Solves the road power model (Martin et al. 1998) for mass on every steep, steady stretch. Drag is what the
 * ride's uphill stretches, fast and slow, show together with one mass: wind, draft and position of the ride.
 *
 * Seconds that an irregular recorder leaves out are carried over: a stretch begins and ends a few seconds late
 * then, which over the climbs of a ride cancels out.
 *
 * @param efficiency share of the power that arrives at the wheel
 */
export function climbing({ channels, state }: Series, [from, to]: Stretch, efficiency: number): Climbing {
  const { power, speed, altitude, temperature } = channels;
  const uphill: Uphill[] = [];
  for (let at = from; at + stretchSeconds < to; at += stretchSeconds) {
    const end = at + stretchSeconds;
    let [watts, metres] = [0, 0];
    let whole = true;
    for (let i = at; i < end; i++) {
      watts += power![i]! / stretchSeconds;
      metres += speed![i]!;
      whole &&= state[i]! <= SecondState.bridged && power![i]! > 0 && speed![i]! >= leastSpeed;
    }
    const grade = (altitude![end]! - altitude![at]!) / metres;
    if (!whole || !(grade > leastGrade)) continue;
    const celsius = temperature?.[at] ?? Number.NaN;
    const density = airDensity(Number.isNaN(celsius) ? usualCelsius : celsius, pressure, humidity);
    const gained = (speed![end]! ** 2 - speed![at]! ** 2) / 2 / stretchSeconds;
    const terms = massTerms({ rolling, density }, watts * efficiency, metres / stretchSeconds, grade, gained);
    if (Number.isFinite(terms.perKg + terms.left) && terms.left > 0)
      uphill.push({ at, watts, grade, ...terms });
  }
  const dragArea = shownDragArea(uphill);
  const climbs = uphill
    .filter(({ grade, perKg }) => grade >= steepGrade && perKg > 0)
    .map(({ at, watts, left, perKg, perArea }) => ({ at, watts, mass: (left - dragArea * perArea) / perKg }));
  const mass = climbs.length === 0 ? Number.NaN : median(climbs.map((climb) => climb.mass));
  const off = climbs.map((climb) => Math.abs(climb.mass / mass - 1));
  return { climbs, mass, scatter: off.length === 0 ? Number.NaN : median(off), dragArea };
}

interface Uphill extends ReturnType<typeof massTerms> {
  readonly at: number;
  readonly watts: number;
  readonly grade: number;
}

/** Least squares for mass and drag area at once, every stretch weighed by its power. */
function shownDragArea(uphill: readonly Uphill[]): number {
  const share = (term: (stretch: Uphill) => number) =>
    Float64Array.from(uphill, (stretch) => term(stretch) / stretch.left);
  const fit = leastSquares(
    [share(({ perKg }) => perKg), share(({ perArea }) => perArea)],
    new Float64Array(uphill.length).fill(1),
  );
  const [least, most] = dragAreas;
  return Math.min(most, Math.max(least, fit?.coefficients[1] ?? least));
}
