import { Command } from 'commander';
import { nearest } from '../math/nearest.ts';
import { Problem } from '../problem.ts';
import { clean } from '../report/index.ts';
import { shipped } from '../rules.ts';
import type { Rule, RuleSet } from '../types.ts';
import { type Io, widthOf } from './io.ts';
import { options } from './options.ts';
import { ruleDifferences } from './rule-differences.ts';
import { rulesGiven } from './rule-folder.ts';
import { painter } from './say.ts';
import { showRule } from './show-rule.ts';
import { status } from './status.ts';

interface RulesOptions {
  readonly rules?: string;
}

const listExamples = `
Examples:
  $ wattassay rules
  $ wattassay rules show late-drift
  $ wattassay rules check our-rules/
  $ wattassay rules --rules our-rules/
`;

const showExamples = `
Examples:
  $ wattassay rules show late-drift
  $ wattassay rules show late-drift --rules our-rules/
`;

const checkExamples = `
Examples:
  $ wattassay rules check our-rules/

A file in the folder bears the name of the rule that it changes and says only what differs:
  our-rules/late-drift.rule.json   { "id": "late-drift", "off": "No rider can spin down at this venue." }

Exit status: 0 the folder can be used; 2 it cannot, and every reason is told.
`;

/** `wattassay rules`, `rules show ID`, `rules check FOLDER`. `done` is told the exit status. */
export function rulesCommand(io: Io, done: (status: number) => void): Command {
  const list = new Command('rules')
    .summary('list the rules, show one, or check a folder of your own')
    .description('Lists the rules by the kind of evidence they argue from.')
    .argument('[command]')
    .usage('[options] | show <id> | check <folder>')
    .addOption(options.rules())
    .addHelpText('after', listExamples)
    .action(async (word: string | undefined, given: RulesOptions) => {
      if (word !== undefined) throw unknownWord(word);
      const { set } = await rulesGiven(io, given.rules);
      io.stdout.write(listing(set, io));
      done(status.done);
    });
  list.addCommand(
    new Command('show')
      .description('Shows a rule: its question, limits, numbers, words, source and examples.')
      .argument('<id>', 'the id of the rule')
      .addOption(options.rules())
      .addHelpText('after', showExamples)
      .action(async (id: string, _: RulesOptions, command: Command) => {
        const { set } = await rulesGiven(io, command.optsWithGlobals<RulesOptions>().rules);
        io.stdout.write(shown(set, id, io));
        done(status.done);
      }),
  );
  list.addCommand(
    new Command('check')
      .description("Checks a folder of an event's own rules and says what it changes.")
      .argument('<folder>', 'the folder')
      .addHelpText('after', checkExamples)
      .action(async (folder: string) => {
        const { set } = await rulesGiven(io, folder);
        io.stdout.write(changes(set));
        done(status.done);
      }),
  );
  return list;
}

function unknownWord(word: string): Problem {
  const isRule = shipped.rules.some(({ id }) => id === word);
  const near = nearest(word, ['show', 'check']);
  if (word === 'list')
    return new Problem({
      code: 'usage',
      what: 'there is no command “rules list”',
      hint: 'wattassay rules lists them',
    });
  const hint = isRule ? `wattassay rules show ${word}` : near === null ? null : `wattassay rules ${near}`;
  return new Problem({
    code: 'usage',
    what: `there is no command “rules ${word}”`,
    hint: hint === null ? 'See wattassay rules --help' : `Did you mean: ${hint}`,
  });
}

function listing({ rules }: RuleSet, { stdout, env }: Io): string {
  const paint = painter(stdout, env);
  const room = Math.max(...rules.map(({ id }) => id.length));
  const families = [...new Set(rules.map(({ family }) => family))];
  const line = ({ id, highest, question, off }: Rule) => {
    const words = off === undefined ? question : `switched off: ${off}`;
    return `  ${id.padEnd(room)}  ${highest.padEnd(10)}  ${clean(words)}\n`;
  };
  return families
    .map((family) => {
      const lines = rules.filter((rule) => rule.family === family).map(line);
      return `${paint('underline', family)}\n${lines.join('')}`;
    })
    .join('\n');
}

function shown({ rules }: RuleSet, id: string, { stdout, env }: Io): string {
  const rule = rules.find((candidate) => candidate.id === id);
  const measure = shipped.measures.find((candidate) => candidate.id === rule?.measure);
  if (rule === undefined || measure === undefined) {
    const near = nearest(
      id,
      rules.map((candidate) => candidate.id),
    );
    throw new Problem({
      code: 'usage',
      what: `there is no rule “${id}”`,
      hint: near === null ? 'wattassay rules lists them' : `Did you mean “${near}”?`,
    });
  }
  return showRule(rule, measure, Math.min(100, widthOf(stdout)), painter(stdout, env));
}

/** What an event's folder does to the shipped rules, field by field. */
function changes(set: RuleSet): string {
  const lines = ruleDifferences(set);
  const files = `${set.overlaid.length} ${set.overlaid.length === 1 ? 'file' : 'files'}`;
  const said = lines.length === 0 ? ['nothing differs from the shipped rules'] : lines;
  return `${said.map((line) => clean(line)).join('\n')}\n${files} in order; rule set ${set.sha256}\n`;
}
