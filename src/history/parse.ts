import { Problem } from '../problem.ts';
import { sizes } from '../sizes.ts';
import type { Climbed, Device, Flaw, LeftOut, LeftOutFile, PastRide, Place, Profile } from '../types.ts';
import { settings } from './settings.ts';

/**
 * Reads a profile from its JSON text. Nothing in the text is trusted: every field is checked, unknown
 * fields are refused.
 *
 * @throws Problem `profile-wrong` that names the field
 */
export function parseProfile(text: string): Profile {
  if (text.length > sizes.profile) wrong('the profile is too large', '');
  const top = record(parsed(text), '', ['profileVersion', 'durations', 'rides', 'leftOut']);
  if (top.profileVersion !== 1) {
    throw new Problem({
      code: 'profile-wrong',
      what: 'this profile is of a version that this program does not know',
      where: 'profileVersion',
      hint: 'Compile it again with this program, or update the program',
    });
  }
  const durations = list(top.durations, 'durations', 200).map((value, k) =>
    whole(value, `durations › ${k + 1}`, 1, 1e6),
  );
  if (durations.some((duration, k) => k > 0 && duration <= durations[k - 1]!))
    wrong('must rise from one to the next', 'durations');
  const rides = list(top.rides, 'rides', settings.mostRides).map((value, i) =>
    ride(value, `rides › ${i + 1}`, durations.length),
  );
  const leftOut = list(top.leftOut, 'leftOut', 10 * settings.mostRides).map((value, i) =>
    leftOutFile(value, `leftOut › ${i + 1}`),
  );
  return { profileVersion: 1, durations, rides, leftOut };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return wrong('this is no JSON', '');
  }
}

function ride(value: unknown, where: string, durations: number): PastRide {
  const field = record(value, where, rideFields);
  const from = number(field.from, `${where} › from`, -1e12, 1e12);
  return {
    sha256: digest(field.sha256, `${where} › sha256`),
    from,
    to: number(field.to, `${where} › to`, from, 1e12),
    device: device(field.device, `${where} › device`),
    ...(field.meter === undefined ? {} : { meter: device(field.meter, `${where} › meter`) }),
    ...(field.place === undefined
      ? {}
      : { place: optional(field.place, (place) => choice<Place>(place, `${where} › place`, places)) }),
    indoors: optional(field.indoors, (indoors) => boolean(indoors, `${where} › indoors`)),
    bests: readings(field.bests, `${where} › bests`, durations, 1e5),
    ...(field.heartRates === undefined
      ? {}
      : { heartRates: readings(field.heartRates, `${where} › heartRates`, durations, 300) }),
    ...(field.controlled === undefined
      ? {}
      : { controlled: number(field.controlled, `${where} › controlled`, 0, 1) }),
    ...(field.climbed === undefined ? {} : { climbed: climbed(field.climbed, `${where} › climbed`) }),
  };
}

function climbed(value: unknown, where: string): Climbed {
  const field = record(value, where, ['kg', 'stretches', 'scatter']);
  return {
    kg: number(field.kg, `${where} › kg`, 0, settings.climbed.mostKg),
    stretches: whole(field.stretches, `${where} › stretches`, 1, 1e6),
    scatter: number(field.scatter, `${where} › scatter`, 0, settings.climbed.mostScatter),
  };
}

const rideFields = [
  'from',
  'to',
  'sha256',
  'device',
  'meter',
  'place',
  'indoors',
  'controlled',
  'climbed',
  'bests',
  'heartRates',
];
const places: readonly Place[] = ['crank', 'pedal', 'hub', 'trainer'];
const reasons: readonly LeftOut[] = [
  'other sport',
  'no power',
  'unreadable',
  'duplicate',
  'flawed',
  'too short',
];
const flaws: readonly Flaw[] = ['impossible power', 'clock astray', 'mostly missing', 'frozen power'];

function leftOutFile(value: unknown, where: string): LeftOutFile {
  const field = record(value, where, ['name', 'why', 'sha256', 'flaw']);
  return {
    name: string(field.name, `${where} › name`),
    why: choice<LeftOut>(field.why, `${where} › why`, reasons),
    ...(field.sha256 === undefined ? {} : { sha256: digest(field.sha256, `${where} › sha256`) }),
    ...(field.flaw === undefined ? {} : { flaw: choice<Flaw>(field.flaw, `${where} › flaw`, flaws) }),
  };
}

function device(value: unknown, where: string): Device {
  const field = record(value, where, ['maker', 'product', 'serial']);
  const text = (name: string) => optional(field[name], (given) => string(given, `${where} › ${name}`));
  return { maker: text('maker'), product: text('product'), serial: text('serial') };
}

function readings(value: unknown, where: string, length: number, most: number): (number | null)[] {
  const values = list(value, where, length);
  if (values.length !== length) wrong(`must hold ${length} values, one for each duration`, where);
  return values.map((reading, k) =>
    optional(reading, (given) => number(given, `${where} › ${k + 1}`, 0, most)),
  );
}

/* The shapes that JSON can have, each refusing what it is not. */

function record(value: unknown, where: string, known: readonly string[]): Record<string, unknown> {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return wrong('must be an object in braces', where);
  const stray = Object.keys(value).find((name) => !known.includes(name));
  if (stray !== undefined)
    return wrong(`does not know the field ${JSON.stringify(stray.slice(0, 40))}`, where);
  return value as Record<string, unknown>;
}
function list(value: unknown, where: string, most: number): unknown[] {
  if (!Array.isArray(value)) return wrong('must be a list in square brackets', where);
  return value.length > most ? wrong(`must hold at most ${most} entries`, where) : value;
}
function number(value: unknown, where: string, least: number, most: number): number {
  const fits = typeof value === 'number' && value >= least && value <= most;
  return fits ? value : wrong(`must be a number from ${least} to ${most}`, where);
}
function whole(value: unknown, where: string, least: number, most: number): number {
  const given = number(value, where, least, most);
  return Number.isInteger(given) ? given : wrong('must be a whole number', where);
}
function string(value: unknown, where: string): string {
  const fits = typeof value === 'string' && value.length <= 1000;
  return fits ? value : wrong('must be a text of at most 1000 characters', where);
}
function digest(value: unknown, where: string): string {
  const fits = typeof value === 'string' && /^[0-9a-f]{64}$/.test(value);
  return fits ? value : wrong('must be a SHA-256 digest of 64 hex digits', where);
}
function boolean(value: unknown, where: string): boolean {
  return typeof value === 'boolean' ? value : wrong('must be true, false or null', where);
}
function choice<T extends string>(value: unknown, where: string, known: readonly T[]): T {
  const found = known.find((name) => name === value);
  return found ?? wrong(`must be one of ${known.map((name) => `"${name}"`).join(', ')}`, where);
}
function optional<T>(value: unknown, read: (value: unknown) => T): T | null {
  return value === null || value === undefined ? null : read(value);
}

function wrong(what: string, where: string): never {
  throw new Problem({
    code: 'profile-wrong',
    what,
    ...(where === '' ? {} : { where }),
    hint: 'Compile the profile again from the recordings',
  });
}
