import type { AllBecause, EventRecord, EventRow, EventRun, TermsBecause } from '../../types.ts';
import { counted, limit, number } from '../words/number.ts';
import { capital, foreign, plain, type Sentence, say } from '../words/sentence.ts';
import { asking, gradeSaid, lackSaid, numberSaid, titleOf } from './words.ts';

/** Every sentence about a run on a repository: its summary, and the marks on files. */

const allBecause: Readonly<Record<AllBecause, string>> = {
  'no change': 'what started this run changes no submission',
  'no repository': 'git knows no repository here',
  'first push': 'this is the first push of the branch, and there is nothing to compare it with',
  'no base':
    'the commit to compare with is not in the checkout (actions/checkout brings it with “fetch-depth: 2” on a pull request, “fetch-depth: 0” on a push)',
  'too much': 'more has changed than can be told apart',
  workflow: 'the workflow itself changes, and with it perhaps what audits',
  'event new': 'the event is new, or went by another name',
  'event was wrong': 'the event could not be read as it was before',
  part: 'a part is a part of the whole event',
};

const termsBecause: Readonly<Record<TermsBecause, string>> = {
  'no base': 'the base branch is not in the checkout (actions/checkout brings it with “fetch-depth: 2”)',
  'event new': 'the base branch does not hold this event',
  'rules new': 'the base branch does not hold the rules or fingerprints that are named',
  'too much': 'those of the base branch could not be laid out',
};

const inShort = (commit: string) => commit.slice(0, 12);

/** Whose submissions were audited, and why. */
export function scopeSaid({ scope, entries }: EventRun, { rows }: EventRecord): Sentence {
  if (scope.kind === 'all') {
    const because = scope.because === null ? '' : `, since ${allBecause[scope.because]}`;
    return [`Every submission was audited${because}.`];
  }
  const gone = scope.gone.length === 0 ? '' : ` No longer there: ${scope.gone.join(', ')}.`;
  return rows.length === 0
    ? [`No submission changed since commit ${inShort(scope.since)}: none was audited.${gone}`]
    : [
        `Only what changed since commit ${inShort(scope.since)} was audited: ${number(rows.length)} of ${counted(entries, 'submission')}.${gone}`,
      ];
}

/** By whose event file and rules. */
export function termsSaid({ terms }: EventRun): string {
  if (terms.from === 'base') {
    const altered =
      terms.altered === true ? ' This change would alter them: what it alters counts once it is merged.' : '';
    return `Judged by the event file, results and rules of the base branch, at commit ${inShort(terms.commit)}.${altered}`;
  }
  return terms.because === null
    ? 'Judged by the event file, results and rules of the checkout.'
    : `Judged by the event file, results and rules of the checkout itself, although those of the base branch were asked for, since ${termsBecause[terms.because]}. Look at what this change does to them.`;
}

/** What could not be checked, each with its reason or remedy. */
export function uncheckedSaid(run: EventRun, { rows, part }: EventRecord): readonly Sentence[] {
  const numbers = (of: readonly EventRow[]) => of.map((row) => row.number).join(', ');
  const having = (has: (row: EventRow) => boolean) => rows.filter(has);
  const lost = having(({ state }) => state === 'not audited');
  const lacking = having(({ state, missing }) => state === 'audited' && missing.length > 0);
  const broken = having(({ reach }) => reach.failed > 0);
  const { single, unmatched, compared, scope } = run;
  const links = scope.kind === 'changed' ? scope.links : 0;
  return [
    lost.length > 0 && say`Not audited: ${numbers(lost)}. ${reasons(lost)}`,
    lacking.length > 0 && say`What the event requires is not all there: ${numbers(lacking)}.`,
    single > 0 &&
      say`Without a second recording: ${number(single)} of ${number(rows.length)}. Most of the checks on the meter itself cannot be made there.`,
    broken.length > 0 && say`A check broke, by a fault of the program: ${numbers(broken)}.`,
    unmatched > 0 &&
      say`${counted(unmatched, 'file')} could not be matched with a rider. The command “wattassay event … --check” names them, with the fix.`,
    links > 0 && say`${counted(links, 'link')} passed over: hand in the files themselves.`,
    part !== null && say`What only the event as a whole shows is looked at when its parts are merged.`,
    compared === false &&
      say`Whether somebody else handed in the same recording: there are no fingerprints of this event to compare with. An audit of the whole event writes fingerprints.json; keep it beside the event file.`,
    part === null &&
      compared !== null &&
      say`What asks for the whole field: one device in several hands, and findings that so many share that the event explains them better than the riders.`,
    ...run.remarks.map((one) => capital([`${one}.`])),
  ].filter((one) => one !== false);
}

/** Why submissions were not audited, each reason once. */
function reasons(rows: readonly EventRow[]): Sentence {
  const all = [...new Set(rows.flatMap(({ why }) => why ?? []))];
  const [first, ...rest] = all.slice(0, 3).map((one) => foreign(one));
  return first === undefined ? [''] : [first, ...rest.flatMap((one) => [' ', one])];
}

/** "at least 8 %" of the level that a finding reached; null where it sets no number. */
export function limitSaid({ level, limits, unit }: EventRow['findings'][number]): string | null {
  const reached = limits[level];
  return reached === undefined ? null : limit(reached, unit);
}

const question =
  'This is a question, not a verdict: the report shows the evidence, the innocent explanations and what would settle it.';

/** A mark on a submitted file: what is asked, and that it is a question; of one that was not audited, why. */
export function markSaid(record: EventRecord, row: EventRow): string {
  const seen = asking(row).map((one) => {
    const bound = limitSaid(one);
    const about = [numberSaid(one), bound === null ? '' : `limit ${bound}`].filter((part) => part !== '');
    return `${titleOf(record, one.rule)}${about.length === 0 ? '' : ` (${about.join('; ')})`}`;
  });
  const shared = (record.crossChecks?.shared ?? [])
    .filter(({ a, b, level }) => level !== 'note' && (a.number === row.number || b.number === row.number))
    .map(({ rule }) => titleOf(record, rule));
  const lack = lackSaid(row);
  const said = [...seen, ...new Set(shared)].join('. ');
  return [
    `Submission ${row.number}: ${gradeSaid(row).toLowerCase()}.`,
    ...(said === '' ? [] : [`${said}.`]),
    ...(lack === null ? [] : [plain(lack)]),
    ...(row.state === 'audited' ? [question] : []),
  ].join(' ');
}

/** Stands for the marks that are too many. */
export function moreMarksSaid(count: number): string {
  return `${counted(count, 'submission')} more: the summary of the job lists them.`;
}

/** Where everything is. */
export function folderSaid({ folder }: EventRun, { part }: EventRecord): Sentence {
  return part === null
    ? say`Everything is in the folder ${foreign(folder)}: overview.html shows every submission, with its evidence and a draft of the letter. It stays on this runner unless a later step uploads it.`
    : say`This part is in the folder ${foreign(folder)}: upload it, and put the parts together with “wattassay merge”.`;
}

/** Why a job fails that was told to from a level on. */
export function failedSaid(level: string): string {
  return `A submission reached “${level}”, the level from which this job was told to fail, or is incomplete: the summary shows which. It is a question, not a verdict.`;
}

/** Why there is no summary. */
export const stoppedSaid = 'The event could not be audited: the log says why.';
