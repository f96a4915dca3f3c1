import { canonical } from './json.ts';

/** One field that a change gave another value; undefined where it is not there. */
export interface Difference {
  readonly path: readonly string[];
  readonly before: unknown;
  readonly after: unknown;
}

/** Where two JSON values differ: fields by name, lists as a whole. */
export function differences(before: unknown, after: unknown, path: readonly string[] = []): Difference[] {
  if (isFields(before) && isFields(after)) {
    const names = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...names].flatMap((name) => differences(before[name], after[name], [...path, name]));
  }
  return sameJson(before, after) ? [] : [{ path, before, after }];
}

/** In whatever order their fields stand. */
export function sameJson(before: unknown, after: unknown): boolean {
  return JSON.stringify(before) === JSON.stringify(after) || canonical(before) === canonical(after);
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}
