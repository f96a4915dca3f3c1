import type { Channel, DeviceFacts, Place } from '../../src/types.ts';
import type { MeterSpec } from './meter.ts';
import type { Random } from './random.ts';
import type { RecorderSpec } from './recorder.ts';
import type { RideKind } from './ride.ts';
import type { Draft, SubmissionWish } from './submission.ts';

/**
 * One sort of honest submission: what sets it apart is certain, everything else is left to chance. Those
 * that something unusual happens to are as many as those of an ordinary ride, so that a corpus of all kinds
 * in equal parts is harder than a real field of riders.
 */
export interface HonestKind {
  readonly name: string;
  readonly wish?: (random: Random) => Partial<SubmissionWish>;
  /** Of a draft that is drawn already. */
  readonly change?: (draft: Draft, random: Random) => Draft;
}

const ride = (name: string, kind: RideKind, more: Partial<SubmissionWish> = {}): HonestKind => ({
  name,
  wish: () => ({ kind, ...more }),
});

const rides: readonly HonestKind[] = [
  ride('bunch race', 'bunch race'),
  ride('steady time trial', 'time trial'),
  ride('long climb', 'long climb'),
  ride('structured set-point session', 'set-point session'),
  ride('outdoors with coasting', 'outdoor ride'),
  ride('easy, then a hard finale', 'group ride and finale'),
  ride('12-minute race', 'short race', { minutes: 12 }),
  ride('3 h ride', 'long ride'),
];

/** Two meters, nothing said of the ride. */
const pair = { seconds: 1 } as const;
const onTrainer = { ...pair, places: ['trainer', 'pedal'] satisfies Place[] };

const meters: readonly HonestKind[] = [
  {
    name: 'one-sided second, legs 2–4 % apart',
    wish: (random) => ({ ...onTrainer, kind: random.pick(indoorRaces) }),
    change(draft, random) {
      // Left share one half ± 1 to 2 %: the doubled leg reads 2 to 4 % off (Osmani 2022: 50.6/49.4 on average).
      const asymmetry = random.between(0.01, 0.02) * (random.chance(0.5) ? 1 : -1);
      const changed = withMeter(draft, 1, { sides: 1 });
      return { ...changed, rider: { ...draft.rider, asymmetry }, today: { ...draft.today, asymmetry } };
    },
  },
  {
    name: 'shift while warming up, inside the claim',
    wish: (random) => ({ ...onTrainer, kind: random.pick(indoorRaces) }),
    // 0.40–0.65 %/°C (Gardner et al. 2004), as far as the claim of ± a percent has room for.
    change(draft, random) {
      const perDegree = random.between(0.004, 0.0065);
      const room = (0.6 * draft.meters[0]!.tolerancePercent) / 100;
      const warming = (random.chance(0.5) ? room : -room) / perDegree;
      const temperature = { perDegree, warming, tau: random.between(400, 1100) };
      return withMeter(draft, 0, { temperature });
    },
  },
  {
    name: 'lag of 1 to 2 s',
    wish: () => pair,
    change: (draft, random) => withMeter(draft, random.integer(0, 1), { lag: random.between(1, 2) }),
  },
  {
    name: 'averaging of 2 to 3 s',
    wish: () => pair,
    change: (draft, random) =>
      withMeter(draft, random.integer(0, 1), {
        kernel: { ...draft.meters[0]!.kernel, seconds: random.between(2, 3) },
      }),
  },
  {
    name: 'coarse steps of 2 to 5 W',
    change: (draft, random) => withMeter(draft, 0, { stepWatts: random.integer(2, 5) }),
  },
  {
    name: 'one sensor on two recorders',
    wish: () => pair,
    change: (draft) => listening(draft, draft.meters[0]!),
  },
  {
    name: 'trainer controlled from the pedals',
    wish: () => onTrainer,
    // The race's file holds what the pedals say: both recorders listen to them.
    change: (draft) => listening(draft, draft.meters[1]!),
  },
  { name: 'no second recording', wish: () => ({ seconds: 0 }) },
  {
    name: 'three meters',
    wish: (random) => ({
      seconds: 2,
      ...(random.chance(0.7)
        ? { kind: random.pick(indoorRaces), places: ['trainer', 'pedal', 'crank'] satisfies Place[] }
        : { kind: 'outdoor ride', places: ['crank', 'pedal', 'hub'] satisfies Place[] }),
    }),
  },
];

