/** The parts of the documents that are made from what they describe, so that they cannot fall behind it. */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { shippedRules } from '../judge/shipped.ts';
import type { Family } from '../types.ts';

/** Documents that hold such parts. */
export const documents = ['README.md'] as const;

const parts: Readonly<Record<string, () => string>> = { rules, action };

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
