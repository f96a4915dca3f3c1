import type { Totals } from '../types.ts';

type Key = keyof Totals;
const added: readonly Key[] = ['workJ', 'timerS', 'distanceM'];
const highest: readonly Key[] = ['maxPower', 'maxHeartRate'];
const averaged: readonly Key[] = ['meanPower', 'meanCadence', 'meanHeartRate'];

const neverZero: ReadonlySet<string> = new Set(['meanHeartRate', 'maxHeartRate'] satisfies Key[]);

/**
 * The totals that are numbers; the others are not stated. A heart rate of 0 is how recorders write that they
 * heard no strap.
 */
export function stated(values: { readonly [K in Key]?: number }): Totals {
  return Object.fromEntries(
    Object.entries(values).filter(
      ([key, value]) => Number.isFinite(value) && (value > 0 || !neverZero.has(key)),
    ),
  );
}

/**
 * Totals of several sessions or laps as one: sums, maxima, and means weighted by timer time. A total that
 * one of them does not state is not stated for the whole.
 */
export function combineTotals(parts: readonly Totals[]): Totals {
  if (parts.length === 1) return parts[0]!;
  const all = (key: Key) => parts.map((part) => part[key] ?? Number.NaN);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const weights = all('timerS');
  const combined: { [K in Key]?: number } = {};
  if (parts.length === 0) return combined;
  for (const key of added) combined[key] = sum(all(key));
  for (const key of highest) combined[key] = Math.max(...all(key));
  for (const key of averaged) {
    combined[key] = sum(all(key).map((mean, i) => mean * weights[i]!)) / sum(weights);
  }
  return stated(combined);
}
