import type { DeviceFacts, Place, RaceFacts, Recording, RiderFacts } from '../../src/types.ts';
import type { Fault } from './faults/fault.ts';
import { type Conditions, mildConditions } from './heart.ts';
import { drawHistory, type HistoryPlan } from './history.ts';
import { type MeterSpec, read, type Signal } from './meter.ts';
import { type Build, type Cohort, drawMeter, drawPlaces } from './meters.ts';
import { Random } from './random.ts';
import { plainRecorder, type RecorderSpec, record } from './recorder.ts';
import { drawRecorder } from './recorders.ts';
import { type Demand, type RideKind, ride, rideKinds, type Truth } from './ride.ts';
import { drawRider, onTheDay, type Rider, type RiderWish } from './rider.ts';
import { drawDemand } from './rides/index.ts';

export interface SubmissionWish {
  readonly kind?: RideKind;
  /** Minutes of the part that counts; as the kind of ride has it when left out. */
  readonly minutes?: number;
  readonly rider?: RiderWish;
  /** Riders with the same race key ride the same bunch race; the seed when left out. */
  readonly race?: string;
  readonly cohort?: Cohort;
  readonly build?: Build;
  /** How many second recordings (0 to 3). Default 1. */
  readonly seconds?: number;
  /** The second recordings listen to the primary's meter: no second opinion. */
  readonly oneSensor?: boolean;
  /** Where the meters sit, the primary's first. */
  readonly places?: readonly Place[];
  /** Clocks, dropouts and habits of recorders: none to speak of, or everything honest files show. */
  readonly recorders?: 'plain' | 'varied';
  /** Other riders of the same race, who hand in their recordings too. Default 0. */
  readonly others?: number;
  /** Past rides; none when left out. */
  readonly history?: Partial<HistoryPlan>;
  /** Form of the race day over the form that the history led to; 1.025: an honest personal best. */
  readonly form?: number;
  readonly conditions?: Conditions;
  /** Planted in turn. */
  readonly faults?: readonly Planted[];
}

export interface Planted {
  readonly fault: Fault;
  /** In the fault's own measure, which its file states. */
  readonly strength: number;
}

/** Everything that is decided before anyone rides: what a fault may change. */
export interface Draft {
  readonly random: Random;
  readonly rider: Rider;
  /** The rider as they are on the day. */
  readonly today: Rider;
  readonly demand: Demand;
  readonly conditions: Conditions;
  readonly noise: 'normal' | 'heavy';
  readonly meters: readonly MeterSpec[];
  /** One for each recording: its recorder, and which meter it listens to. */
  readonly recordings: readonly { readonly recorder: RecorderSpec; readonly meter: number }[];
  /** Clock time (s) of the first second of the ride. */
  readonly start: number;
  readonly facts: RiderFacts;
  readonly race: RaceFacts;
  /** Other riders of the same race. */
  readonly others: readonly Draft[];
  readonly history: HistoryPlan | null;
  /** The meter that made the history: the primary's, before anything was wrong with it. */
  readonly historyMeter: MeterSpec;
}

export interface Submission {
  readonly primary: Recording;
  readonly seconds: readonly Recording[];
  readonly rider: RiderFacts;
  readonly race: RaceFacts;
  /** Made when first looked at: it is the dear part. */
  readonly history: readonly Recording[];
  /** Primaries of other riders of the race; made when first looked at. */
  readonly others: readonly Recording[];
  readonly truth: { readonly draft: Draft; readonly ride: Truth };
}

/** One submission, drawn from its seed: a new rider, ride, meters and clocks. */
export function drawSubmission(seed: string | number, wish: SubmissionWish = {}): Submission {
  const draft = drawDraft(seed, wish);
  const faults = wish.faults ?? [];
  const planted = faults.reduce(
    (d, { fault, strength }, k) => fault.before?.(d, strength, d.random.fork(`fault ${k}`)) ?? d,
    draft,
  );
  return faults.reduce(
    (s, { fault, strength }, k) => fault.after?.(s, strength, draft.random.fork(`fault ${k} after`)) ?? s,
    realise(planted),
  );
}

