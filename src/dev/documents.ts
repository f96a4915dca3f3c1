/** The parts of the documents that are made from what they describe, so that they cannot fall behind it. */
import { readFileSync } from 'node:fs';
import type { Command } from 'commander';
import { parse } from 'yaml';
import { commands as allCommands } from '../cli.ts';
import { shippedRules } from '../judge/shipped.ts';
import type { Family } from '../types.ts';

/** Documents that hold such parts. */
export const documents = ['README.md'] as const;

const parts: Readonly<Record<string, () => string>> = { rules, commands, action };

/** The text with every part between its markers made anew. */
export function refreshed(text: string): string {
  return text.replace(
    /(<!-- (\w+): made by `npm run docs` -->\n)[\s\S]*?(<!-- end -->)/g,
    (_, head: string, name: string, end: string) => {
      const part = parts[name];
      if (part === undefined) throw new Error(`there is no part “${name}” to make`);
      return `${head}\n${part()}\n${end}`;
    },
  );
}

const families: Readonly<Record<Family, string>> = {
  recording: 'Is the file itself sound?',
  trace: 'Does it behave like a meter on a human?',
  agreement: 'What does a second meter say?',
  physiology: 'Could this rider have done it?',
};

function rules(): string {
  return Object.entries(families)
    .map(([family, heading]) => {
      const rows = shippedRules
        .filter((rule) => rule.family === family)
        .map((rule) => [`\`${rule.id}\``, rule.question, rule.highest]);
      return `**${heading}**\n\n${table(['rule', 'asks', 'at most'], rows)}`;
    })
    .join('\n');
}

const nowhere = { write: () => true };

function commands(): string {
  const io = { stdout: nowhere, stderr: nowhere, env: {}, cwd: '.' };
  const program = allCommands(io, () => {});
  return program.commands.flatMap(every).map(described).join('\n');
}

/** A command and those below it; each of ours does something by itself. */
function every(command: Command): readonly Command[] {
  return [command, ...command.commands.filter((one) => one.name() !== 'help').flatMap(every)];
}

function described(command: Command): string {
  const names: string[] = [];
  for (let at: Command | null = command; at !== null; at = at.parent) names.unshift(at.name());
  const operands = (command.commands.length > 0 ? [] : command.registeredArguments).map((argument) =>
    argument.required ? `<${argument.name()}>` : `[${argument.name()}]`,
  );
  const rows = command.options
    .filter((option) => !option.hidden && option.long !== '--help')
    .map(({ flags, description, argChoices, defaultValue }) => [
      `\`${flags}\``,
      [
        description,
        ...(argChoices === undefined
          ? []
          : [`one of ${argChoices.map((choice) => `\`${choice}\``).join(', ')}`]),
        ...(defaultValue === undefined ? [] : [`default \`${defaultValue}\``]),
      ].join('; '),
    ]);
  const options = rows.length === 0 ? '' : `\n${table(['option', 'meaning'], rows)}`;
  return `#### \`${[...names, ...operands].join(' ')}\`\n\n${command.description()}\n${options}`;
}

interface ActionFile {
  readonly inputs: Readonly<Record<string, { description: string; default?: string; required?: boolean }>>;
  readonly outputs: Readonly<Record<string, { description: string }>>;
}

function action(): string {
  const { inputs, outputs }: ActionFile = parse(readFileSync('action.yml', 'utf8'));
  const given = Object.entries(inputs).map(([name, input]) => [
    `\`${name}\``,
    input.required === true ? 'required' : input.default ? `\`${input.default}\`` : '',
    input.description,
  ]);
  const told = Object.entries(outputs).map(([name, output]) => [`\`${name}\``, output.description]);
  return `${table(['input', 'default', 'meaning'], given)}\n${table(['output', 'meaning'], told)}`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line), ''].join('\n');
}
