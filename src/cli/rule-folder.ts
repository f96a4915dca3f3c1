import path from 'node:path';
import { filesIn, limits, readFileSafely } from '../files/index.ts';
import type { RuleFile } from '../judge/load.ts';
import { Problem } from '../problem.ts';
import { layOver } from '../rules.ts';
import type { RuleSet } from '../types.ts';
import { type Input, inputOf } from './inputs.ts';
import type { Io } from './io.ts';
import type { Source } from './outputs.ts';

/** Rules as the user asked for them, with the files that they came from. */
export interface RulesGiven {
  readonly set: RuleSet;
  readonly inputs: readonly Input[];
}

/**
 * The shipped rules, with an event's folder laid over where one is named.
 *
 * @throws AggregateError of Problems: everything that is wrong with the folder's files at once
 */
export async function rulesGiven(io: Io, folder: string | undefined): Promise<RulesGiven> {
  const given = folder === undefined ? { files: [], inputs: [] } : await ruleFilesIn(io, folder);
  const name = folder === undefined ? 'shipped' : path.basename(path.resolve(io.cwd, folder));
  const { set, problems } = await layOver(given.files, name);
  if (set === null) throw new AggregateError(problems);
  return { set, inputs: given.inputs };
}

/** Files of the folder, which sentences call as the user did. */
async function rulesIn(place: string, folder: string) {
  try {
    return await filesIn(place);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { code, message: what, hint } = error;
    throw new Problem({ code, what, where: folder, ...(hint === undefined ? {} : { hint }) });
  }
}

const isRuleFile = (name: string) => name.endsWith('.json') && !name.endsWith('.schema.json');

/** A folder of rules, as a place that is read. */
export const rulesRead = (place: string): Source => ({
  place,
  takes: (name) => !name.includes('/') && isRuleFile(name),
});

/** The rule files of a folder, with their checksums. @throws Problem where there is none */
export async function ruleFilesIn(io: Io, folder: string): Promise<{ files: RuleFile[]; inputs: Input[] }> {
  const place = path.resolve(io.cwd, folder);
  const named = (await rulesIn(place, folder)).filter(({ name }) => isRuleFile(name));
  if (named.length === 0) {
    throw new Problem({
      code: 'rule-wrong',
      what: 'there is no rule file in this folder',
      where: folder,
      hint: 'A rule file is named <id>.rule.json, after the rule that it changes; wattassay rules lists the ids',
    });
  }
  const files: RuleFile[] = [];
  const inputs: Input[] = [];
  for (const { path: at, name } of named) {
    const { bytes } = await readFileSafely(at, { most: limits.factsBytes, root: place, shown: name });
    files.push({ name, text: new TextDecoder().decode(bytes) });
    inputs.push(await inputOf('rules', { name, bytes }));
  }
  return { files, inputs };
}
