import type { Ability } from './ability.ts';
import type { Random } from './random.ts';
import { type TorqueLine, torqueLine } from './torque.ts';

export type Standard = 'beginner' | 'club' | 'racer' | 'elite';
export const standards: readonly Standard[] = ['beginner', 'club', 'racer', 'elite'];

/** A rider as they are: everything the simulator knows and the program under test does not. */
export interface Rider {
  readonly recordClass: 'women' | 'open';
  readonly standard: Standard;
  /** kg */
  readonly mass: number;
  readonly ability: Ability;
  /** Fall of CP in long efforts, share per natural logarithm. */
  readonly tiring: number;
  readonly torque: TorqueLine;
  /** Cadence they settle at, rpm, and how far they let it stray before they shift. */
  readonly cadence: number;
  readonly cadenceBand: number;
  /** rpm more for a power higher by CP; some riders answer hard riding with a bigger gear. */
  readonly cadenceAnswer: number;
  /** Multiplies how often they free-wheel. */
  readonly coasting: number;
  /** Pedalling variation as a share of power (Allan deviation of 8 s means). */
  readonly unsteadiness: number;
  /** Left share of power minus one half, when riding easily; fades towards full effort. */
  readonly asymmetry: number;
  readonly heart: Heart;
}

/** First-order heart with slow drift. */
export interface Heart {
  /** bpm */
  readonly rest: number;
  readonly max: number;
  /** Share of the reserve used when riding at CP for long. */
  readonly atCp: number;
  /** Seconds; 55.7 and 59.5 s in moderate and hard exercise (treadmill, doi 10.1186/s12938-015-0112-7). */
  readonly tau: number;
  /** Slow rise, bpm an hour at CP. */
  readonly driftPerHour: number;
}

/**
 * CP by standard, W/kg. Elite men 5.48 ± 0.38 (30 U23 professionals, Spragg et al. 2022), elite women
 * 4.2 ± 0.4 over 60 min (44 professionals, Mateo-March et al. 2022); the others common practice, no source.
 */
const cpPerKg: Readonly<Record<Rider['recordClass'], Readonly<Record<Standard, readonly [number, number]>>>> =
  {
    open: { beginner: [2.4, 0.3], club: [3.4, 0.3], racer: [4.4, 0.35], elite: [5.35, 0.35] },
    women: { beginner: [2.0, 0.25], club: [2.8, 0.28], racer: [3.7, 0.3], elite: [4.5, 0.35] },
  };

export interface RiderWish {
  readonly recordClass?: Rider['recordClass'];
  readonly standard?: Standard;
}

export function drawRider(random: Random, wish: RiderWish = {}): Rider {
  const recordClass = wish.recordClass ?? (random.chance(0.4) ? 'women' : 'open');
  const standard = wish.standard ?? random.pick(standards);
  const men = recordClass === 'open';
  const mass = men ? random.normalWithin(75, 9, 56, 105) : random.normalWithin(61, 7, 45, 88);
  const [mean, spread] = cpPerKg[recordClass][standard];
  const cp = mass * random.normalWithin(mean, spread, mean - 2.2 * spread, mean + 2.2 * spread);
  // W′ 17.8 ± 3.6 kJ at 69 kg in professionals (Spragg et al. 2022): 0.26 kJ/kg; wider for the rest of us.
  const wPrime = mass * 1000 * random.normalWithin(men ? 0.265 : 0.225, 0.05, 0.13, 0.42);
  // Sprint: 5 s power of 15.3 ± 1.8 W/kg in professional women (Mateo-March et al. 2022).
  const sprintPerKg = random.normalWithin(
    men ? 16 : 12.8,
    men ? 2.4 : 1.9,
    men ? 10.5 : 8.8,
    men ? 23 : 18.5,
  );
  const pMax = Math.max(mass * sprintPerKg, cp * 2);
  const cadence = random.normalWithin(standard === 'beginner' ? 80 : 88, 6, 68, 103);
  const rest = random.normalWithin(standard === 'elite' ? 46 : 56, 6, 36, 75);
  return {
    recordClass,
    standard,
    mass,
    ability: { cp, wPrime, pMax },
    tiring: random.normalWithin(0.045, 0.012, 0.02, 0.08),
    torque: torqueLine(pMax, random.normalWithin(122, 6, 106, 138)),
    cadence,
    cadenceBand: random.between(4, 9),
    cadenceAnswer: random.normalWithin(5, 7, -9, 20),
    coasting: random.between(0.5, 2.4),
    unsteadiness: random.normalWithin(standard === 'beginner' ? 0.1 : 0.075, 0.018, 0.04, 0.15),
    asymmetry: random.normalWithin(0, 0.018, -0.05, 0.05),
    heart: {
      rest,
      max: random.normalWithin(186, 9, 162, 206),
      atCp: random.normalWithin(0.86, 0.025, 0.8, 0.92),
      tau: random.normalWithin(52, 8, 34, 72),
      driftPerHour: random.normalWithin(7, 3, 1, 15),
    },
  };
}

/** The same rider on another day: form moves CP by about 2 % (MacInnis et al. 2019), sprint by 3.3 % (Martin 1997). */
export function onTheDay(rider: Rider, random: Random, form = 1): Rider {
  const sprint = form * (1 + random.normalWithin(0, 0.025, -0.06, 0.06));
  const { cp, wPrime, pMax } = rider.ability;
  const ability = {
    cp: cp * form * (1 + random.normalWithin(0, 0.013, -0.035, 0.035)),
    wPrime: wPrime * (1 + random.normalWithin(0, 0.06, -0.15, 0.15)),
    pMax: pMax * sprint,
  };
  const { heart } = rider;
  return {
    ...rider,
    ability,
    torque: { standstill: rider.torque.standstill * sprint, slope: rider.torque.slope * sprint },
    heart: {
      ...heart,
      rest: heart.rest + random.normal(0, 2),
      driftPerHour: Math.max(0, heart.driftPerHour + random.normal(0, 2)),
    },
  };
}
