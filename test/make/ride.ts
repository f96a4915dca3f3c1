import { Gears } from './gears.ts';
import { type Conditions, heartRate, mildConditions } from './heart.ts';
import { Legs } from './legs.ts';
import { type NoiseFamily, pedallingNoise, wander } from './noise.ts';
import type { Random } from './random.ts';
import type { Rider } from './rider.ts';
import { type Load, Road } from './road.ts';
import { cutEdges, fillCadence, joinSeconds } from './shape.ts';
import { powerAt } from './torque.ts';
import { TrainerControl } from './trainer-control.ts';

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
  const noise = pedallingNoise(random.fork('pedalling'), seconds * perSecond, step, 0.15, options.noise);
  const sway = wander(random.fork('cadence'), seconds, 1, 40);
  const draw = random.fork('ride');
  const load = drawLoad(rider, demand, random.fork('load'));
  const stopped = standing(demand, seconds);
  const unsteady = rider.unsteadiness * demand.roughness;

  const power = new Float64Array(seconds * perSecond);
  const wished = new Float64Array(seconds);
  const turning = new Float64Array(seconds);
  const balance = new Float64Array(seconds);
  const road = new Road(load, seconds);
  const legs = new Legs(rider, demand);
  const gears = new Gears(rider, draw);
  const trainer = demand.control === 'set-point' ? new TrainerControl(draw) : null;

  for (let i = 0; i < seconds; i++) {
    const allOut = demand.allOut[i] === 1;
    const asked = stopped[i] === 1 ? 0 : (trainer?.follow(demand.effort[i]!) ?? demand.effort[i]!);
    let wish = legs.wish(i, asked, allOut);
    if (wish > 0) {
      const intensity = wish / rider.ability.cp;
      const turn =
        trainer === null
          ? gears.turn(i, road.v, intensity, demand.grade[i]!, allOut, sway[i]!)
          : rider.cadence + 3 * sway[i]!;
      wish = Math.min(wish, powerAt(rider.torque, turn));
      turning[i] = turn;
    }
    wished[i] = wish;
    const mean = pedal(power, noise, i * perSecond, perSecond, wish, legs.most(allOut), unsteady);
    legs.spend(mean);
    balance[i] = legs.left;
    if (stopped[i] === 1) road.brake(i);
    else road.roll(i, mean, demand.grade[i]!, demand.shelter[i]!);
  }
  joinSeconds(power, wished, perSecond, gears.shifts, draw);
  const cadence = fillCadence(turning, perSecond, step, demand.indoors ? 0.8 : 1.5, random.fork('turning'));
  cutEdges(power, cadence, perSecond, draw);
  const secondPower = means(power, perSecond);
  const conditions = options.conditions ?? mildConditions;
  return {
    rider,
    demand,
    step,
    seconds,
    power,
    cadence,
    secondPower,
    heartRate: heartRate(secondPower, rider.ability.cp, rider.heart, conditions, random.fork('heart')),
    speed: road.speed,
    distance: road.distance,
    altitude: road.altitude,
    temperature: airTemperature(demand, seconds, random.fork('air')),
    balance,
    load,
  };
}

/** Fills one second of power around what the rider wants; gives its mean. Less room to vary near one's limit. */
function pedal(
  power: Float64Array,
  noise: Float64Array,
  from: number,
  perSecond: number,
  wish: number,
  most: number,
  unsteady: number,
): number {
  if (wish === 0) return 0;
  const scale = unsteady * Math.min(1, 0.25 + 1.6 * Math.max(0, 1 - wish / Math.max(1, most)));
  let sum = 0;
  for (let i = from; i < from + perSecond; i++) {
    power[i] = Math.min(most, wish * Math.exp(scale * noise[i]!));
    sum += power[i]!;
  }
  return sum / perSecond;
}

function means(power: Float64Array, perSecond: number): Float64Array {
  const out = new Float64Array(power.length / perSecond);
  for (let i = 0; i < power.length; i++) out[Math.floor(i / perSecond)]! += power[i]! / perSecond;
  return out;
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

function airTemperature(demand: Demand, seconds: number, random: Random): Float64Array {
  const out = new Float64Array(seconds);
  const start = demand.indoors ? random.between(16, 23) : random.between(8, 28);
  const rise = demand.indoors ? random.between(0.5, 4) : random.normal(0, 2);
  for (let i = 0; i < seconds; i++) out[i] = start + rise * (1 - Math.exp(-i / 1500));
  return out;
}
