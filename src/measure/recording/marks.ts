import { rollingHashes } from '../../math/repeats.ts';
import type { CopySearch } from './copies.ts';

/**
 * A thin choice of window hashes that two series sharing a long enough stretch are bound to have in common,
 * wherever in either it lies: of every `windowSamples` windows in a row the least hash (winnowing;
 * Schleimer, Wilkerson and Aiken 2003, SIGMOD 76–85). With them an event finds the few pairs of submissions
 * worth comparing among many without comparing every pair. Sorted, each once.
 *
 * @param values power or cadence, NaN where missing
 */
export function contentMarks(values: Float64Array, options: CopySearch): Float64Array {
  const window = options.windowSamples;
  if (values.length <= 2 * window) return new Float64Array(0);
  const changes = new Float64Array(values.length - 1);
  const bends = new Int32Array(values.length);
  for (let i = 0; i < changes.length; i++) {
    changes[i] = values[i + 1]! - values[i]!;
    bends[i + 1] = bends[i]! + (i > 0 && changes[i] === changes[i - 1] ? 0 : 1);
  }
  const hashes = rollingHashes(changes, window);
  const telling = hashes.map((hash, i) =>
    bends[i + window]! - bends[i]! >= options.tellingShare * window ? hash : Number.NaN,
  );
  const marks = new Set<number>();
  for (let from = 0; from + window <= telling.length; from++) {
    let least = Number.NaN;
    for (let i = from; i < from + window; i++)
      if (!(telling[i]! >= least)) least = Number.isNaN(telling[i]!) ? least : telling[i]!;
    if (!Number.isNaN(least)) marks.add(least);
  }
  return Float64Array.from(marks).sort();
}
