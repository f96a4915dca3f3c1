import { jackknifeReach } from '../math/jackknife.ts';
import { leastSquares } from '../math/least-squares.ts';
import { SecondState, type Series, type SpeedCurveChart } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { subjectOf } from './recording/subject.ts';

/** Blocks of the ride that are left out one at a time for the interval. */
const blocks = 10;

/**
 * How far power scatters around a fixed curve of speed, in percent of its mean: a cubic in speed, with a
 * term for the change of speed where the inertia that it stands for is a flywheel's and not a rider's (a
 * game that works speed out from power, and a road, leave a rider's). Measured power scatters widely:
 * gradient, wind, bunch and legs do not ask the speed. The interval leaves out tenths of the ride.
 */
export const speedCurveScatter = defineMeasure({
  id: 'speed-curve-scatter',
  of: 'recording',
  options: {
    rows: number('seconds used, evenly chosen over the ride'),
    trimShare: number('share of them, the furthest from a first curve, left out of the second'),
    minimumSpeed: number('speed from which seconds count, m/s'),
    minimumRows: number('such seconds below which nothing is said'),
    minimumSpread: number('standard deviation that power must have of its own, % of its mean'),
    shownBelow: number('scatter below which the curve is shown, %'),
    lightestRider: number('inertia from which the change of speed may be a rider on a bicycle, kg'),
    heaviestRider: number('and up to which, kg'),
  },
  compute(all, recording, options) {
    const { power, speed } = recording.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (speed === undefined) return notApplicable('no-channel', { channel: 'speed' });
    const rows = rowsOf(recording, power, speed, options);
    if (rows.watts.length < options.minimumRows) {
      return notApplicable('too-short', { seconds: rows.watts.length, needed: options.minimumRows });
    }
    const mean = rows.watts.reduce((a, b) => a + b, 0) / rows.watts.length;
    const own = spread(rows.watts.map((watts) => watts - mean));
    if (100 * own < options.minimumSpread * mean) return notApplicable('cannot-separate');
    const fit = curveOf(rows, options);
    if (fit === null) return notApplicable('cannot-separate');
    const percent = (residuals: Float64Array) => (100 * spread(residuals)) / mean;
    const value = percent(fit.residuals);
    return measured(value, '%', intervalOf(value, fit.residuals, percent), rows.watts.length, {
      details: {
        spread: { value: (100 * own) / mean, unit: '%' },
        ...(fit.inertia === null ? {} : { inertia: { value: fit.inertia, unit: 'kg' } }),
      },
      charts: value < options.shownBelow ? [chart(`speed:${subjectOf(all, recording)}`, rows, fit)] : [],
    });
  },
});

interface Options {
  readonly rows: number;
  readonly trimShare: number;
  readonly minimumSpeed: number;
  readonly lightestRider: number;
  readonly heaviestRider: number;
}

/** Power, speed and speed times its change, row by row. */
interface Rows {
  readonly watts: Float64Array;
  readonly speed: Float64Array;
  readonly push: Float64Array;
}

interface Curve {
  /** W at a speed that does not change. */
  readonly at: (speed: number) => number;
  readonly residuals: Float64Array;
  /** kg; null where the change of speed is not part of the curve. */
  readonly inertia: number | null;
}

function rowsOf(series: Series, power: Float64Array, speed: Float64Array, options: Options): Rows {
  const chosen: number[] = [];
  for (let i = 1; i < series.length; i++) {
    const recorded = series.state[i] === SecondState.recorded && series.state[i - 1] === SecondState.recorded;
    if (recorded && power[i]! > 0 && speed[i]! >= options.minimumSpeed && speed[i - 1]! > 0) chosen.push(i);
  }
  const step = Math.max(1, chosen.length / options.rows);
  const rows = Array.from(
    { length: Math.floor(chosen.length / step) },
    (_, k) => chosen[Math.floor(k * step)]!,
  );
  return {
    watts: Float64Array.from(rows, (i) => power[i]!),
    speed: Float64Array.from(rows, (i) => speed[i]!),
    push: Float64Array.from(rows, (i) => speed[i]! * (speed[i]! - speed[i - 1]!)),
  };
}

/** The curve that power keeps to most closely, without or with the change of speed. */
function curveOf({ watts, speed, push }: Rows, options: Options): Curve | null {
  const columns = [speed.map(() => 1), speed, speed.map((v) => v * v), speed.map((v) => v * v * v)];
  const still = trimmedFit(columns, watts, options.trimShare);
  if (still === null) return null;
  const moving = trimmedFit([...columns, push], watts, options.trimShare);
  const inertia = moving?.coefficients[4] ?? Number.NaN;
  const flywheel = inertia > 0 && (inertia < options.lightestRider || inertia > options.heaviestRider);
  const best = moving !== null && flywheel ? moving : still;
  const [a, b, c, d] = best.coefficients as unknown as [number, number, number, number];
  return {
    at: (v) => a + v * (b + v * (c + v * d)),
    residuals: best.residuals,
    inertia: best === still ? null : inertia,
  };
}

/** Least squares once, and again without the rows furthest off; residuals of all rows. */
function trimmedFit(columns: readonly Float64Array[], y: Float64Array, trimShare: number) {
  const first = leastSquares(columns, y);
  if (first === null) return null;
  const sizes = first.residuals.map(Math.abs).sort();
  const most = sizes[Math.floor((1 - trimShare) * (sizes.length - 1))]!;
  return leastSquares(
    columns,
    y,
    first.residuals.map((residual) => (Math.abs(residual) <= most ? 1 : 0)),
  );
}

/** Robust standard deviation about 0. */
function spread(residuals: Float64Array): number {
  const sizes = residuals.map(Math.abs).sort();
  return 1.4826 * (sizes[sizes.length >> 1] ?? 0);
}

/** 95 % interval, leaving out one block at a time. */
function intervalOf(
  value: number,
  residuals: Float64Array,
  of: (residuals: Float64Array) => number,
): readonly [number, number] {
  const without = Array.from({ length: blocks }, (_, k) => {
    const from = Math.floor((k * residuals.length) / blocks);
    const to = Math.floor(((k + 1) * residuals.length) / blocks);
    return of(residuals.filter((_, i) => i < from || i >= to));
  });
  const reach = jackknifeReach(without);
  return [Math.max(0, value - reach), value + reach];
}

function chart(id: string, { speed, watts }: Rows, curve: Curve): SpeedCurveChart {
  const step = Math.max(1, Math.ceil(speed.length / 400));
  const fastest = Math.max(...speed);
  const slowest = Math.min(...speed);
  const round = (value: number) => Math.round(value * 100) / 100;
  return {
    kind: 'speed-curve',
    id,
    points: Array.from({ length: Math.ceil(speed.length / step) }, (_, k) => ({
      speed: round(speed[k * step]!),
      watts: round(watts[k * step]!),
    })),
    curve: Array.from({ length: 40 }, (_, k) => {
      const at = slowest + ((fastest - slowest) * k) / 39;
      return { speed: round(at), watts: round(curve.at(at)) };
    }),
  };
}
