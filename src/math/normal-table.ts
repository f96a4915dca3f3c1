import { normalProbability } from './normal.ts';

const stepsPerUnit = 64;
const reach = 6;
const size = 2 * reach * stepsPerUnit + 1;
const z = (k: number) => k / stepsPerUnit - reach;
const densities = Float64Array.from(
  { length: size },
  (_, k) => Math.exp(-(z(k) ** 2) / 2) / Math.sqrt(2 * Math.PI),
);
const probabilities = Float64Array.from({ length: size }, (_, k) => normalProbability(z(k)));

/** Standard normal density out of a table, straight between entries: within 2e-5, 0 beyond 6. */
export const tabledDensity = (value: number) => lookUp(densities, value, 0, 0);

/** Probability that a standard normal is at most `value`, out of a table: within 1e-5. */
export const tabledProbability = (value: number) => lookUp(probabilities, value, 0, 1);

function lookUp(table: Float64Array, value: number, below: number, above: number): number {
  const place = (value + reach) * stepsPerUnit;
  if (place <= 0) return below;
  if (place >= size - 1) return above;
  const k = Math.floor(place);
  return table[k]! + (place - k) * (table[k + 1]! - table[k]!);
}