export function drawDraft(seed: string | number, wish: SubmissionWish = {}): Draft {
  const random = new Random(seed);
  const build = wish.build ?? 'tuning';
  const cohort = wish.cohort ?? 'within claims';
  const rider = drawRider(random.fork('rider'), wish.rider);
  const today = onTheDay(rider, random.fork('day'), wish.form);
  const kind = wish.kind ?? random.fork('kind').pick(rideKinds);
  const race = new Random(wish.race ?? `${seed} race`);
  const demand = drawDemand(kind, today, random.fork('demand'), race.fork('script'), wish.minutes);
  const count = 1 + (wish.seconds ?? 1);
  const places = wish.places ?? drawPlaces(random.fork('places'), demand.indoors, count);
  const meters = places
    .slice(0, count)
    .map((place, k) => drawMeter(random.fork(`meter ${k}`), place, cohort, build, rider));
  const recorders = meters.map((_, k) =>
    wish.recorders === 'varied'
      ? drawRecorder(random.fork(`recorder ${k}`), k, demand)
      : plain(random.fork(`recorder ${k}`), k),
  );
  // Races start on a whole minute of an invented season.
  const start = 1_740_000_000 + 60 * race.fork('date').integer(0, 525_000) - demand.window[0];
  return {
    random,
    rider,
    today,
    demand,
    conditions: wish.conditions ?? mildConditions,
    noise: build === 'tuning' ? 'normal' : 'heavy',
    meters,
    recordings: recorders.map((recorder, meter) => ({ recorder, meter: wish.oneSensor ? 0 : meter })),
    start,
    facts: {
      massKg: Math.round(rider.mass * 10) / 10,
      recordClass: rider.recordClass,
      devices: meters.map(declared),
    },
    race: {
      start: iso(start + demand.window[0]),
      finish: iso(start + demand.window[1]),
      kind: demand.raceKind,
      required: [],
    },
    others: Array.from({ length: wish.others ?? 0 }, (_, k) =>
      drawDraft(`${seed} other ${k}`, {
        kind,
        race: race.key,
        seconds: 0,
        build,
        cohort,
        ...(wish.minutes === undefined ? {} : { minutes: wish.minutes }),
        ...(wish.recorders === undefined ? {} : { recorders: wish.recorders }),
      }),
    ),
    history: wish.history === undefined ? null : { ...usualHistory, ...wish.history },
    historyMeter: meters[0]!,
  };
}

const usualHistory: HistoryPlan = { rides: 30, days: 180, firstForm: 0.97, hard: 0.3 };

/**
 * Lets the draft happen.
 *
 * @param truth the ride, where it is another's than the draft leads to
 * @param like a submission of nearly the same draft: what nothing has changed in is taken from it
 */
export function realise(draft: Draft, truth = rideOf(draft), like?: Submission): Submission {
  const { random, start, recordings } = draft;
  const signals = draft.meters.map((): Signal | null => null);
  const signalOf = (meter: number) => {
    signals[meter] ??= read(truth, draft.meters[meter]!, random.fork(`signal ${meter}`));
    return signals[meter];
  };
  const [primary, ...seconds] = recordings.map(
    ({ recorder, meter }, k) =>
      sameRecording(draft, truth, k, like) ??
      record(truth, signalOf(meter), recorder, start, random.fork(`recording ${k}`)),
  );
  let history: readonly Recording[] | null = null;
  return {
    primary: primary!,
    seconds,
    rider: draft.facts,
    race: draft.race,
    get history() {
      history ??= samePast(draft, like) ?? pastOf(draft);
      return history;
    },
    get others() {
      return othersOf(draft);
    },
    truth: { draft, ride: truth },
  };
}

