import { SecondState, type Series } from '../../types.ts';

/** One total of a file beside what its samples give for it. */
export interface Total {
  readonly total: string;
  readonly unit: 'W' | 'kJ' | 's';
  readonly stated: number;
  /** Each honest way to work it out, with the range that it allows. */
  readonly definitions: readonly Definition[];
}
export interface Definition {
  readonly definition: string;
  readonly low: number;
  readonly high: number;
}

/** The totals of power and time that the file states and its samples can be held against. */
export function totalsOf(series: Series, mostMissing: number): readonly Total[] {
  const { power } = series.recording.channels;
  const times = duration(series);
  if (power === undefined) return times;
  const sums = sumUp(series, power);
  if (sums.records === 0) return times;
  return [
    ...meanPower(series, sums, mostMissing),
    ...highest(series, power),
    ...work(series, sums, mostMissing),
    ...times,
  ];
}

interface Sums {
  /** Records that hold power; with power above zero; with turning cranks; under way. Their summed watts. */
  readonly records: number;
  readonly sum: number;
  readonly nonzero: number;
  readonly pedalling: number;
  readonly pedallingSum: number;
  readonly moving: number;
  readonly movingSum: number;
  /** Seconds with power, those counted that the recorder left out, and their summed watts. */
  readonly seconds: number;
  readonly secondsSum: number;
}

function sumUp(series: Series, power: Float64Array): Sums {
  const { cadence, speed } = series.recording.channels;
  const sums = {
    records: 0,
    sum: 0,
    nonzero: 0,
    pedalling: 0,
    pedallingSum: 0,
    moving: 0,
    movingSum: 0,
    seconds: 0,
    secondsSum: 0,
  };
  for (let i = 0; i < power.length; i++) {
    const watts = power[i]!;
    if (Number.isNaN(watts)) continue;
    sums.records++;
    sums.sum += watts;
    if (watts > 0) sums.nonzero++;
    if (cadence !== undefined && cadence[i]! > 0) {
      sums.pedalling++;
      sums.pedallingSum += watts;
    }
    if (speed !== undefined && speed[i]! > 0) {
      sums.moving++;
      sums.movingSum += watts;
    }
  }
  const grid = series.channels.power ?? power;
  for (let i = 0; i < series.length; i++) {
    const counts = series.state[i] === SecondState.recorded || series.state[i] === SecondState.bridged;
    if (!counts || Number.isNaN(grid[i]!)) continue;
    sums.seconds++;
    sums.secondsSum += grid[i]!;
  }
  return sums;
}

const exactly = (definition: string, value: number): Definition => ({ definition, low: value, high: value });

/** With and without zeros, coasting, standing, pauses, and the seconds that the file does not hold. */
function meanPower(series: Series, sums: Sums, mostMissing: number): Total[] {
  const { meanPower: stated, timerS, elapsedS } = series.recording.totals;
  if (stated === undefined) return [];
  const over = (definition: string, sum: number, count: number) =>
    count > 0 ? [exactly(definition, sum / count)] : [];
  return [
    {
      total: 'mean power',
      unit: 'W',
      stated,
      definitions: [
        ...over('all records', sums.sum, sums.records),
        ...over('zeros left out', sums.sum, sums.nonzero),
        ...over('cranks turning', sums.pedallingSum, sums.pedalling),
        ...over('under way', sums.movingSum, sums.moving),
        ...over('every second', sums.secondsSum, sums.seconds),
        ...over('over the time of the timer', sums.secondsSum, timerS ?? 0),
        ...over('over the time elapsed', sums.secondsSum, elapsedS ?? 0),
        ...missing(sums, timerS, mostMissing).map(({ seconds, most }) => ({
          definition: 'with the seconds that the file does not hold',
          low: sums.secondsSum / (sums.seconds + seconds),
          high: (sums.secondsSum + most) / (sums.seconds + seconds),
        })),
      ],
    },
  ];
}

/** Seconds that the timer counted and the file does not hold, and the most work (J) they can have held. */
function missing(
  sums: Sums,
  timerS: number | undefined,
  mostMissing: number,
): { seconds: number; most: number }[] {
  const seconds = (timerS ?? 0) - sums.seconds;
  if (seconds < 1 || seconds > mostMissing * (timerS ?? 0)) return [];
  return [{ seconds, most: (2 * seconds * sums.secondsSum) / sums.seconds }];
}

/**
 * A highest power above every sample is everyday: meters send more readings than are recorded. One below
 * may leave single samples out, or be the highest mean of three.
 */
function highest(series: Series, power: Float64Array): Total[] {
  const stated = series.recording.totals.maxPower;
  if (stated === undefined) return [];
  let single = 0;
  let pair = 0;
  let three = 0;
  for (let i = 0; i < power.length; i++) {
    const here = power[i]!;
    const next = power[i + 1]!;
    const mean = (here + next + power[i + 2]!) / 3;
    if (here > single) single = here;
    if (here > pair && next > pair) pair = Math.min(here, next);
    if (mean > three) three = mean;
  }
  return [
    {
      total: 'highest power',
      unit: 'W',
      stated,
      definitions: [
        { definition: 'highest record, or above', low: single, high: Number.POSITIVE_INFINITY },
        exactly('single samples left out', pair),
        exactly('highest mean of three', three),
      ],
    },
  ];
}

function work(series: Series, sums: Sums, mostMissing: number): Total[] {
  const { workJ, meanPower: mean, timerS } = series.recording.totals;
  if (workJ === undefined) return [];
  return [
    {
      total: 'work',
      unit: 'kJ',
      stated: workJ / 1000,
      definitions: [
        exactly('all records', sums.sum / 1000),
        exactly('every second', sums.secondsSum / 1000),
        ...(mean === undefined || timerS === undefined
          ? []
          : [exactly('mean over the time of the timer', ((sums.sum / sums.records) * timerS) / 1000)]),
        ...missing(sums, timerS, mostMissing).map(({ most }) => ({
          definition: 'with the seconds that the file does not hold',
          low: sums.secondsSum / 1000,
          high: (sums.secondsSum + most) / 1000,
        })),
      ],
    },
  ];
}

/** A stated time may leave out pauses, standing and coasting, and count what the file does not hold. */
function duration(series: Series): Total[] {
  const { timerS, elapsedS } = series.recording.totals;
  const stated = Math.max(timerS ?? 0, elapsedS ?? 0);
  if (stated === 0) return [];
  const { speed, cadence, power } = series.recording.channels;
  const above = (column: Float64Array | undefined) =>
    column?.reduce((count, value) => (value > 0 ? count + 1 : count), 0) || Number.POSITIVE_INFINITY;
  const shortest = Math.min(series.recording.time.length, above(speed), above(cadence), above(power));
  return [
    {
      total: 'duration',
      unit: 's',
      stated,
      definitions: [{ definition: 'riding alone, or more', low: shortest, high: Number.POSITIVE_INFINITY }],
    },
  ];
}
