import type { Entry, EventFile, EventRider, EventTerms, Requirement } from '../types.ts';
import { sameNumber } from './event-file.ts';
import type { Matched } from './match.ts';

/** Minutes over which the line in W/kg is held against a rider, where the event names none. */
const lineMinutes = 20;

/** An entry before its file of facts is opened. */
export type DraftEntry = Omit<Entry, 'rider' | 'factInputs'> & { readonly facts: EventRider['facts'] | null };

/** Riders of the event file, and what the results add to them; numbers of either list count. */
export function joinLists(own: readonly EventRider[], results: readonly EventRider[]): readonly EventRider[] {
  const joined = new Map(own.map((rider) => [sameNumber(rider.number), rider]));
  for (const rider of results) {
    const before = joined.get(sameNumber(rider.number));
    // What the organiser wrote into the event file by hand goes before a list from elsewhere.
    joined.set(sameNumber(rider.number), before === undefined ? rider : { ...rider, ...before });
  }
  return [...joined.values()];
}

/** One entry a rider, in the order of the numbers, whatever order they were listed or found in. */
export function draftEntries(
  file: EventFile,
  riders: readonly EventRider[],
  matched: readonly Matched[],
): readonly DraftEntry[] {
  const listed = new Map(riders.map((rider) => [sameNumber(rider.number), rider]));
  const found = new Map(matched.map((one) => [sameNumber(one.number), one]));
  const keys = [...new Set([...listed.keys(), ...found.keys()])];
  return keys
    .map((key) => draft(file, listed.get(key) ?? { number: found.get(key)!.number }, found.get(key)))
    .sort((a, b) => byNumber(a.number, b.number));
}

/** By code unit, as every system has it. */
export const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** 2 before 11, and B7 after both. */
export function byNumber(a: string, b: string): number {
  const [x, y] = [Number(a), Number(b)];
  if (Number.isNaN(x) !== Number.isNaN(y)) return Number.isNaN(x) ? 1 : -1;
  if (!Number.isNaN(x) && x !== y) return x - y;
  return byText(a, b);
}

function draft(file: EventFile, rider: EventRider, found: Matched | undefined): DraftEntry {
  const terms = termsOf(file, rider.category);
  const own = rider.primary !== undefined;
  return {
    number: rider.number,
    name: rider.name ?? null,
    id: rider.id ?? null,
    category: rider.category ?? null,
    place: rider.place ?? null,
    race: raceOf(terms, rider.place),
    rules: terms.rules ?? null,
    primary: rider.primary ?? found?.primary ?? null,
    seconds: rider.seconds ?? (own ? [] : (found?.seconds ?? [])),
    history: rider.history ?? found?.history ?? null,
    facts: rider.facts ?? found?.facts ?? null,
    doubt: own ? null : (found?.doubt ?? null),
    secondsAbove: lineOf(terms),
  };
}

/** The event's terms with what differs for a category. */
export function termsOf(file: EventFile, category: string | undefined): EventTerms {
  const own =
    category !== undefined && file.categories !== undefined && Object.hasOwn(file.categories, category)
      ? file.categories[category]!
      : {};
  const { start, finish, kind, required, rules, secondRecordings } = { ...file, ...own };
  return present({ start, finish, kind, required, rules, secondRecordings }) as EventTerms;
}

function raceOf(
  { rules: _, secondRecordings, ...race }: EventTerms,
  place: number | undefined,
): Entry['race'] {
  const { top } = secondRecordings ?? {};
  const asked = top !== undefined && place !== undefined && place <= top;
  return asked ? withSecond(race) : race;
}

/** The same race, a second recording required. */
export function withSecond(race: Entry['race']): Entry['race'] {
  const required: readonly Requirement[] = [
    ...new Set([...(race.required ?? []), 'second recording' as const]),
  ];
  return { ...race, required };
}

function lineOf({ secondRecordings }: EventTerms): Entry['secondsAbove'] {
  const { aboveWattsPerKg, minutes = lineMinutes } = secondRecordings ?? {};
  return aboveWattsPerKg === undefined ? null : { wattsPerKg: aboveWattsPerKg, minutes };
}

function present(fields: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

/** Second recordings that the event asks for and that nobody can be asked for, since something is not known. */
export function unaskable(file: EventFile, entries: readonly Entry[]): readonly string[] {
  const categories = [...new Set(entries.map(({ category }) => category))];
  return categories.flatMap((category) => {
    const members = entries.filter((one) => one.category === category);
    const { secondRecordings } = termsOf(file, category ?? undefined);
    const of = category === null ? '' : ` of category ${category}`;
    const said: string[] = [];
    if (secondRecordings?.top !== undefined && members.every(({ place }) => place === null)) {
      said.push(
        `the first ${secondRecordings.top}${of} are asked for a second recording, but no place is known: give the results`,
      );
    }
    const light = members.filter(({ rider, primary }) => primary !== null && rider.massKg === undefined);
    if (secondRecordings?.aboveWattsPerKg !== undefined && light.length > 0) {
      const numbers = light.map(({ number }) => number).join(', ');
      said.push(
        `whoever rides above ${secondRecordings.aboveWattsPerKg} W/kg${of} is asked for a second recording, but the body mass of these is not known: ${numbers}`,
      );
    }
    return said;
  });
}
