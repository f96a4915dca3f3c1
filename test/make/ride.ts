import { type Ability, ceiling, nextBalance, tired } from './ability.ts';
import { Gears } from './gears.ts';
import { type Conditions, heartRate, mildConditions } from './heart.ts';
import { type NoiseFamily, pedallingNoise, wander } from './noise.ts';
import type { Random } from './random.ts';
import type { Rider } from './rider.ts';
import { type Load, nextSpeed } from './road.ts';
import { powerAt } from './torque.ts';

export const rideKinds = [
  'bunch race',
  'time trial',
  'long climb',
  'set-point session',
  'outdoor ride',
  'group ride and finale',
  'short race',
  'long ride',
] as const;
export type RideKind = (typeof rideKinds)[number];

/** What the ride asks of its rider, second by second. */
export interface Demand {
  readonly kind: RideKind;
  readonly raceKind: 'race' | 'time trial' | 'workout';
  readonly indoors: boolean;
  /** The trainer holds the power ("set-point") or follows the road ("free"). */
  readonly control: 'free' | 'set-point';
  /** The part that counts, in seconds from the start of the ride. */
  readonly window: readonly [from: number, to: number];
  /** Crank power wished for, W; 0: coasting. */
  readonly effort: Float64Array;
  /** 1 where the rider gives all there is. */
  readonly allOut: Uint8Array;
  /** Rise over run. */
  readonly grade: Float64Array;
  /** Share of the drag that is felt: 1 alone, 0.6 deep in a bunch. */
  readonly shelter: Float64Array;
  /** Standing still, half-open stretches of seconds. */
  readonly stops: readonly (readonly [from: number, to: number])[];
  /** Stretch in which nobody but the rider sets the pace and something is kept for the rest of the window. */
  readonly selfPaced: readonly [from: number, to: number] | null;
  /** Multiplies the rider's own unsteadiness: below 1 on a trainer, above 1 in traffic. */
  readonly roughness: number;
}

/** What happened, known exactly. */
export interface Truth {
  readonly rider: Rider;
  readonly demand: Demand;
  /** Seconds between the samples of `power` and `cadence`. */
  readonly step: number;
  readonly seconds: number;
  /** At the cranks, both legs, W. */
  readonly power: Float64Array;
  /** rpm; 0 while coasting. */
  readonly cadence: Float64Array;
  /** The rest once a second. Mean crank power of the second, W. */
  readonly secondPower: Float64Array;
  readonly heartRate: Float64Array;
  readonly speed: Float64Array;
  readonly distance: Float64Array;
  readonly altitude: Float64Array;
  /** Air at the bicycle, °C. */
  readonly temperature: Float64Array;
  /** Work capacity left, J. */
  readonly balance: Float64Array;
  readonly load: Load;
}

export interface RideOptions {
  /** Seconds between samples: 0.25 where meters are compared, 1 where a history is filled. */
  readonly step?: number;
  readonly noise?: NoiseFamily;
  readonly conditions?: Conditions;
}

