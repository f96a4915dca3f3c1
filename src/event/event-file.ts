import { Problem } from '../problem.ts';
import { type Fault, faultsOf, problemsOf } from '../schema.ts';
import type { EventFile, EventRider } from '../types.ts';
import schema from './event.schema.json' with { type: 'json' };

/** How the file of an event is named; the text before it is the organiser's. */
export const eventFileEnding = '.event.json';

/** What a rider's number may look like: it names folders, so that nothing in it can lead elsewhere. */
export const numberPattern = /^[A-Za-z0-9][A-Za-z0-9_-]{0,19}$/;

/** Numbers that differ in case alone would share a folder on some systems. */
export const sameNumber = (number: string) => number.toLowerCase();

/**
 * An event file from parsed JSON, with everything that is wrong in it by itself; null when nothing could be
 * made of it. What its paths lead to is not looked at here.
 */
export async function eventFileFrom(
  value: unknown,
  where: string,
): Promise<{ file: EventFile | null; problems: readonly Problem[] }> {
  const faults = await faultsOf(schema, value);
  if (faults.length > 0) {
    const problems = problemsOf(faults, 'facts-wrong', where);
    return { file: null, problems: isRecord(value) ? [recordGiven(where)] : problems };
  }
  const { $schema: _, ...file } = value as EventFile & { $schema?: string };
  const found = [...riderFaults(file), ...pathFaults(file)];
  return { file, problems: problemsOf(found, 'facts-wrong', where) };
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

function riderFaults({ riders = [], categories }: EventFile): Fault[] {
  const seen = new Map<string, number>();
  return riders.flatMap(({ number, category }, index) => {
    const faults: Fault[] = [];
    const path = ['riders', String(index + 1)];
    const before = seen.get(sameNumber(number));
    if (before !== undefined) {
      faults.push({ path: [...path, 'number'], what: `rider ${before + 1} bears the number ${number} too` });
    }
    seen.set(sameNumber(number), index);
    if (category !== undefined && categories !== undefined && !Object.hasOwn(categories, category)) {
      faults.push({
        path: [...path, 'category'],
        what: `there is no category “${category}”`,
        hint: `The event has: ${Object.keys(categories).join(', ')}`,
      });
    }
    return faults;
  });
}

function pathFaults(file: EventFile): Fault[] {
  const named: [path: string[], text: string | undefined][] = [
    [['submissions'], file.submissions],
    [['results'], file.results],
    [['rules'], file.rules],
    ...Object.entries(file.categories ?? {}).map(([name, { rules }]): [string[], string | undefined] => [
      ['categories', name, 'rules'],
      rules,
    ]),
    ...(file.riders ?? []).flatMap((rider, i) =>
      riderPaths(rider).map(([field, text]): [string[], string] => [
        ['riders', String(i + 1), ...field],
        text,
      ]),
    ),
  ];
  return named.flatMap(([path, text]) => {
    const what = text === undefined ? null : whyNoPath(text);
    return what === null ? [] : [{ path, what, hint: 'Give a path from the event file, inside its folder' }];
  });
}

function riderPaths({ primary, seconds, history, facts }: EventRider): [field: string[], text: string][] {
  const all: [string[], unknown][] = [
    [['primary'], primary],
    ...(seconds ?? []).map((text, i): [string[], string] => [['seconds', String(i + 1)], text]),
    [['history'], history],
    [['facts'], facts],
  ];
  return all.filter((one): one is [string[], string] => typeof one[1] === 'string');
}

/** Why a path may not be used; null when it may. One spelling serves every system. */
export function whyNoPath(text: string): string | null {
  if (/^([\\/]|[A-Za-z]:)/.test(text)) return `“${text}” does not start at the event file`;
  if (text.split(/[\\/]/).includes('..')) return `“${text}” leads out of the event's folder`;
  if (text.includes('\\')) return `“${text}” holds a backslash: folders are parted by /`;
  return null;
}
