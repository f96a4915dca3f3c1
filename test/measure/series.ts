import {
  type Channel,
  type Columns,
  type RaceFacts,
  type Recording,
  SecondState,
  type Series,
  type Stretch,
  type Subjects,
} from '../../src/types.ts';

/** Clock time of the first second of every series made here. */
export const start = 1_700_000_000;

type Given = { readonly [C in Channel]?: readonly number[] | Float64Array };

/** A recording at one record a second, from columns; anything else as given. */
export function recordingOf(columns: Given, rest: Partial<Recording> = {}): Recording {
  const channels: { [C in Channel]?: Float64Array } = {};
  let length = rest.time?.length ?? 0;
  for (const [name, column] of Object.entries(columns)) {
    channels[name as Channel] = Float64Array.from(column);
    length = column.length;
  }
  return {
    name: 'ride.fit',
    sha256: '00'.repeat(32),
    format: 'fit',
    sport: 'cycling',
    indoors: true,
    device: { maker: null, product: null, serial: null },
    time: Float64Array.from({ length }, (_, i) => start + i),
    channels,
    extraMeters: [],
    balanceSide: null,
    pauses: [],
    laps: [],
    totals: {},
    defects: [],
    ...rest,
  };
}

/** A series as a recorder that never misses a second makes it. */
export function seriesOf(columns: Given, rest: Partial<Series> = {}): Series {
  const recording = rest.recording ?? recordingOf(columns);
  return {
    recording,
    start,
    length: recording.time.length,
    channels: recording.channels as Columns,
    state: new Uint8Array(recording.time.length).fill(SecondState.recorded),
    extraMeters: [],
    ...rest,
  };
}

/** A submission of one recording. */
export function alone(primary: Series, race: RaceFacts = {}, window?: Stretch): Subjects {
  return {
    primary,
    seconds: [],
    sections: [],
    window: window ?? [0, primary.length],
    rider: {},
    race,
    history: null,
  };
}

/** Numbers in [0, 1) that are the same on every run (Park and Miller 1988, CACM 31:1192). */
export function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Whole watts around a slowly wandering mean, as a crisp meter on a rider shows. */
export function ride(seconds: number, seed = 1, mean = 220, spread = 15): number[] {
  const random = uniform(seed);
  let wander = 0;
  return Array.from({ length: seconds }, () => {
    wander = 0.97 * wander + spread * 0.6 * (random() - 0.5);
    return Math.max(0, Math.round(mean + wander * 2 + spread * 1.6 * (random() + random() - 1)));
  });
}
