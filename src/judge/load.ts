import gradesSchema from '../../rules/grades.schema.json' with { type: 'json' };
import ruleSchema from '../../rules/rule.schema.json' with { type: 'json' };
import { digestOf, parseJson } from '../json.ts';
import { nearest } from '../math/nearest.ts';
import { Problem } from '../problem.ts';
import { type Fault, faultsOf, problemsOf, type Schema } from '../schema.ts';
import type { Grades, MeasureInfo, Rule, RuleSet } from '../types.ts';
import { claimFaults, detailsOf } from './check/claims.ts';
import { exampleFaults } from './check/examples.ts';
import { explainFaults } from './check/explains.ts';
import { limitFaults } from './check/limits.ts';
import { measureFaults } from './check/measure.ts';
import { laidOver, withoutSchema } from './overlay.ts';

/** A file of an event's own rules folder. Only its name counts, not the folders before it. */
export interface RuleFile {
  readonly name: string;
  readonly text: string;
}

/** What rules are made of before an event's folder is laid over. */
export interface Ground {
  readonly rules: readonly Rule[];
  readonly grades: Grades;
  readonly measures: readonly MeasureInfo[];
}

/** A rule set that may be used, or everything that is wrong with the files it was to be made of. */
export type Loaded =
  | { readonly set: RuleSet; readonly problems: readonly [] }
  | { readonly set: null; readonly problems: readonly Problem[] };

/** The same shapes, for a file that may leave out what it does not change. */
const changeSchema: Schema = { $defs: ruleSchema.$defs, $ref: '#/$defs/fields' };

const ruleEnding = '.rule.json';
const gradesName = 'grades.json';

/**
 * Lays the files of an event's folder over the ground rules. A file changes the rule of its id, switches
 * it off, or, under a new id, adds a complete rule; `grades.json` replaces the grades. The rules that a
 * file touched are checked in full; the ground stands as it is.
 */
export async function loadRules(ground: Ground, files: readonly RuleFile[], name: string): Promise<Loaded> {
  const rules = new Map(ground.rules.map((rule) => [rule.id, rule]));
  const problems: Problem[] = [];
  const seen = new Set<string>();
  const added = files.map(({ name }) => idOf(name));
  let grades = ground.grades;
  for (const file of files) {
    try {
      if (file.name === gradesName) {
        grades = await gradesFrom(file);
        continue;
      }
      const rule = await ruleFrom(file, ground, added, seen);
      seen.add(rule.id);
      rules.set(rule.id, rule);
    } catch (error) {
      if (!(error instanceof AggregateError)) throw error;
      problems.push(...error.errors);
    }
  }
  if (problems.length > 0) return { set: null, problems };
  const effective = [...rules.values()];
  const set: RuleSet = {
    name,
    sha256: await digestOf({ rules: effective, grades }),
    rules: effective,
    grades,
    overlaid: files.map(({ name, text }) => ({ file: name, text })),
  };
  return { set, problems: [] };
}

/**
 * Everything that is wrong with a complete rule, measured against what rules and measures there are.
 *
 * @param added ids of rules beside those: what the same folder adds
 */
export async function ruleFaults(
  rule: unknown,
  { rules, measures }: Pick<Ground, 'rules' | 'measures'>,
  added: readonly string[] = [],
): Promise<Fault[]> {
  const shape = await faultsOf(ruleSchema, rule);
  if (shape.length > 0) return shape;
  const sound = rule as Rule;
  const known = new Map(measures.map((measure) => [measure.id, measure]));
  const alike = rules.filter((other) => other.measure === sound.measure);
  return [
    ...measureFaults(sound, known),
    ...limitFaults(sound),
    // What a measure states is known from the claims of the rules that use it already.
    ...(known.has(sound.measure) ? claimFaults(sound, new Set(alike.flatMap(detailsOf))) : []),
    ...explainFaults(sound, [...rules.map(({ id }) => id), ...added]),
    ...exampleFaults(sound),
  ];
}

/** The id that the name of a rule file promises. */
const idOf = (name: string) => name.slice(0, -ruleEnding.length);

async function ruleFrom(
  file: RuleFile,
  ground: Ground,
  added: readonly string[],
  seen: ReadonlySet<string>,
): Promise<Rule> {
  if (!file.name.endsWith(ruleEnding)) {
    reject(file, {
      path: [],
      what: 'this is neither a rule nor grades.json',
      hint: 'Name a rule file <id>.rule.json, after the rule it changes or adds',
    });
  }
  const change = await shaped(file, changeSchema);
  const id = String(change.id);
  if (`${id}${ruleEnding}` !== file.name) {
    reject(file, {
      path: ['id'],
      what: `the id “${id}” does not match the file's name`,
      hint: `Name the file ${id}${ruleEnding}, or write the id ${idOf(file.name)}`,
    });
  }
  if (seen.has(id)) reject(file, { path: ['id'], what: `the rule “${id}” stands twice in this folder` });
  const shipped = ground.rules.find((rule) => rule.id === id);
  if (shipped === undefined) {
    const lacking = lackingFields(change);
    if (lacking.length > 0) reject(file, unknownIdFault(id, lacking, ground));
  } else if (typeof change.off === 'string') return { ...shipped, off: change.off };
  const rule = laidOver(groundOf(shipped, change), change);
  const faults = await ruleFaults(rule, ground, added);
  if (faults.length > 0) reject(file, ...faults);
  return rule as unknown as Rule;
}

/** Fields on which it depends how often a rule asks anybody. */
const telling = ['measure', 'options', 'limits', 'ceilings'] as const;

/** What a change is laid over: how often honest riders are asked is not known once a limit differs. */
function groundOf(shipped: Rule | undefined, change: Readonly<Record<string, unknown>>) {
  if (shipped?.source.falseAlarm === undefined || !telling.some((field) => Object.hasOwn(change, field)))
    return { ...shipped };
  const { falseAlarm, ...source } = shipped.source;
  return { ...shipped, source };
}

function lackingFields(change: Readonly<Record<string, unknown>>): string[] {
  return ruleSchema.required.filter((field) => !Object.hasOwn(change, field));
}

/** An incomplete rule under an unknown id is most likely a change to a rule whose id was misspelt. */
function unknownIdFault(id: string, lacking: readonly string[], { rules }: Ground): Fault {
  const near = nearest(
    id,
    rules.map((rule) => rule.id),
  );
  return {
    path: ['id'],
    what: `there is no rule “${id}” to change, and as a new rule it lacks ${lacking.join(', ')}`,
    hint: near === null ? 'wattassay rules lists the ids' : `Did you mean “${near}”?`,
  };
}

async function gradesFrom(file: RuleFile): Promise<Grades> {
  return (await shaped(file, gradesSchema)) as unknown as Grades;
}

async function shaped(file: RuleFile, schema: Schema): Promise<Readonly<Record<string, unknown>>> {
  let value: unknown;
  try {
    value = parseJson(file.text, 'rule-wrong', file.name);
  } catch (error) {
    throw error instanceof Problem ? new AggregateError([error]) : error;
  }
  const faults = await faultsOf(schema, value);
  if (faults.length > 0) reject(file, ...faults);
  return withoutSchema(value as object);
}

/** Ends the reading of one file with all that is wrong with it. */
function reject(file: RuleFile, ...faults: Fault[]): never {
  throw new AggregateError(problemsOf(faults, 'rule-wrong', file.name));
}
