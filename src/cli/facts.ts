import { parseJson } from '../json.ts';
import { raceFrom, riderFrom } from '../judge/facts.ts';
import { Problem } from '../problem.ts';
import type { DeviceFacts, RaceFacts, RiderFacts } from '../types.ts';
import { type Input, readText } from './inputs.ts';
import type { Io } from './io.ts';

/** Facts as given on the command line; a file may give them too, and an option goes before its file. */
export interface FactOptions {
  readonly rider?: string;
  readonly race?: string;
  readonly mass?: number;
  readonly class?: string;
  readonly device?: readonly string[];
  readonly start?: string;
  readonly finish?: string;
  readonly kind?: string;
  readonly require?: readonly string[];
}

export interface Given<T> {
  readonly facts: T;
  /** The file they came from; none when all came from options. */
  readonly inputs: readonly Input[];
}

/** Where facts that no file gave are said to stand. */
const onCommandLine = 'options';

export async function riderGiven(io: Io, given: FactOptions): Promise<Given<RiderFacts>> {
  const { value, inputs } = await fileGiven(io, given.rider, 'rider', riderFrom);
  const named = (given.device ?? []).map(deviceFrom);
  const names = new Set(named.map((device) => device.name));
  const devices = [...(value.devices ?? []).filter((device) => !names.has(device.name)), ...named];
  const changes = present({
    massKg: given.mass,
    recordClass: given.class,
    devices: named.length > 0 ? devices : undefined,
  });
  return { facts: await changed(value, changes, riderFrom), inputs };
}

export async function raceGiven(io: Io, given: FactOptions): Promise<Given<RaceFacts>> {
  const { value, inputs } = await fileGiven(io, given.race, 'race', raceFrom);
  const { start, finish, kind, require: required } = given;
  return { facts: await changed(value, present({ start, finish, kind, required }), raceFrom), inputs };
}

type Check<T> = (value: unknown, where: string) => Promise<T>;

async function fileGiven<T extends object>(
  io: Io,
  file: string | undefined,
  role: string,
  check: Check<T>,
): Promise<{ value: Partial<T>; inputs: readonly Input[] }> {
  if (file === undefined) return { value: {}, inputs: [] };
  const { text, input } = await readText(io, file, role);
  return { value: await check(parseJson(text, 'facts-wrong', file), file), inputs: [input] };
}

/** Checked again only when an option changed something: the schema is not loaded for nothing. */
async function changed<T>(value: Partial<T>, changes: object, check: Check<T>): Promise<T> {
  if (Object.keys(changes).length === 0) return value as T;
  return check({ ...value, ...changes }, onCommandLine);
}

function present(fields: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

/** "primary=trainer,2,1.5": the last = parts, so that a file's name may hold one. */
function deviceFrom(text: string): DeviceFacts {
  const match = /^(?<name>.+)=(?<place>[^=,]*),(?<sides>[^=,]*),(?<tolerance>[^=,]*)$/.exec(text);
  if (match?.groups === undefined) {
    throw new Problem({
      code: 'usage',
      what: `“${text}” does not describe a meter`,
      where: '--device',
      hint: 'Give its recording, place, sides and tolerance in per cent, like primary=trainer,2,1.5',
    });
  }
  const { name, place, sides, tolerance } = match.groups;
  if (!Number.isFinite(Number(tolerance)) || tolerance!.trim() === '') {
    throw new Problem({
      code: 'usage',
      what: `“${tolerance}” is no number of per cent`,
      where: '--device',
      hint: 'Give the tolerance as the maker states it, like 1.5',
    });
  }
  const device = { name, place, sides: Number(sides), tolerancePercent: Number(tolerance) };
  return device as DeviceFacts;
}
