import type {
  Change,
  EventFinding,
  EventRecord,
  EventRow,
  FieldEffect,
  FieldRange,
  RepeatedDifference,
  SharedContent,
  SharedDevice,
  Standing,
} from '../../types.ts';
import { gradeWord } from '../words/grade.ts';
import { requirementNames } from '../words/names.ts';
import { counted, duration, number, quantity, range } from '../words/number.ts';
import { foreign, join, list, type Sentence, say } from '../words/sentence.ts';

/** Every sentence that is said of an event as a whole. */

/** Where a matter stands between people, in few words. */
export const standingWords: Readonly<Record<Standing, string>> = {
  'to decide': 'to decide',
  'to ask': 'to ask',
  asked: 'answer awaited',
  decided: 'decided',
  explained: 'explanation accepted',
};

export const changeWords: Readonly<Record<Change, string>> = {
  new: 'new',
  better: 'better',
  worse: 'worse',
  same: 'same',
  gone: 'gone',
};

/** The grade as a word; what could not be audited never looks like anything else. */
export function gradeSaid({ state, grade }: EventRow): string {
  return state === 'audited' ? gradeWord(grade) : 'Not audited';
}

export function riderSaid({ number: bib, name }: EventRow): Sentence {
  return name === null ? [bib] : say`${bib} ${foreign(name)}`;
}

/** "Clear 12, query 3, …": how many of each grade, the gravest first. */
export function countsSaid({ rows }: EventRecord): string {
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(gradeSaid(row), (counts.get(gradeSaid(row)) ?? 0) + 1);
  return ['Refer', 'Query', 'Incomplete', 'Not audited', 'Clear']
    .filter((word) => counts.has(word))
    .map((word) => `${word} ${number(counts.get(word)!)}`)
    .join(', ');
}

/** "in 24 of 31 checks". */
export function reachInShort({ reach }: EventRow): string {
  return `${reach.judged} of ${reach.judged + reach.notApplicable + reach.failed}`;
}

/** Why a row has nothing to show, or what the event requires and does not have; null when all is there. */
export function lackSaid({ why, missing }: EventRow): Sentence | null {
  if (why !== null) return [foreign(why)];
  if (missing.length === 0) return null;
  return say`Missing: ${list(missing.map((one) => requirementNames[one]))}.`;
}

export function numberSaid({ value, unit, interval }: EventFinding): string {
  if (value === null || interval === null) return '';
  const between = range(interval, unit);
  return between === null ? quantity(value, unit) : `${quantity(value, unit)} (${between})`;
}

/** Where a number lies in its field: "The field's median is 1.02; 90 of 100 lie from 0.97 to 1.08." */
export function fieldSaid({ count, median, low, high, unit }: FieldRange): string {
  const across = range([low, high], unit) ?? quantity(low, unit);
  return `The field's median is ${quantity(median, unit)}; nine in ten of ${number(count)} lie from ${across}.`;
}

export function titleOf({ titles }: EventRecord, rule: string): string {
  if (rule === 'missing') return 'What the event requires';
  return Object.hasOwn(titles, rule) ? titles[rule]!.title : rule;
}

const ofCategory = (category: string | null): Sentence =>
  category === null ? [''] : say` of category ${foreign(category)}`;

export function sharedSaid({ a, b, seconds }: SharedContent): Sentence {
  const same = say`at least ${duration(seconds)} are the same, sample by sample, `;
  if (b.event === null) {
    return say`Riders ${a.number} (${a.role}) and ${b.number ?? ''} (${b.role}): ${same}in both recordings.`;
  }
  return say`Rider ${a.number} (${a.role}): ${same}as in the recording ${b.role} of ${foreign(b.event)}.`;
}

export function deviceSaid({ device, riders }: SharedDevice): Sentence {
  return say`The device ${foreign(device)} recorded at the same time for riders ${list(riders.map((one) => [one]))}.`;
}

/** Causes common to all, by the rule that so many raise: looked at before any rider is asked. */
const commonCauses: Readonly<Record<string, string>> = {
  'outside-race-window': 'Look at the start and finish in the event file, and at their offset from UTC.',
  'clock-fault': 'Look at the software that the recordings come from: a version of it may write wrong times.',
  'implied-mass': 'Look at the course: gradients that are off make every rider look lighter or heavier.',
  'different-ride': 'Look at how files were received: they may have been mixed up on the way.',
};

export function effectSaid(record: EventRecord, { category, rule, of, riders }: FieldEffect): Sentence {
  const cause =
    commonCauses[rule] ?? 'Look for a cause that is common to them before you ask them one by one.';
  return say`${titleOf(record, rule)}: ${counted(riders.length, 'submission')} of ${number(of)}${ofCategory(category)}. So many at once say more about the event than about the riders. ${cause}`;
}

export function repeatedSaid(
  record: EventRecord,
  { number: bib, rule, values }: RepeatedDifference,
): Sentence {
  const before = values.map(({ event, value, unit }) => say`${quantity(value, unit)} at ${foreign(event)}`);
  return say`Rider ${bib}: ${titleOf(record, rule)}, in the same direction as before: ${join([list(before)])}.`;
}

/** Everything that only the event shows, in the order of weight, with the riders that it is about. */
export function crossCheckLines(
  record: EventRecord,
): readonly { readonly kind: string; readonly riders: readonly string[]; readonly said: Sentence }[] {
  const { crossChecks } = record;
  if (crossChecks === null) return [];
  return [
    ...crossChecks.effects.map((one) => ({
      kind: 'the event itself',
      riders: one.riders,
      said: effectSaid(record, one),
    })),
    ...crossChecks.shared.map((one) => ({
      kind: one.level,
      riders: [one.a.number, ...(one.b.number === null ? [] : [one.b.number])],
      said: sharedSaid(one),
    })),
    ...crossChecks.devices.map((one) => ({ kind: 'device', riders: one.riders, said: deviceSaid(one) })),
    ...crossChecks.repeated.map((one) => ({
      kind: 'again',
      riders: [one.number],
      said: repeatedSaid(record, one),
    })),
  ];
}

/** "3 to decide, 5 to ask, 2 answer awaited"; null when nothing is open. */
export function openSaid(standings: readonly Standing[]): string | null {
  const open = (['to decide', 'to ask', 'asked'] as const)
    .map((standing) => [standing, standings.filter((one) => one === standing).length] as const)
    .filter(([, count]) => count > 0);
  return open.length === 0
    ? null
    : open.map(([standing, count]) => `${number(count)} ${standingWords[standing]}`).join(', ');
}