const recorders: readonly HonestKind[] = [
  ...(['missing', 'zero', 'held'] as const).map(
    (as): HonestKind => ({
      name: `dropouts, ${as === 'missing' ? 'left empty' : as === 'zero' ? 'written as zero' : 'held'}`,
      change: (draft, random) =>
        withRecorder(draft, random.chance(0.6) ? 0 : 1, {
          dropouts: Array.from({ length: random.integer(1, 6) }, () => {
            const from = random.integer(30, draft.demand.effort.length - 60);
            return { from, to: from + random.integer(1, 5), as };
          }),
        }),
    }),
  ),
  {
    name: 'second’s clock minutes off',
    wish: () => pair,
    change: (draft, random) =>
      withRecorder(draft, 1, { offset: random.normal(0, 2) + random.integer(-40, 40) * 60 }),
  },
  {
    name: 'second’s clock quarter or whole hours off',
    wish: () => pair,
    change: (draft, random) =>
      withRecorder(draft, 1, {
        offset: random.normal(0, 2) + 900 * random.pick([-22, -8, -4, -1, 1, 3, 4, 8, 22, 39, 44]),
      }),
  },
  {
    name: 'clocks 40–60 ppm apart',
    wish: () => pair,
    change: (draft, random) =>
      withRecorder(draft, 1, { driftPpm: random.between(40, 60) * (random.chance(0.5) ? 1 : -1) }),
  },
  {
    name: 'second’s clock skips pauses',
    wish: (random) => ({ ...pair, kind: random.pick(['outdoor ride', 'outdoor ride', 'long ride']) }),
    change: (draft) => withRecorder(draft, 1, { pauses: 'clock stops' }),
  },
  {
    name: 'recorder that leaves seconds out',
    change: (draft, random) =>
      withRecorder(draft, random.chance(0.5) ? 0 : 1, { smart: random.integer(3, 8) }),
  },
  {
    name: 'doubled seconds',
    change: (draft, random) => withRecorder(draft, 0, { doubled: random.between(0.005, 0.035) }),
  },
  { name: 'no cadence', change: (draft) => without(draft, 'cadence') },
  { name: 'no heart rate', change: (draft) => without(draft, 'heartRate') },
  {
    name: 'failing strap',
    change: (draft, random) =>
      withRecorder(draft, 0, {
        strap: Array.from({ length: random.integer(1, 2) }, () => {
          const from = random.integer(0, draft.demand.effort.length - 300);
          const to = from + random.integer(40, Math.min(500, draft.demand.effort.length >> 2));
          return { from, to, as: random.pick(['missing', 'stuck', 'cadence', 'low'] as const) };
        }),
      }),
  },
];

const hard: readonly RideKind[] = ['short race', 'time trial', 'long climb', 'bunch race'];

const riders: readonly HonestKind[] = [
  { name: 'beginner', wish: () => ({ rider: { standard: 'beginner' } }) },
  { name: 'elite woman', wish: () => ({ rider: { standard: 'elite', recordClass: 'women' } }) },
  { name: 'elite man', wish: () => ({ rider: { standard: 'elite', recordClass: 'open' } }) },
  {
    name: 'personal best of 2–3 %',
    wish: (random) => ({
      kind: random.pick(hard),
      form: random.between(1.02, 1.03),
      history: { ...shortHistory(random) },
    }),
  },
  {
    name: 'strong finish',
    wish: (random) => ({ ...pair, kind: random.pick(['time trial', 'short race', 'long climb'] as const) }),
    // A last third 4 to 9 % harder than before, on every meter and in the heart.
    change(draft, random) {
      const [from, to] = draft.demand.window;
      const late = Math.round(to - (to - from) / 3);
      const [low, high] = [random.between(0.94, 0.97), random.between(1.01, 1.03)];
      const effort = draft.demand.effort.map((watts, i) =>
        i < from || i >= to ? watts : watts * (i < late ? low : high),
      );
      return { ...draft, demand: { ...draft.demand, effort } };
    },
  },
  {
    name: 'fan switched on',
    wish: (random) => ({
      kind: random.pick(['time trial', 'long climb', 'bunch race'] as const),
      conditions: { heat: random.between(1.2, 2.2), fanFrom: random.integer(900, 2400) },
    }),
  },
  {
    name: 'hot, still room',
    wish: (random) => ({
      kind: random.pick(['time trial', 'long climb', 'bunch race'] as const),
      conditions: { heat: random.between(2, 3), fanFrom: null },
    }),
  },
  {
    name: 'incomplete history',
    wish: (random) => ({
      kind: random.pick(hard),
      history: { rides: random.integer(3, 7), days: 120, hard: random.between(0, 0.4) },
    }),
  },
  { name: 'among others of the same race', wish: () => ({ kind: 'bunch race', others: 3 }) },
  { name: 'newcomer without a history', wish: (random) => ({ kind: random.pick(hard) }) },
  {
    name: 'history from another meter',
    wish: (random) => ({ kind: random.pick(hard), seconds: 1, history: shortHistory(random) }),
    change: (draft) => ({ ...draft, historyMeter: draft.meters[1]! }),
  },
  {
    name: 'history of the same meter, still becoming stronger',
    wish: (random) => ({
      kind: random.pick(hard),
      history: { ...shortHistory(random), firstForm: random.between(0.9, 0.96) },
    }),
  },
];