/** The recording of another submission, where the same recorder heard the same meter on the same ride. */
function sameRecording(draft: Draft, truth: Truth, index: number, like?: Submission): Recording | null {
  if (like === undefined || like.truth.ride !== truth) return null;
  const known = like.truth.draft;
  const [own, other] = [draft.recordings[index]!, known.recordings[index]];
  const same =
    other?.recorder === own.recorder &&
    other.meter === own.meter &&
    known.random === draft.random &&
    known.start === draft.start &&
    alike(known.meters[own.meter]!, draft.meters[own.meter]!);
  return same ? [like.primary, ...like.seconds][index]! : null;
}

function alike(a: MeterSpec, b: MeterSpec): boolean {
  return a === b || (Object.keys(b) as (keyof MeterSpec)[]).every((field) => Object.is(a[field], b[field]));
}

/** The past of another submission, where the same rider rode the same past with the same meter: it is dear. */
function samePast(draft: Draft, like?: Submission): readonly Recording[] | null {
  if (like === undefined) return null;
  const known = like.truth.draft;
  const same =
    known.random === draft.random &&
    known.start === draft.start &&
    known.rider === draft.rider &&
    known.history === draft.history &&
    known.historyMeter === draft.historyMeter &&
    known.recordings[0]!.recorder === draft.recordings[0]!.recorder;
  return same ? like.history : null;
}

function pastOf({ rider, historyMeter, recordings, history, start, random }: Draft): readonly Recording[] {
  if (history === null) return [];
  return drawHistory(rider, historyMeter, recordings[0]!.recorder, history, start, random.fork('history'));
}

/** What the others of a draft recorded: the same for all that is made of one draft. */
const othersOf = oncePerDraft((draft) => draft.others.map((other) => realise(other).primary));

/** Something that follows from a draft alone, worked out when first asked for. */
export function oncePerDraft<T>(make: (draft: Draft) => T): (draft: Draft) => T {
  const known = new WeakMap<Draft, { readonly made: T }>();
  return (draft) => {
    const { made } = known.get(draft) ?? { made: make(draft) };
    known.set(draft, { made });
    return made;
  };
}

interface Ridden extends Pick<Draft, 'today' | 'random' | 'noise' | 'conditions'> {
  readonly truth: Truth;
}
const ridden = new WeakMap<Demand, Ridden[]>();

/** The ride that the draft leads to; drafts that differ only in meters, recorders and facts share it. */
export function rideOf({ today, demand, random, noise, conditions }: Draft): Truth {
  const rides = ridden.get(demand) ?? [];
  ridden.set(demand, rides);
  const known = rides.find(
    (one) =>
      one.today === today && one.random === random && one.noise === noise && one.conditions === conditions,
  );
  if (known !== undefined) return known.truth;
  const truth = ride(today, demand, random.fork('ride'), { noise, conditions });
  rides.push({ today, random, noise, conditions, truth });
  return truth;
}

/** What each recording is called in the rider's facts. */
export function roleName(index: number): string {
  return index === 0 ? 'primary' : index === 1 ? 'second' : `second ${index}`;
}

function declared(meter: MeterSpec, index: number): DeviceFacts {
  const { place, sides, tolerancePercent } = meter;
  return { name: roleName(index), place, sides, tolerancePercent };
}

/** A well-behaved recorder whose clock is a second or two off. */
function plain(random: Random, index: number): RecorderSpec {
  return {
    ...plainRecorder,
    name: index === 0 ? 'primary.fit' : index === 1 ? 'second.fit' : `second-${index}.fit`,
    device: {
      maker: 'development',
      product: random.pick(['Harrow 2', 'Lodestone', 'Quarry', 'Tern 40', 'Millrace']),
      serial: String(random.integer(100_000, 999_999)),
    },
    offset: index === 0 ? 0 : random.normalWithin(0, 1.2, -3, 3),
    repeats: random.between(0, 0.02),
    heartLag: random.between(0.5, 3),
  };
}

/** ISO 8601, UTC. */
export function iso(clock: number): string {
  return new Date(clock * 1000).toISOString().replace('.000Z', 'Z');
}
