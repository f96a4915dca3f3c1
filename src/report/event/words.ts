import type {
  besideRules,
  Change,
  CrossChecks,
  EventFinding,
  EventRecord,
  EventRow,
  EventView,
  FieldEffect,
  FieldRange,
  Matter,
  RepeatedDifference,
  SharedContent,
  SharedDevice,
  Standing,
} from '../../types.ts';
import { shorten, showable } from '../clean.ts';
import { gradeWord } from '../words/grade.ts';
import { requirementNames } from '../words/names.ts';
import { counted, duration, number, quantity, range } from '../words/number.ts';
import { foreign, foreignText, join, list, type Sentence, say } from '../words/sentence.ts';
import { answerDue } from './order.ts';

/** Every sentence that is said of an event as a whole. */

/** Where a matter stands between people, in few words. */
export const standingWords: Readonly<Record<Standing, string>> = {
  overdue: 'answer overdue',
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

const notAudited = 'Not audited';

/** The grade as a word; what could not be audited never looks like anything else. */
export function gradeSaid({ state, grade }: EventRow): string {
  return state === 'audited' ? gradeWord(grade) : notAudited;
}

/** The gravest first; what could not be audited never hides behind another grade. */
export const gradesSaid: readonly string[] = [
  gradeWord('refer'),
  gradeWord('query'),
  gradeWord('incomplete'),
  notAudited,
  gradeWord('clear'),
];

/** What asks for something in a submission, in the order in which it is told. */
export const asking = ({ findings }: EventRow) =>
  findings.filter(({ level, explainedBy }) => level !== 'note' && explainedBy === null);

export function riderSaid({ number: bib, name }: EventRow): Sentence {
  return name === null ? [bib] : say`${bib} ${foreign(name)}`;
}

/** "Clear 12, query 3, …": how many of each grade, the gravest first. */
export function countsSaid({ rows }: EventRecord): string {
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(gradeSaid(row), (counts.get(gradeSaid(row)) ?? 0) + 1);
  return gradesSaid
    .filter((word) => counts.has(word))
    .map((word) => `${word} ${number(counts.get(word)!)}`)
    .join(', ');
}

/** "in 24 of 31 checks". */
export function reachInShort({ reach }: EventRow): string {
  return `${reach.judged} of ${reach.judged + reach.notApplicable + reach.failed}`;
}

/** Characters of a sentence that says why nothing was audited. */
const longestWhy = 400;

/** Why a row has nothing to show, or what the event requires and does not have; null when all is there. */
export function lackSaid({ why, missing }: EventRow): Sentence | null {
  // A sentence of ours with names of files in it: longer than a name may be, and not theirs to quote.
  if (why !== null) return [shorten(showable(why), longestWhy)];
  if (missing.length === 0) return null;
  return say`Missing: ${list(missing.map((one) => requirementNames[one]))}.`;
}

export function numberSaid({ value, unit, interval }: EventFinding): string {
  if (value === null || interval === null) return '';
  const between = range(interval, unit);
  return between === null ? quantity(value, unit) : `${quantity(value, unit)} (${between})`;
}

/** A finding in few words: "Power repeats a target: 97.1 %". */
export function findingSaid(record: EventRecord, finding: EventFinding): string {
  const shown = numberSaid(finding);
  const title = titleOf(record, finding.rule);
  return shown === '' ? title : `${title}: ${shown}`;
}

/** Where a number lies in its field: "The field's median is 1.02; 90 of 100 lie from 0.97 to 1.08." */
export function fieldSaid({ count, median, low, high, unit }: FieldRange): string {
  const across = range([low, high], unit) ?? quantity(low, unit);
  return `The field's median is ${quantity(median, unit)}; nine in ten of ${number(count)} lie from ${across}.`;
}

const besideRulesNames: Readonly<Record<(typeof besideRules)[number], string>> = {
  missing: 'What the event requires',
  'shared-device': 'One device in several hands',
};

export function titleOf({ titles }: EventRecord, rule: string): string {
  if (Object.hasOwn(besideRulesNames, rule)) return besideRulesNames[rule as keyof typeof besideRulesNames];
  return Object.hasOwn(titles, rule) ? titles[rule]!.title : rule;
}

const ofCategory = (category: string | null): Sentence =>
  category === null ? [''] : say` of category ${foreign(category)}`;

export function sharedSaid({ a, b, alike }: SharedContent): Sentence {
  const same = alikeSaid(alike);
  if (b.event === null) {
    return say`Riders ${a.number} (${a.role}) and ${b.number ?? ''} (${b.role}): the same in both recordings are ${same}.`;
  }
  return say`Rider ${a.number} (${a.role}): the same as in the recording ${b.role} of ${foreign(b.event)} are ${same}.`;
}

/** Each with its own time: power that is the same for a while may only rise and fall alike for longer. */
function alikeSaid(alike: SharedContent['alike']): Sentence {
  const multiplied = alike.every(({ what }) => what !== 'power');
  return list(
    alike.map(({ what, seconds }) =>
      what === 'rises and falls'
        ? say`at least ${duration(seconds)} of rises and falls of power${multiplied ? ', as where power was multiplied' : ''}`
        : say`at least ${duration(seconds)} of ${what}, sample by sample`,
    ),
  );
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

function effectSaid(record: EventRecord, { category, rule, of, riders }: FieldEffect): Sentence {
  const cause =
    commonCauses[rule] ?? 'Look for a cause that is common to them before you ask them one by one.';
  return say`${titleOf(record, rule)}: ${counted(riders.length, 'submission')} of ${number(of)}${ofCategory(category)}. So many at once say more about the event than about the riders. ${cause}`;
}

/** The same beside a rider who shares it; null where the finding is the rider's alone. */
export function effectInShort(
  { crossChecks }: EventRecord,
  { number: bib }: EventRow,
  rule: string,
): string | null {
  const found = crossChecks?.effects.find((one) => one.rule === rule && one.riders.includes(bib));
  return found === undefined
    ? null
    : `as of ${number(found.riders.length)} of ${number(found.of)}: look at the event first`;
}

function repeatedSaid(record: EventRecord, { number: bib, rule, values }: RepeatedDifference): Sentence {
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

/** Rules that only the event as a whole raised about a rider. */
export function onlyOfEvent({ findings }: EventRow, matters: readonly Matter[]): readonly string[] {
  const own = new Set(['missing', ...findings.map(({ rule }) => rule)]);
  return matters.map(({ rule }) => rule).filter((rule) => !own.has(rule));
}

/** What only the event shows about one rider, in words that name no other. */
export function togetherSaid(record: EventRecord, bib: string): readonly Sentence[] {
  const { crossChecks } = record;
  if (crossChecks === null) return [];
  const own = (riders: readonly string[]) => riders.includes(bib);
  const masked = (other: string) => (other === bib ? bib : 'another rider');
  const hidden: CrossChecks = {
    ...crossChecks,
    effects: crossChecks.effects.filter(({ riders }) => own(riders)),
    shared: crossChecks.shared
      .filter(({ a, b }) => a.number === bib || b.number === bib)
      .map((one) => ({
        ...one,
        a: { ...one.a, number: masked(one.a.number) },
        b: { ...one.b, number: one.b.number === null ? null : masked(one.b.number) },
      })),
    devices: crossChecks.devices
      .filter(({ riders }) => own(riders))
      .map((one) => ({ ...one, riders: [...new Set(one.riders.map(masked))] })),
    repeated: crossChecks.repeated.filter(({ number: other }) => other === bib),
  };
  return crossCheckLines({ ...record, crossChecks: hidden }).map(({ said }) => said);
}

/** What people did about a matter, in a few words: "due 2026-03-18", "explained, by jury, until 2026-09-30". */
export function doneSaid({ standing, decision }: Matter, event: string): readonly string[] {
  if (decision === null) return [];
  const elsewhere = decision.event !== undefined && decision.event !== event;
  const { due, decision: made, by, appeal, until } = decision;
  return [
    due !== undefined && (standing === 'asked' || standing === 'overdue') ? `due ${due}` : null,
    // That it was explained is said by how it stands.
    made === undefined || standing === 'explained' ? null : made,
    elsewhere ? `at ${foreignText(decision.event!)}` : null,
    by === undefined ? null : `by ${foreignText(by)}`,
    appeal === undefined ? null : `appeal ${appeal}`,
    until === undefined ? null : `until ${until}`,
  ].filter((one) => one !== null);
}

/** How many matters stand so: "3 to decide", "1 answer awaited". */
const openCounts = {
  overdue: (count: number) => `${counted(count, 'answer')} overdue`,
  'to decide': (count: number) => `${number(count)} to decide`,
  'to ask': (count: number) => `${number(count)} to ask`,
  asked: (count: number) => `${counted(count, 'answer')} awaited`,
} as const satisfies Partial<Record<Standing, unknown>>;

/** "Open on 2026-03-20: 1 answer overdue, 3 to decide."; the day where it matters: where answers are due. */
export function openSaid({ matters, today }: EventView): string {
  const all = [...matters.values()].flat();
  const counts = (Object.keys(openCounts) as (keyof typeof openCounts)[])
    .map((standing) => [standing, all.filter((one) => one.standing === standing).length] as const)
    .filter(([, count]) => count > 0)
    .map(([standing, count]) => openCounts[standing](count));
  if (counts.length === 0) return 'Nothing is open.';
  return `Open${answerDue(all) === null ? '' : ` on ${today}`}: ${counts.join(', ')}.`;
}