/** Lets the rider ride. Nobody exceeds what torque line, W′ balance and tiredness leave. */
export function ride(rider: Rider, demand: Demand, random: Random, options: RideOptions = {}): Truth {
  const step = options.step ?? 0.25;
  const perSecond = Math.round(1 / step);
  const seconds = demand.effort.length;
  const fine = seconds * perSecond;
  const noise = pedallingNoise(random.fork('pedalling'), fine, step, 0.15, options.noise ?? 'normal');
  const sway = wander(random.fork('cadence'), seconds, 1, 40);
  const draw = random.fork('ride');
  const load = drawLoad(rider, demand, random.fork('load'));

  const power = new Float64Array(fine);
  const cadence = new Float64Array(fine);
  const secondPower = new Float64Array(seconds);
  const speed = new Float64Array(seconds);
  const distance = new Float64Array(seconds);
  const altitude = new Float64Array(seconds);
  const balance = new Float64Array(seconds);
  const wished = new Float64Array(seconds);
  const turning = new Float64Array(seconds);
  const stopped = standing(demand, seconds);
  const paced = demand.selfPaced;
  const finish = demand.window[1];

  const unsteady = rider.unsteadiness * demand.roughness;
  const gears = new Gears(rider, draw);
  let ability: Ability = rider.ability;
  let left = ability.wPrime;
  let stress = 0;
  let cracked = false;
  let v = 6;
  let metres = 0;
  let height = 60;
  let before = 0;

  for (let i = 0; i < seconds; i++) {
    if (i % 30 === 0) ability = tired(rider.ability, stress, rider.tiring);
    const grade = demand.grade[i]!;
    const allOut = demand.allOut[i] === 1;
    const asked = stopped[i] === 1 ? 0 : demand.effort[i]!;
    let most = ceiling(ability, left);
    if (left < 0.04 * ability.wPrime) cracked = true;
    else if (left > 0.2 * ability.wPrime) cracked = false;
    if (cracked) most = Math.min(most, ability.cp * 0.94);
    let wish = allOut ? most : Math.min(asked, most * 0.97);
    if (asked === 0 && !allOut) wish = 0;
    if (paced !== null && !allOut && i >= paced[0] && i < finish) {
      wish = Math.min(wish, i < paced[1] ? held(ability, left) : spent(ability, left, finish - i));
    }
    // Power rises by some hundred watts a second at most, and falls at once.
    if (wish > before) wish = Math.min(wish, before + 90 + 0.22 * rider.ability.pMax);

    const turn =
      wish === 0
        ? 0
        : demand.control === 'set-point'
          ? rider.cadence + 3 * sway[i]!
          : gears.turn(i, v, wish / ability.cp, grade, allOut, sway[i]!);
    if (turn > 0) wish = Math.min(wish, powerAt(rider.torque, turn));

    // Less room to vary near one's limit.
    const scale = unsteady * Math.min(1, 0.25 + 1.6 * Math.max(0, 1 - wish / Math.max(1, most)));
    let mean = 0;
    for (let q = 0; q < perSecond; q++) {
      const at = i * perSecond + q;
      const value = wish === 0 ? 0 : Math.min(most, wish * Math.exp(scale * noise[at]!));
      power[at] = value;
      mean += value;
    }
    mean /= perSecond;
    wished[i] = wish;
    turning[i] = turn;
    secondPower[i] = mean;
    left = nextBalance(ability, left, mean, 1);
    balance[i] = left;
    stress += (mean * mean) / (rider.ability.cp * rider.ability.cp) / 60;
    before = wish === 0 ? 0 : wish;

    v = stopped[i] === 1 ? Math.max(0, v - 3) : nextSpeed(load, v, mean, grade, demand.shelter[i]!, 1);
    metres += v;
    height += v * grade;
    speed[i] = v;
    distance[i] = metres;
    altitude[i] = height;
  }
  shape(power, wished, perSecond, gears.shifts, draw);
  fillCadence(cadence, turning, perSecond, step, demand.indoors ? 0.8 : 1.5, random.fork('turning'));
  cutEdges(power, cadence, perSecond, draw);
  for (let i = 0; i < seconds; i++) {
    let sum = 0;
    for (let q = 0; q < perSecond; q++) sum += power[i * perSecond + q]!;
    secondPower[i] = sum / perSecond;
  }
  return {
    rider,
    demand,
    step,
    seconds,
    power,
    cadence,
    secondPower,
    heartRate: heartRate(
      secondPower,
      rider.ability.cp,
      rider.heart,
      options.conditions ?? mildConditions,
      random.fork('heart'),
    ),
    speed,
    distance,
    altitude,
    temperature: airTemperature(demand, seconds, random.fork('air')),
    balance,
    load,
  };
}

/** What a rider allows themselves who wants something left for the finish. */
function held({ cp, wPrime }: Ability, left: number): number {
  return cp * (0.91 + (0.5 * left) / wPrime);
}

/** What is left, short of a last kick, spread over the seconds to the line. */
function spent({ cp, wPrime }: Ability, left: number, seconds: number): number {
  return cp + (left - 0.15 * wPrime) / (seconds + 5);
}

