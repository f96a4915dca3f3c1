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

/** Rounds to so many significant figures, 1 to 12; what is not finite stays as it is. */
export function toFigures(value: number, figures: number): number {
  if (!Number.isFinite(value)) return value;
  const least = 10 ** (figures - 1);
  let scale = 1;
  while (Math.abs(value) * scale < least && scale < greatestExact) scale *= 10;
  const scaled = Math.abs(value) * scale;
  const below = Math.floor(scaled);
  const part = scaled - below;
  const clear = scaled >= least && scaled < 10 * least && Math.abs(part - 0.5) > 0.001;
  // Next to a half, and beyond powers of ten that are exact, only the decimals of the value itself tell.
  if (!clear) return Number(value.toPrecision(figures));
  // Both exact, so that their quotient is the number that the decimals would be read as; text is far slower.
  return (Math.sign(value) * (part < 0.5 ? below : below + 1)) / scale;
}

/** The greatest power of ten that a number holds exactly. */
const greatestExact = 1e22;