/** Every honest kind, each named. */
export const honestKinds: readonly HonestKind[] = [...rides, ...meters, ...recorders, ...riders];

const indoorRaces: readonly RideKind[] = [
  'bunch race',
  'bunch race',
  'time trial',
  'short race',
  'long climb',
];

/** What ordinary submissions are made of: mostly races of an hour, now and then something longer. */
const usualRides: readonly RideKind[] = [
  'bunch race',
  'bunch race',
  'bunch race',
  'short race',
  'short race',
  'time trial',
  'time trial',
  'long climb',
  'set-point session',
  'outdoor ride',
  'group ride and finale',
];

function shortHistory(random: Random) {
  return { rides: random.integer(12, 26), days: 150, hard: random.between(0.2, 0.5), firstForm: 0.97 };
}

/** The wish of an honest submission of this kind: what the kind leaves open is drawn here. */
export function honestWish(kind: HonestKind, random: Random): SubmissionWish {
  return {
    kind: random.pick(usualRides),
    recorders: 'varied',
    seconds: random.chance(0.15) ? 0 : random.chance(0.1) ? 2 : 1,
    ...(random.chance(0.1) && kind.name !== 'newcomer without a history'
      ? { history: shortHistory(random.fork('history')) }
      : {}),
    ...kind.wish?.(random.fork('kind')),
  };
}

/** The draft with one meter changed, and declared as it is. */
export function withMeter(draft: Draft, index: number, change: Partial<MeterSpec>): Draft {
  const at = Math.min(index, draft.meters.length - 1);
  const meters = draft.meters.map((meter, k) => (k === at ? { ...meter, ...change } : meter));
  return declaring({ ...draft, meters, historyMeter: at === 0 ? meters[0]! : draft.historyMeter });
}

export function withRecorder(draft: Draft, index: number, change: Partial<RecorderSpec>): Draft {
  const at = Math.min(index, draft.recordings.length - 1);
  const recordings = draft.recordings.map((one, k) =>
    k === at ? { ...one, recorder: { ...one.recorder, ...change } } : one,
  );
  return { ...draft, recordings };
}

/** Every recorder listens to one meter. */
function listening(draft: Draft, meter: MeterSpec): Draft {
  const recordings = draft.recordings.map(({ recorder }) => ({ recorder, meter: 0 }));
  return declaring({ ...draft, meters: draft.meters.map(() => meter), recordings, historyMeter: meter });
}

function declaring(draft: Draft): Draft {
  const devices = draft.recordings.map(({ meter }, k): DeviceFacts => {
    const { place, sides, tolerancePercent } = draft.meters[meter]!;
    return { name: draft.facts.devices![k]!.name, place, sides, tolerancePercent };
  });
  return { ...draft, facts: { ...draft.facts, devices } };
}

function without(draft: Draft, channel: Channel): Draft {
  const { channels } = draft.recordings[0]!.recorder;
  return withRecorder(draft, 0, { channels: channels.filter((one) => one !== channel) });
}
