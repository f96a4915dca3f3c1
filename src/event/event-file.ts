import { Problem } from '../problem.ts';
import { type Fault, faultsOf, problemsOf } from '../schema.ts';
import type { EventFile } from '../types.ts';
import schema from './event.schema.json' with { type: 'json' };

/** How the file of an event is named; the text before it is the organiser's. */
export const eventFileEnding = '.event.json';

/** What a rider's number may look like: it names folders, so that nothing in it can lead elsewhere. */
export const numberPattern = /^[A-Za-z0-9][A-Za-z0-9_-]{0,19}$/;

/** Numbers that differ in case alone would share a folder on some systems. */
export const sameNumber = (number: string) => number.toLowerCase();

/**
 * An event file from parsed JSON, with everything that is wrong in it by itself. Where something is, the file is
 * what is left without it, so that the rest can be looked at too; null when nothing is left. What its paths lead to
 * is not looked at here.
 */
export async function eventFileFrom(
  value: unknown,
  where: string,
): Promise<{ file: EventFile | null; problems: readonly Problem[] }> {
  const faults = await faultsOf(schema, value);
  if (isRecord(value)) return { file: null, problems: [recordGiven(where)] };
  const all = [...faults, ...riderFaults(value), ...pathFaults(value)];
  const problems = problemsOf(all, 'facts-wrong', where);
  const { $schema: _, ...file } = (
    faults.length === 0 ? value : without(value, faults, where)
  ) as EventFile & {
    $schema?: string;
  };
  const isSound = faults.length === 0 || (await faultsOf(schema, file)).length === 0;
  return { file: isSound ? file : null, problems };
}

/** An event file without the fields that are at fault; without a name it is called after its place. */
function without(value: unknown, faults: readonly Fault[], where: string): object {
  const paths = faults.map(({ path }) => path).filter((path) => path.length > 0);
  const left = fieldsOf(pruned(value, paths));
  if (!Array.isArray(left.riders)) return { name: where, ...left };
  // Whose number is at fault is no rider that could be looked for.
  return { name: where, ...left, riders: left.riders.filter((rider) => 'number' in fieldsOf(rider)) };
}

function pruned(value: unknown, paths: readonly (readonly string[])[]): unknown {
  if (paths.length === 0) return value;
  const parts: [string, unknown][] = Array.isArray(value)
    ? value.map((part, i) => [String(i + 1), part])
    : Object.entries(fieldsOf(value));
  const left = parts.flatMap(([field, part]): [string, unknown][] => {
    const below = paths.filter(([first]) => first === field).map((path) => path.slice(1));
    return below.some((path) => path.length === 0) ? [] : [[field, pruned(part, below)]];
  });
  return Array.isArray(value) ? left.map(([, part]) => part) : Object.fromEntries(left);
}

/** What `event` wrote is easily taken for what it reads. */
function isRecord(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'eventVersion' in value;
}

function recordGiven(where: string): Problem {
  return new Problem({
    code: 'facts-wrong',
    what: 'this is what an event came to, not the file that describes it',
    where,
    hint: `Name the file that ends in ${eventFileEnding}, or the folder with the submissions`,
  });
}

/** What is of the wrong kind has been told already. */
function riderFaults(value: unknown): Fault[] {
  const { riders, categories } = fieldsOf(value);
  const known = categories === undefined ? null : Object.keys(fieldsOf(categories));
  const seen = new Map<string, number>();
  return (Array.isArray(riders) ? riders : []).flatMap((rider, index) => {
    const { number, category } = fieldsOf(rider);
    const faults: Fault[] = [];
    const path = ['riders', String(index + 1)];
    if (typeof number === 'string') {
      const before = seen.get(sameNumber(number));
      if (before !== undefined) {
        faults.push({
          path: [...path, 'number'],
          what: `rider ${before + 1} bears the number ${number} too`,
        });
      }
      seen.set(sameNumber(number), index);
    }
    if (typeof category === 'string' && known !== null && !known.includes(category)) {
      faults.push({
        path: [...path, 'category'],
        what: `there is no category “${category}”`,
        hint: `The event has: ${known.join(', ')}`,
      });
    }
    return faults;
  });
}

const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

function pathFaults(value: unknown): Fault[] {
  const { categories, riders, ...event } = fieldsOf(value);
  const named = [
    ...textsIn(event, ['submissions', 'results', 'rules'], []),
    ...Object.entries(fieldsOf(categories)).flatMap(([name, one]) =>
      textsIn(one, ['rules'], ['categories', name]),
    ),
    ...(Array.isArray(riders) ? riders : []).flatMap((rider, i) =>
      textsIn(rider, ['primary', 'seconds', 'history', 'facts'], ['riders', String(i + 1)]),
    ),
  ];
  return named.flatMap(({ path, text }) => {
    const what = whyNoPath(text);
    return what === null ? [] : [{ path, what, hint: 'Give a path from the event file, inside its folder' }];
  });
}

/** The texts that stand in these fields, or in lists in them, each with its place. */
function textsIn(
  value: unknown,
  fields: readonly string[],
  place: readonly string[],
): { path: string[]; text: string }[] {
  const all = fieldsOf(value);
  return fields.flatMap((field) => {
    const one = all[field];
    if (typeof one === 'string') return [{ path: [...place, field], text: one }];
    return (Array.isArray(one) ? one : []).flatMap((text, i) =>
      typeof text === 'string' ? [{ path: [...place, field, String(i + 1)], text }] : [],
    );
  });
}

/** Why a path may not be used; null when it may. One spelling serves every system. */
export function whyNoPath(text: string): string | null {
  if (/^([\\/]|[A-Za-z]:)/.test(text)) return `“${text}” does not start at the event file`;
  if (text.split(/[\\/]/).includes('..')) return `“${text}” leads out of the event's folder`;
  if (text.includes('\\')) return `“${text}” holds a backslash: folders are parted by /`;
  return null;
}
