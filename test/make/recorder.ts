import type { Channel, Device, Lap, Recording, Stretch, Totals } from '../../src/types.ts';
import { valueAt } from './meter/smooth.ts';
import type { Signal } from './meter.ts';
import { fakeDigest, type Random } from './random.ts';
import type { Truth } from './ride.ts';

/** One head unit or phone: its clock, its habits, what it is paired with. */
export interface RecorderSpec {
  readonly name: string;
  readonly device: Device;
  /** Seconds its clock is ahead of true time. Fractions shift when in a second it samples. */
  readonly offset: number;
  /** Parts per million its clock runs fast. */
  readonly driftPpm: number;
  /** Seconds of the ride at which it was started and stopped. */
  readonly from: number;
  readonly to: number;
  /** What it does while the rider stands: goes on, leaves the seconds out, or stops its clock as well. */
  readonly pauses: 'recorded' | 'skipped' | 'clock stops';
  /** Writes only every second or more, when something changes (s at most between records); 0: each second. */
  readonly smart: number;
  /** Share of seconds that get a second record, with a later one missing. */
  readonly doubled: number;
  readonly channels: readonly Channel[];
  /** Share of seconds in which no new message came and the last one is written again. */
  readonly repeats: number;
  /** Trouble between sensor and recorder. */
  readonly dropouts: readonly Dropout[];
  /** Heart-rate strap: stretches that fail, and how. */
  readonly strap: readonly StrapFault[];
  /** Seconds the heart rate arrives late. */
  readonly heartLag: number;
  /** File's own mean: counts zeros (most do) or leaves them out. */
  readonly meanCountsZeros: boolean;
}

export interface Dropout {
  /** Seconds of the ride. */
  readonly from: number;
  readonly to: number;
  /** `zero power`: cadence comes from a sensor of its own and goes on. */
  readonly as: 'missing' | 'zero' | 'zero power' | 'held' | 'no record';
}

export interface StrapFault {
  readonly from: number;
  readonly to: number;
  readonly as: 'missing' | 'stuck' | 'cadence' | 'low';
}

const allChannels: readonly Channel[] = [
  'power',
  'cadence',
  'heartRate',
  'speed',
  'altitude',
  'distance',
  'temperature',
];

export const plainRecorder: RecorderSpec = {
  name: 'ride.fit',
  device: { maker: 'development', product: 'Harrow 2', serial: '100001' },
  offset: 0,
  driftPpm: 0,
  from: 0,
  to: Number.POSITIVE_INFINITY,
  pauses: 'skipped',
  smart: 0,
  doubled: 0,
  channels: allChannels,
  repeats: 0,
  dropouts: [],
  strap: [],
  heartLag: 1,
  meanCountsZeros: true,
};

/**
 * Writes the ride down as a file would hold it: whole seconds, whole watts, beats and turns, speed in
 * mm/s, altitude in fifths of a metre, distance in cm.
 *
 * @param start clock time (s) of the ride's first second
 */
export function record(
  truth: Truth,
  signal: Signal,
  spec: RecorderSpec,
  start: number,
  random: Random,
): Recording {
  const moments = schedule(truth, signal, spec, random);
  const count = moments.ride.length;
  const clock = Math.floor(start + spec.offset);
  const time = new Float64Array(count);
  for (let k = 0; k < count; k++) time[k] = clock + moments.stamp[k]!;

  const columns: { [C in Channel]?: Float64Array } = {};
  for (const channel of spec.channels) {
    const column = columnOf(channel, truth, signal, spec, moments.ride);
    if (column?.some((value) => !Number.isNaN(value))) columns[channel] = column;
  }
  if (spec.repeats > 0) repeatSome(columns, spec.repeats, random.fork('repeats'));
  applyDropouts(columns, moments.ride, spec);
  return {
    name: spec.name,
    sha256: fakeDigest(`${random.key} ${spec.name}`),
    format: 'fit',
    sport: 'cycling',
    indoors: truth.demand.indoors,
    device: spec.device,
    meter: signal.meter,
    time,
    channels: columns,
    extraMeters: [],
    balanceSide: columns.balance === undefined ? null : 'right',
    pauses: pausesOf(time, moments.pauseAfter),
    laps: lapsOf(time, columns),
    totals: totalsOf(time, columns, moments.pauseAfter, spec.meanCountsZeros),
    defects: [],
  };
}

interface Schedule {
  /** Second of the ride each record refers to. */
  readonly ride: Float64Array;
  /** Whole seconds on the recorder's clock since its start. */
  readonly stamp: Float64Array;
  /** Records after which recording was paused. */
  readonly pauseAfter: readonly number[];
}

