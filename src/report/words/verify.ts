import { type Difference, sameJson } from '../../differences.ts';
import { shorten } from '../clean.ts';
import type { Unlike } from '../compare.ts';
import { factNames } from './names.ts';
import { counted, number } from './number.ts';

/** Things named one by one; of the others it is said how many there are. */
const mostItems = 10;
const mostFields = 3;
/** Characters of a value that is quoted. */
const longestValue = 40;

/** What verifying a report came to. */
export interface Verified {
  readonly files: number;
  readonly rules: string;
  /** Same text; same values in another text; other values; other values that body mass may account for. */
  readonly outcome: 'same' | 'same values' | 'differs' | 'mass unknown';
  readonly redacted: boolean;
  readonly unlike: readonly Unlike[];
  /** Fields of facts that none of the files gives. */
  readonly facts: readonly string[];
  /** Second recordings that could not be opened when the report was made. */
  readonly unopened: number;
}

const factSaid = (field: string) =>
  Object.hasOwn(factNames, field) ? factNames[field]! : shorten(field, 30);

/** The outcome in lines, the answer in the first. */
export function verifiedSaid(verified: Verified): readonly string[] {
  const { files, rules, outcome, redacted, unlike, facts, unopened } = verified;
  const from = `${counted(files, 'file')} and the rules “${rules}”, found by checksum, give`;
  return [
    ...{
      same: [`The same to the byte: ${from} this report again.`],
      'same values': [
        `Not the same text: ${from} every value of this report again, but the file was changed after it was written: its layout, the order of its fields, or a field that stands twice.`,
      ],
      differs: [
        `Not the same: ${from} another result in ${counted(unlike.length, 'place')}.`,
        ...unlikeSaid(unlike),
      ],
      'mass unknown': [
        `The same as far as it can be compared: ${from} another result only in ${counted(unlike.length, 'place')} that may rest on body mass, which a redacted report leaves out. Give it as --mass to compare these too.`,
        ...unlikeSaid(unlike),
      ],
    }[outcome],
    ...(redacted
      ? [
          'The report is redacted: names, heart rate and body mass are in neither of the two that were compared.',
        ]
      : []),
    ...(facts.length === 0
      ? []
      : [`Taken as the report states it, for none of the files says so: ${facts.map(factSaid).join(', ')}.`]),
    ...(unopened === 0
      ? []
      : [
          `${counted(unopened, 'second recording')} could not be opened when the report was made: that is taken as the report states it.`,
        ]),
  ];
}

function unlikeSaid(unlike: readonly Unlike[]): string[] {
  const more = unlike.length - mostItems;
  return [
    ...unlike.slice(0, mostItems).map((one) => `  ${itemSaid(one)}`),
    ...(more > 0 ? [`  and ${counted(more, 'more place', 'more places')}`] : []),
  ];
}

/** Lists have members: one of them is meant. */
const members: Readonly<Record<string, string>> = {
  inputs: 'input',
  findings: 'finding',
  measurements: 'measurement',
  alignment: 'alignment',
  charts: 'chart',
};

function itemSaid({ kind, item, fields }: Unlike): string {
  const name = item === null ? kind : `${members[kind] ?? kind} ${shorten(item, 60)}`;
  const only = fields[0];
  if (only !== undefined && only.path.length === 0) return `${shorten(name, 60)}: ${changeSaid(only)}`;
  const said = fields
    .slice(0, mostFields)
    .map((one) => `${shorten(one.path.join(' › '), 60)} ${changeSaid(one)}`);
  const more = fields.length - mostFields;
  return `${shorten(name, 80)}: ${said.join('; ')}${more > 0 ? `; and ${counted(more, 'more field')}` : ''}`;
}

/** "stated query, found refer". */
function changeSaid({ before, after }: Difference): string {
  if (before === undefined) return 'not stated, but found';
  if (after === undefined) return 'stated, but not found';
  if (Array.isArray(before) && Array.isArray(after) && Math.max(before.length, after.length) > 3) {
    return listSaid(before, after);
  }
  return `stated ${valueSaid(before)}, found ${valueSaid(after)}`;
}

function listSaid(before: readonly unknown[], after: readonly unknown[]): string {
  if (before.length !== after.length) {
    return `stated ${counted(before.length, 'item')}, found ${number(after.length)}`;
  }
  const off = before.flatMap((value, i) => (sameJson(value, after[i]) ? [] : [i]));
  const at = off[0] ?? 0;
  return `${number(off.length)} of ${counted(before.length, 'item')}, the first at place ${number(at + 1)}: stated ${valueSaid(before[at])}, found ${valueSaid(after[at])}`;
}

function valueSaid(value: unknown): string {
  return shorten(
    typeof value === 'string' ? `“${value}”` : (JSON.stringify(value) ?? 'nothing'),
    longestValue,
  );
}