function drawLoad(rider: Rider, demand: Demand, random: Random): Load {
  return {
    mass: rider.mass + 8,
    cdA: demand.raceKind === 'time trial' ? random.between(0.22, 0.28) : random.between(0.28, 0.36),
    crr: demand.indoors ? 0.004 : random.between(0.0035, 0.006),
    density: demand.indoors ? 1.2 : random.between(1.13, 1.25),
  };
}

function standing(demand: Demand, seconds: number): Uint8Array {
  const flags = new Uint8Array(seconds);
  for (const [from, to] of demand.stops) flags.fill(1, from, Math.min(to, seconds));
  return flags;
}

/** Joins the seconds smoothly, and lets power sag while the chain changes sprocket. */
function shape(
  power: Float64Array,
  wished: Float64Array,
  perSecond: number,
  shifts: readonly number[],
  random: Random,
): void {
  if (perSecond === 1) return;
  for (let i = 1; i + 1 < wished.length; i++) {
    const [last, here, next] = [wished[i - 1]!, wished[i]!, wished[i + 1]!];
    if (last === 0 || here === 0 || next === 0) continue;
    for (let q = 0; q < perSecond; q++) {
      const phase = (q + 0.5) / perSecond - 0.5;
      const towards = phase < 0 ? last : next;
      power[i * perSecond + q]! *= 1 + (Math.abs(phase) * (towards - here)) / here;
    }
  }
  const scale = (from: number, count: number, factor: number) => {
    for (let i = from; i < Math.min(power.length, from + count); i++) power[i]! *= factor;
  };
  for (const second of shifts) {
    scale(
      second * perSecond + random.integer(0, perSecond - 1),
      random.integer(2, 3),
      random.between(0.55, 0.9),
    );
  }
  // A drink, a hand off the bar, a change of seat.
  for (let at = random.exponential(slipEvery); at < wished.length; at += random.exponential(slipEvery)) {
    scale(Math.floor(at * perSecond), random.integer(3, 8), random.between(0.55, 0.9));
  }
}

/** Seconds between moments of uneven pedalling. */
const slipEvery = 80;

/** Cadence between the seconds, with the unevenness of legs. */
function fillCadence(
  cadence: Float64Array,
  turning: Float64Array,
  perSecond: number,
  step: number,
  unevenness: number,
  random: Random,
): void {
  const keep = Math.exp(-step / 1.5);
  const gain = unevenness * Math.sqrt(1 - keep * keep);
  let uneven = 0;
  for (let i = 0; i < turning.length; i++) {
    const here = turning[i]!;
    const next = turning[i + 1] ?? here;
    const slope = here > 0 && next > 0 ? next - here : 0;
    for (let q = 0; q < perSecond; q++) {
      uneven = uneven * keep + gain * random.normal();
      cadence[i * perSecond + q] = here === 0 ? 0 : Math.max(20, here + (slope * q) / perSecond + uneven);
    }
  }
}

/** Pedalling starts and stops inside a second, not on its edge. */
function cutEdges(power: Float64Array, cadence: Float64Array, perSecond: number, random: Random): void {
  if (perSecond === 1) return;
  for (let edge = perSecond; edge < power.length; edge += perSecond) {
    const stops = power[edge - 1]! > 0 && power[edge] === 0;
    const starts = power[edge - 1] === 0 && power[edge]! > 0;
    if (!stops && !starts) continue;
    const count = random.integer(0, perSecond - 1);
    const from = stops ? edge - count : edge;
    power.fill(0, from, from + count);
    cadence.fill(0, from, from + count);
  }
}

function airTemperature(demand: Demand, seconds: number, random: Random): Float64Array {
  const out = new Float64Array(seconds);
  const start = demand.indoors ? random.between(16, 23) : random.between(8, 28);
  const rise = demand.indoors ? random.between(0.5, 4) : random.normal(0, 2);
  for (let i = 0; i < seconds; i++) out[i] = start + rise * (1 - Math.exp(-i / 1500));
  return out;
}
