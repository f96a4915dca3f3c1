import type { Place } from '../../src/types.ts';
import type { Kernel } from './meter/smooth.ts';
import { type CadenceSpec, type MeterSpec, perfectMeter, workingCadence } from './meter.ts';
import type { Random } from './random.ts';
import type { Rider } from './rider.ts';

/** Meters that keep what their makers claim, or meters as they are found in the field. */
export type Cohort = 'within claims' | 'as found';

/**
 * How errors are built. A corpus that limits were tuned on must not be the one that reports how well they
 * do: the second is built of other noise, kernels and wander.
 */
export type Build = 'tuning' | 'reporting';

export function drawMeter(
  random: Random,
  place: Place,
  cohort: Cohort,
  build: Build,
  rider: Rider,
): MeterSpec {
  const trainer = place === 'trainer';
  const wheel = trainer || place === 'hub';
  const oneSided = !wheel && random.chance(0.3);
  const tolerancePercent = random.pick(trainer ? [1, 1, 2, 2.5] : [1, 1, 1.5, 2]);
  const errors =
    cohort === 'within claims' ? claimedErrors(random, tolerancePercent) : fieldErrors(random, rider);
  return {
    ...perfectMeter,
    serial: String(random.fork('serial').integer(2, 1e6)),
    place,
    sides: oneSided ? 1 : 2,
    tolerancePercent,
    drivetrainLoss: random.normalWithin(0.021, 0.015, 0.002, 0.06),
    // Most are good, some are not: two meters of one ride correlate with 0.92 to 0.985 at 1 Hz. A single leg
    // is less even than two.
    noise: (oneSided ? 0.03 : 0.018) + 0.11 * random.uniform() * random.uniform(),
    jitter: random.between(0.2, 1.1),
    every: random.pick(place === 'hub' ? [0.5, 1] : [0.25, 0.5, 1, 1]),
    ripple: drawRipple(random, wheel),
    lag: trainer ? random.between(0.2, 1.6) : random.between(0, 0.9),
    kernel: drawKernel(random, place, build),
    wander: {
      spread: random.between(0.001, 0.004),
      tau: random.between(250, 900),
      ramps: build === 'reporting',
    },
    tail: trainer && random.chance(0.4) ? random.between(0.3, 1.2) : 0,
    powerPivot: rider.ability.cp * 0.85,
    cadence: drawCadence(random, place),
    stepWatts: random.fork('coarse').chance(0.03) ? random.fork('step').integer(2, 4) : 0,
    ...errors,
    sprint: {
      error: errors.sprintError,
      from: rider.ability.cp * 1.5,
      full: rider.ability.cp * 2.4,
    },
  };
}

type Errors = Pick<
  MeterSpec,
  'gain' | 'temperature' | 'powerSlope' | 'cadenceSlope' | 'torqueOffset' | 'overshoot'
> & { readonly sprintError: number };

/** Everything together stays about inside the claim of ± a percent. */
function claimedErrors(random: Random, a: number): Errors {
  const claim = a / 100;
  const perDegree = random.between(0.004, 0.0065);
  const shift = random.between(-0.35, 0.35) * claim;
  return {
    gain: 1 + random.between(-0.75, 0.75) * claim,
    temperature: { perDegree, warming: shift / perDegree, tau: random.between(500, 1300) },
    powerSlope: random.normal(0, 0.1) * claim,
    cadenceSlope: random.normal(0, 0.08) * claim,
    torqueOffset: random.normal(0, 0.1),
    overshoot: 0,
    sprintError: random.normal(0, 0.5) * claim,
  };
}

/**
 * Published scatter with heavy tails. Gain -0.9 ± 3.2 % (54 meters, Maier et al. 2017); reading moves
 * 0.40–0.65 %/°C (Gardner et al. 2004); error growing by 0.8 % per 10 rpm (Pallarés & Lillo-Bevia 2018);
 * 30 s sprints of two meters scatter by 39 W (Nimmerichter et al. 2017): 4 % a meter; how many degrees a
 * meter moves away from its zero in a ride is common practice, no source.
 */
function fieldErrors(random: Random, rider: Rider): Errors {
  const perDegree = random.between(0.004, 0.0065);
  return {
    gain: 1 - 0.009 + 0.032 * random.heavy(6),
    temperature: { perDegree, warming: 2 * random.heavy(5), tau: random.between(500, 1500) },
    powerSlope: 0.004 * random.heavy(5),
    cadenceSlope: 0.004 * random.heavy(5),
    torqueOffset: 0.25 * random.heavy(5),
    overshoot: Math.max(-0.05, Math.min(0.08, 0.015 * random.heavy(5))),
    sprintError: (0.04 * random.heavy(5) * 600) / Math.max(500, rider.ability.cp * 2),
  };
}

function drawKernel(random: Random, place: Place, build: Build): Kernel {
  const shape = build === 'tuning' ? 'box' : random.pick(['triangle', 'exponential'] as const);
  if (place === 'crank' || place === 'pedal') return { shape, seconds: random.between(0.7, 1.1) };
  if (place === 'hub') return { shape, seconds: random.between(1, 1.5) };
  return { shape, seconds: random.pick([1, 1, 1.25, 1.5, 2, 3]) };
}

/** Meters at the cranks mostly wait for whole turns; those at the wheel do not know the cranks. */
function drawRipple(random: Random, wheel: boolean): MeterSpec['ripple'] {
  const window = random.pick([0.5, 1, 1, 1]);
  const depth = random.between(0.15, 0.6);
  const phase = random.uniform();
  return random.chance(wheel ? 0.8 : 0.25) ? { window, depth, phase } : null;
}

function drawCadence(random: Random, place: Place): CadenceSpec {
  return {
    ...workingCadence,
    noise: place === 'trainer' ? random.between(0.2, 1) : random.between(0.2, 0.7),
    width: place === 'trainer' ? random.between(1.5, 3) : random.between(0.8, 1.6),
    hold: random.between(0.8, 2.5),
    sticky: random.between(0, 0.25),
  };
}

/** Which kinds of meter a rider brings: the one that drives the race, and others on the same bicycle. */
export function drawPlaces(random: Random, indoors: boolean, count: number): Place[] {
  const own: Place[] = indoors
    ? [random.chance(0.8) ? 'trainer' : 'pedal']
    : [random.pick(['crank', 'pedal', 'hub'] as const)];
  const others: Place[] = (['pedal', 'crank', 'hub', 'trainer'] as const).filter(
    (place) => place !== own[0] && (indoors ? place !== 'hub' : place !== 'trainer'),
  );
  while (own.length < count && others.length > 0) {
    own.push(others.splice(random.integer(0, others.length - 1), 1)[0]!);
  }
  return own;
}
