import { nearest } from '../../math/nearest.ts';
import type { Fault } from '../../schema.ts';
import type { Rule } from '../../types.ts';

/** The rules that this one accounts for exist: a misspelt id would silently account for nothing. */
export function explainFaults({ explains = [] }: Rule, known: readonly string[]): Fault[] {
  return explains.flatMap((id, i) => {
    if (known.includes(id)) return [];
    const near = nearest(id, known);
    const hint = near === null ? 'wattassay rules lists the ids' : `Did you mean “${near}”?`;
    return [{ path: ['explains', String(i + 1)], what: `there is no rule “${id}”`, hint }];
  });
}