/** When records are made, and what the clock says then. */
function schedule(truth: Truth, signal: Signal, spec: RecorderSpec, random: Random): Schedule {
  const first = Math.max(0, spec.from);
  const last = Math.min(truth.seconds - 1, spec.to);
  const phase = spec.offset - Math.floor(spec.offset);
  const ride: number[] = [];
  const stamp: number[] = [];
  const pauseAfter: number[] = [];
  const begin = Math.ceil(first);
  const unrecorded = spec.dropouts.filter(({ as }) => as === 'no record');
  let held = 0;
  let stops = 0;
  for (let k = 0; ; k++) {
    const at = begin + 1 - phase + k / (1 + spec.driftPpm * 1e-6);
    if (at > last) break;
    const second = Math.floor(at);
    if (spec.pauses !== 'recorded') {
      const stop = truth.demand.stops[stops];
      if (stop !== undefined && at >= stop[1]) stops++;
      else if (stop !== undefined && at >= stop[0] + 3) {
        if (spec.pauses === 'clock stops') held++;
        if (pauseAfter[pauseAfter.length - 1] !== ride.length - 1 && ride.length > 0) {
          pauseAfter.push(ride.length - 1);
        }
        continue;
      }
    }
    if (unrecorded.some(({ from, to }) => second >= from && second < to)) continue;
    if (spec.smart > 0 && skips(ride, at, signal, spec.smart)) continue;
    ride.push(at);
    stamp.push(begin + 1 + k - held);
  }
  const doubled = spec.doubled > 0 ? doubleSome(stamp, spec.doubled, random.fork('doubled')) : stamp;
  return { ride: Float64Array.from(ride), stamp: Float64Array.from(doubled), pauseAfter };
}

/** Smart recording: leaves a second out when power has hardly changed since the last record. */
function skips(ride: readonly number[], at: number, signal: Signal, most: number): boolean {
  const last = ride[ride.length - 1];
  if (last === undefined || at - last >= most) return false;
  const change = valueAt(signal.power, at / signal.step) - valueAt(signal.power, last / signal.step);
  return Math.abs(change) < 25;
}

/** A record stamped one second early, the second after it left without: two in one second, then a gap. */
function doubleSome(stamp: readonly number[], share: number, random: Random): number[] {
  const out = [...stamp];
  for (let k = 1; k < out.length; k++) {
    if (out[k]! - out[k - 1]! === 1 && random.chance(share)) {
      out[k] = out[k - 1]!;
      k++;
    }
  }
  return out;
}

/** What stands in a channel at these seconds of the ride; null where nothing tells it. */
function columnOf(
  channel: Channel,
  truth: Truth,
  signal: Signal,
  spec: RecorderSpec,
  ride: Float64Array,
): Float64Array | null {
  switch (channel) {
    case 'power':
      return lastOf(signal.power, signal.step, ride).map(Math.round);
    case 'cadence': {
      const cadence = signal.cadence();
      return cadence && lastOf(cadence, signal.step, ride).map(Math.round);
    }
    case 'heartRate':
      return ride.map((at) => strapped(truth, spec, at));
    case 'speed':
      return rounded(truth.speed, 1000, ride);
    case 'altitude':
      return rounded(truth.altitude, 5, ride);
    case 'distance':
      return rounded(truth.distance, 100, ride);
    case 'temperature':
      return rounded(truth.temperature, 1, ride);
    case 'balance': {
      const balance = signal.balance();
      return balance && lastOf(balance, 1, ride);
    }
  }
}

/** The sample that is under way at each of these seconds. */
function lastOf(samples: Float64Array, step: number, ride: Float64Array): Float64Array {
  const out = new Float64Array(ride.length);
  for (let k = 0; k < ride.length; k++) {
    out[k] = samples[Math.min(samples.length - 1, Math.floor(ride[k]! / step))]!;
  }
  return out;
}

/** What is known once a second, told in parts of a unit. */
function rounded(seconds: Float64Array, parts: number, ride: Float64Array): Float64Array {
  const out = new Float64Array(ride.length);
  for (let k = 0; k < ride.length; k++) out[k] = Math.round(valueAt(seconds, ride[k]! - 0.5) * parts) / parts;
  return out;
}

