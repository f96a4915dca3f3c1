import type { CloseUpsChart, Reading, Series, Stretch } from '../../types.ts';

/** How many stretches are shown from nearby, and how many seconds around and of each. */
const shown = { most: 6, around: 15, longest: 180 } as const;

/** Close-ups of the longest of these stretches, in order of time. */
export function closeUps(id: string, series: Series, stretches: readonly Stretch[]): CloseUpsChart {
  const chosen = [...stretches]
    .sort((a, b) => b[1] - b[0] - (a[1] - a[0]) || a[0] - b[0])
    .slice(0, shown.most)
    .sort((a, b) => a[0] - b[0]);
  const { power, cadence, heartRate } = series.channels;
  return {
    kind: 'close-ups',
    id,
    closeUps: chosen.map((marked) => {
      const from = Math.max(0, marked[0] - shown.around);
      const to = Math.min(series.length, Math.min(marked[1], marked[0] + shown.longest) + shown.around);
      return {
        from,
        power: readings(power, from, to) ?? [],
        cadence: readings(cadence, from, to),
        heartRate: readings(heartRate, from, to),
        marked,
      };
    }),
  };
}

/** A column as a chart holds it: null where missing, to a tenth. */
export function readings(column: Float64Array, from: number, to: number): Reading[];
export function readings(column: Float64Array | undefined, from: number, to: number): Reading[] | null;
export function readings(column: Float64Array | undefined, from: number, to: number): Reading[] | null {
  if (column === undefined) return null;
  return Array.from(column.subarray(from, to), (value) =>
    Number.isFinite(value) ? Math.round(value * 10) / 10 : null,
  );
}
