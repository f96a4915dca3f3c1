import { jackknifeReach } from '../math/jackknife.ts';
import { leastSquares } from '../math/least-squares.ts';
import { mean, meanOfValid } from '../math/mean.ts';
import { gravity } from '../math/road-power.ts';
import { robustSpread } from '../math/robust-spread.ts';
import type { Series, SpeedCurveChart } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { recordsOf } from './recording/records.ts';
import { subjectOf } from './recording/subject.ts';

/** Blocks of the ride that are left out one at a time for the interval. */
const blocks = 10;

/**
 * How far power scatters around a fixed curve of speed, in percent of its mean: a cubic in speed, with a
 * term for the change of speed. Measured power scatters widely: gradient, wind, bunch and legs do not ask
 * the speed. The interval leaves out tenths of the ride.
 *
 * A game works speed out from power, and on a level course with a rider's inertia: that looks the same, so
 * an inertia that may be a rider's belongs to the curve only where the course climbs and falls by so much
 * more than the scatter that no rider's speed could have kept to one curve.
 */
export const speedCurveScatter = defineMeasure({
  id: 'speed-curve-scatter',
  of: 'recording',
  unit: '%',
  options: {
    rows: number('seconds used, evenly chosen over the ride'),
    trimShare: number('share of them, the furthest from a first curve, left out of the second'),
    minimumSpeed: number('speed from which seconds count, m/s'),
    minimumRows: number('such seconds below which nothing is said'),
    minimumSpread: number('standard deviation that power must have of its own, % of its mean'),
    shownBelow: number('scatter below which the curve is shown, %'),
    lightestRider: number('inertia from which the change of speed may be a rider on a bicycle, kg'),
    heaviestRider: number('and up to which, kg'),
    climbSeconds: number('seconds over which the altitude tells how fast the course climbs'),
    climbFactor: number(
      'how many times the scatter the climbing of the lightest rider must take to rule out a game',
    ),
  },
  compute(all, recording, options) {
    const { power, speed } = recording.channels;
    if (power === undefined) return notApplicable('no-channel', { channel: 'power' });
    if (speed === undefined) return notApplicable('no-channel', { channel: 'speed' });
    const rows = rowsOf(recording, speed, options);
    if (rows.watts.length < options.minimumRows) {
      return notApplicable('too-short', { seconds: rows.watts.length, needed: options.minimumRows });
    }
    const usual = mean(rows.watts);
    const percent = (residuals: Float64Array) => (100 * robustSpread(residuals)) / usual;
    const own = percent(rows.watts.map((watts) => watts - usual));
    if (own < options.minimumSpread) return notApplicable('cannot-separate');
    const climbing = (options.lightestRider * gravity * climbSpread(recording, options)) / usual;
    const fit = curveOf(
      rows,
      options,
      (residuals) => options.climbFactor * percent(residuals) < 100 * climbing,
    );
    if (fit === null) return notApplicable('cannot-separate');
    const value = percent(fit.residuals);
    return measured(value, intervalOf(value, fit.residuals, percent), rows.watts.length, {
      details: {
        spread: { value: own, unit: '%' },
        of: fit.inertia === null ? 'speed' : 'speed and its change',
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
  readonly minimumRows: number;
  readonly lightestRider: number;
  readonly heaviestRider: number;
  readonly climbSeconds: number;
}

/** Power, speed and speed times its change, row by row. */
interface Rows {
  readonly watts: Float64Array;
  readonly speed: Float64Array;
  /** Null where too few records follow one another. */
  readonly push: Float64Array | null;
}

interface Curve {
  /** W at a speed that does not change. */
  readonly at: (speed: number) => number;
  readonly residuals: Float64Array;
  /** kg; null where the change of speed is not part of the curve. */
  readonly inertia: number | null;
}

function rowsOf(series: Series, speed: Float64Array, options: Options): Rows {
  const { at, power, broken } = recordsOf(series)!;
  const usable: number[] = [];
  const following: number[] = [];
  for (let i = 1; i < at.length; i++) {
    if (!(power[i]! > 0 && speed[at[i]!]! >= options.minimumSpeed)) continue;
    usable.push(i);
    const next = broken[i] === 0 && at[i]! - at[i - 1]! === 1;
    if (next && speed[at[i - 1]!]! > 0) following.push(i);
  }
  const pushed = following.length >= options.minimumRows;
  const chosen = pushed ? following : usable;
  const step = Math.max(1, chosen.length / options.rows);
  const rows = Array.from(
    { length: Math.floor(chosen.length / step) },
    (_, k) => chosen[Math.floor(k * step)]!,
  );
  const speedOf = (i: number) => speed[at[i]!]!;
  return {
    watts: new Float64Array(rows.map((i) => power[i]!)),
    speed: new Float64Array(rows.map(speedOf)),
    push: pushed ? new Float64Array(rows.map((i) => speedOf(i) * (speedOf(i) - speedOf(i - 1)))) : null,
  };
}

/**
 * How widely the speed of climbing spreads about its mean, m/s; 0 where no altitude is recorded. A steady
 * climb alone would be a part of the curve.
 */
function climbSpread({ channels: { altitude }, length }: Series, { climbSeconds }: Options): number {
  if (altitude === undefined || length <= climbSeconds) return 0;
  const climbs = new Float64Array(length - climbSeconds);
  for (let i = 0; i < climbs.length; i++) {
    climbs[i] = (altitude[i + climbSeconds]! - altitude[i]!) / climbSeconds;
  }
  const usual = meanOfValid(climbs).mean;
  for (let i = 0; i < climbs.length; i++) climbs[i]! -= usual;
  return robustSpread(climbs) || 0;
}

/** The curve that power keeps to most closely, without or with the change of speed. */
function curveOf(
  { watts, speed, push }: Rows,
  options: Options,
  noGame: (residuals: Float64Array) => boolean,
): Curve | null {
  const columns = [speed.map(() => 1), speed, speed.map((v) => v * v), speed.map((v) => v * v * v)];
  const still = trimmedFit(columns, watts, options.trimShare);
  if (still === null) return null;
  const moving = push === null ? null : trimmedFit([...columns, push], watts, options.trimShare);
  const inertia = moving?.coefficients[4] ?? Number.NaN;
  const riders = inertia >= options.lightestRider && inertia <= options.heaviestRider;
  const best = moving !== null && inertia > 0 && (!riders || noGame(moving.residuals)) ? moving : still;
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

/** 95 % interval, leaving out one block at a time. */
function intervalOf(
  value: number,
  residuals: Float64Array,
  of: (residuals: Float64Array) => number,
): readonly [number, number] {
  const without = Array.from({ length: blocks }, (_, k) => {
    const from = Math.floor((k * residuals.length) / blocks);
    const to = Math.floor(((k + 1) * residuals.length) / blocks);
    const rest = new Float64Array(residuals.length - (to - from));
    rest.set(residuals.subarray(0, from));
    rest.set(residuals.subarray(to), from);
    return of(rest);
  });
  const reach = jackknifeReach(without);
  return [Math.max(0, value - reach), value + reach];
}

function chart(id: string, { speed, watts, push }: Rows, { at, inertia }: Curve): SpeedCurveChart {
  const step = Math.max(1, Math.ceil(speed.length / 400));
  const fastest = Math.max(...speed);
  const slowest = Math.min(...speed);
  const round = (value: number) => Math.round(value * 100) / 100;
  return {
    kind: 'speed-curve',
    id,
    inertia: inertia === null ? null : round(inertia),
    points: Array.from({ length: Math.ceil(speed.length / step) }, (_, k) => ({
      speed: round(speed[k * step]!),
      watts: round(watts[k * step]! - (inertia ?? 0) * (push?.[k * step] ?? 0)),
    })),
    curve: Array.from({ length: 40 }, (_, k) => {
      const speedHere = slowest + ((fastest - slowest) * k) / 39;
      return { speed: round(speedHere), watts: round(at(speedHere)) };
    }),
  };
}
