import { InvalidArgumentError, Option } from 'commander';
import { failLevels } from './status.ts';

/** Options that mean the same in every command that has them. */
export const options = {
  rider: () => new Option('--rider <file>', 'facts about the rider: body mass, record class, meters (JSON)'),
  race: () =>
    new Option('--race <file>', 'facts about the race: start, finish, kind, what it requires (JSON)'),
  rules: () => new Option('--rules <folder>', "an event's own rules, laid over the shipped ones"),
  earlier: () =>
    new Option(
      '--earlier <file>',
      'an earlier event to compare with: its event.json, with the fingerprints.json beside it, or these alone (repeatable)',
    ).argParser(each),
  since: () =>
    new Option('--since <folder>', 'an earlier run to compare with: what is new, better, worse, same'),
  failOn: () =>
    new Option('--fail-on <level>', 'exit with status 1 from this level on')
      .choices(failLevels)
      .default('refer'),
  redact: () =>
    new Option(
      '--redact',
      'keep names, heart rate and body mass out of every output, and still judge by them',
    ),
  day: (flags: string, description: string) => new Option(flags, description).argParser(day),
  today: () =>
    options.day(
      '--today <day>',
      'the day by which an answer is overdue, like 2026-03-14; this one where none is named',
    ),
  mass: () => new Option('--mass <kg>', "the rider's body mass").argParser(number),
  class: () =>
    new Option('--class <class>', 'whose published records to compare with').choices(['women', 'open']),
  device: () =>
    new Option(
      '--device <meter>',
      'a meter as declared: recording=place,sides,tolerance in %, like primary=trainer,2,1.5 (repeatable)',
    ).argParser(each),
  start: () => new Option('--start <time>', 'start of the race, like 2026-03-14T19:00:00+01:00'),
  finish: () => new Option('--finish <time>', 'finish of the race'),
  kind: () => new Option('--kind <kind>', 'what was ridden').choices(['race', 'time trial', 'workout']),
  require: () =>
    new Option(
      '--require <list>',
      'what the event requires, like power,cadence,"second recording"',
    ).argParser(list),
};

/** Collects a repeatable option, and a list with commas alike. */
export function each(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, value];
}

function list(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, ...value.split(',').map((item) => item.trim())];
}

/** This computer's calendar day. Only a door may look at the clock. */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function day(value: string): string {
  const known = /^\d{4}-\d\d-\d\d$/.test(value) && !Number.isNaN(Date.parse(value));
  if (!known || !new Date(value).toISOString().startsWith(value))
    throw new InvalidArgumentError('Give a day of the calendar, like 2026-03-14.');
  return value;
}

function number(value: string): number {
  const parsed = Number(value);
  if (value.trim() === '' || !Number.isFinite(parsed))
    throw new InvalidArgumentError('Give a number, like 68.5.');
  return parsed;
}
