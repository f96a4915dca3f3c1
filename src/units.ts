import type { Unit } from './types.ts';

/**
 * How many decimals a value of each unit carries. Measurements are rounded to these before they are
 * judged, and printed with the same: the value judged is the value printed.
 */
export const decimals: Readonly<Record<Unit, number>> = {
  '%': 1,
  W: 1,
  'W/kg': 2,
  rpm: 1,
  'km/h': 1,
  bpm: 1,
  N·m: 1,
  kJ: 1,
  kg: 1,
  s: 1,
  min: 1,
  count: 0,
  share: 3,
  ratio: 3,
  r: 3,
};

/** A speed of 1 m/s in km/h. */
export const kmh = 3.6;

/** Seconds of a day without a leap second, and of a quarter of an hour: time zones differ in whole quarters. */
export const day = 86_400;
export const quarterHour = 900;

/** Rounds half away from zero to the unit's decimals; never returns -0. */
export function roundTo(value: number, unit: Unit): number {
  const scale = 10 ** decimals[unit];
  const rounded = (Math.sign(value) * Math.round(Math.abs(value) * scale)) / scale;
  return rounded === 0 ? 0 : rounded;
}

/** Rounds to so many significant figures; what is not finite stays as it is. */
export function toFigures(value: number, figures: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(figures)) : value;
}