function strapped(truth: Truth, spec: RecorderSpec, at: number): number {
  const fault = spec.strap.find(({ from, to }) => at >= from && at < to);
  const real = valueAt(truth.heartRate, at - spec.heartLag);
  switch (fault?.as) {
    case 'missing':
      return Number.NaN;
    case 'stuck':
      return Math.round(valueAt(truth.heartRate, fault.from));
    case 'cadence':
      return Math.round(truth.cadence[Math.min(truth.cadence.length - 1, Math.floor(at / truth.step))]!);
    case 'low':
      return Math.round(real * 0.55);
    default:
      return Math.round(real);
  }
}

/** A lost radio message: power and cadence of the second before stand once more. */
function repeatSome(columns: { [C in Channel]?: Float64Array }, share: number, random: Random): void {
  const { power, cadence } = columns;
  const length = power?.length ?? 0;
  for (let k = 1; k < length; k++) {
    if (!random.chance(share)) continue;
    power![k] = power![k - 1]!;
    if (cadence !== undefined) cadence[k] = cadence[k - 1]!;
  }
}

function applyDropouts(
  columns: { [C in Channel]?: Float64Array },
  ride: Float64Array,
  spec: RecorderSpec,
): void {
  for (const dropout of spec.dropouts) {
    if (dropout.as === 'no record') continue;
    const lost = dropout.as === 'zero power' ? [columns.power] : [columns.power, columns.cadence];
    for (const column of lost) {
      if (column === undefined) continue;
      let before = Number.NaN;
      for (let k = 0; k < ride.length; k++) {
        if (ride[k]! < dropout.from) before = column[k]!;
        else if (ride[k]! >= dropout.to) break;
        else column[k] = dropout.as.startsWith('zero') ? 0 : dropout.as === 'held' ? before : Number.NaN;
      }
    }
  }
}

function pausesOf(time: Float64Array, pauseAfter: readonly number[]): Stretch[] {
  return pauseAfter
    .filter((k) => k + 1 < time.length && time[k + 1]! - time[k]! > 1)
    .map((k) => [time[k]! + 1, time[k + 1]!] as const);
}

/** One lap each fifteen minutes. */
function lapsOf(time: Float64Array, columns: { [C in Channel]?: Float64Array }): Lap[] {
  const laps: Lap[] = [];
  const length = 900;
  for (let k = 0; k < time.length; ) {
    let end = k;
    while (end + 1 < time.length && time[end + 1]! - time[k]! < length) end++;
    const mean = meanOf(columns.power, k, end + 1, true);
    laps.push({
      from: time[k]!,
      to: time[end]! + 1,
      ...(mean === undefined ? {} : { meanPower: mean }),
    });
    k = end + 1;
  }
  return laps;
}

/** Session totals as an honest head unit states them: of its own records, rounded. */
export function totalsOf(
  time: Float64Array,
  columns: { readonly [C in Channel]?: Float64Array },
  pauseAfter: readonly number[],
  countsZeros: boolean,
): Totals {
  const count = time.length;
  if (count === 0) return {};
  const elapsed = time[count - 1]! - time[0]! + 1;
  let paused = 0;
  for (const k of pauseAfter) if (k + 1 < count) paused += Math.max(0, time[k + 1]! - time[k]! - 1);
  let work = 0;
  for (const watts of columns.power ?? []) if (watts > 0) work += watts;
  const { power, cadence, heartRate, distance } = columns;
  const totals: { -readonly [K in keyof Totals]: Totals[K] } = {
    elapsedS: elapsed,
    timerS: elapsed - paused,
  };
  const meanPower = meanOf(power, 0, count, countsZeros);
  if (meanPower !== undefined) {
    totals.meanPower = meanPower;
    totals.maxPower = most(power!);
    totals.workJ = work;
  }
  const meanCadence = meanOf(cadence, 0, count, false);
  if (meanCadence !== undefined) totals.meanCadence = meanCadence;
  const meanHeart = meanOf(heartRate, 0, count, false);
  if (meanHeart !== undefined) {
    totals.meanHeartRate = meanHeart;
    totals.maxHeartRate = most(heartRate!);
  }
  if (distance !== undefined) totals.distanceM = most(distance);
  return totals;
}

function meanOf(
  column: Float64Array | undefined,
  from: number,
  to: number,
  countsZeros: boolean,
): number | undefined {
  if (column === undefined) return undefined;
  let sum = 0;
  let count = 0;
  for (let k = from; k < to; k++) {
    const value = column[k]!;
    if (Number.isNaN(value) || (value === 0 && !countsZeros)) continue;
    sum += value;
    count++;
  }
  return count === 0 ? undefined : Math.round(sum / count);
}

function most(column: Float64Array): number {
  let best = 0;
  for (const value of column) if (value > best) best = value;
  return best;
}
