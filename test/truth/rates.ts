/** How often each rule asks honest riders, written beside the rule's source in its own file. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { BoundedShare, FalseAlarm, HonestShares, Rule } from '../../src/types.ts';
import type { Share } from './bounds.ts';
import type { Counted } from './counts.ts';
import { rateOf } from './results.ts';

const ending = '.rule.json';

/** Writes the rates of a run into the files of the rules; returns those that changed. */
export function writeRates(folder: string, counted: Counted, rules: readonly Rule[]): string[] {
  return rules.flatMap((rule) => {
    const file = path.join(folder, `${rule.id}${ending}`);
    const text = readFileSync(file, 'utf8');
    const rated = withFalseAlarm(text, falseAlarmOf(counted, rule));
    if (rated === text) return [];
    writeFileSync(file, rated);
    return [file];
  });
}

/** Null where the run says nothing: no limit that asks anybody, or no submission that it could be applied to. */
export function falseAlarmOf({ tally, run }: Counted, rule: Rule): FalseAlarm | null {
  const [claims, found] = [rateOf(tally, 'within claims', rule.id), rateOf(tally, 'as found', rule.id)];
  const asks = rule.limits.query !== undefined || rule.limits.refer !== undefined;
  if (!asks || !(claims.applied > 0 && found.applied > 0)) return null;
  const shares = ({ query, refer }: typeof claims): HonestShares => ({
    submissions: query.of,
    query: bounded(query),
    refer: bounded(refer),
  });
  return { command: commandOf(run), withinClaims: shares(claims), asFound: shares(found) };
}

/** A hundred-thousandth is finer than any corpus can tell; bounds are rounded away from zero. */
const steps = 1e5;
function bounded({ share, upper }: Share): BoundedShare {
  return { share: Math.round(share * steps) / steps, atMost: Math.min(1, Math.ceil(upper * steps) / steps) };
}

/** What draws the same honest submissions again. */
function commandOf({ build, seed, scale }: Counted['run']): string {
  return [
    'npm run truth --',
    ...(build === 'reporting' ? ['--reporting'] : []),
    ...(seed === '1' ? [] : [`--seed ${JSON.stringify(seed)}`]),
    `--honest --scale ${scale.honest}`,
  ].join(' ');
}

/** The text of a rule file with these rates in place of any it has; everything else stays as it is laid out. */
export function withFalseAlarm(text: string, rates: FalseAlarm | null): string {
  const source = /(\n {2}"source": \{\n)([\s\S]*?)(\n {2}\})/;
  if (!source.test(text)) throw new Error('a rule file has no "source" laid out as the house does');
  return text.replace(source, (_, head: string, body: string, tail: string) => {
    const bare = body.replace(/,\n {4}"falseAlarm": \{\n[\s\S]*?\n {4}\}/, '');
    if (rates === null) return `${head}${bare}${tail}`;
    const lines = JSON.stringify(rates, null, 2).replaceAll('\n', '\n    ');
    return `${head}${bare},\n    "falseAlarm": ${lines}${tail}`;
  });
}
