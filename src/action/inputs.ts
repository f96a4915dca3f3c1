import { type FailOn, failLevels } from '../cli/status.ts';
import { type Part, partFrom } from '../event/parts.ts';
import { Problem } from '../problem.ts';

/** The one source of what a workflow gives. */
export interface InputSource {
  getInput(name: string): string;
  getMultilineInput(name: string): string[];
}

export interface Inputs {
  readonly event: string;
  readonly changedOnly: boolean;
  readonly termsFrom: 'base' | 'head';
  readonly rules: string | undefined;
  readonly earlier: readonly string[];
  readonly part: Part | null;
  readonly folder: string;
  readonly failOn: FailOn;
  readonly redact: boolean;
}

/** What a workflow asks for; defaults are in `action.yml` alone. @throws Problem `usage` */
export function inputsFrom(source: InputSource): Inputs {
  const text = (name: string) => source.getInput(name);
  const needed = (name: string) => {
    const value = text(name);
    if (value === '') throw wrong(name, 'it is not given', 'Give a path from the top folder of the checkout');
    return value;
  };
  const choice = <T extends string>(name: string, values: readonly T[]): T => {
    const value = values.find((one) => one === text(name).toLowerCase());
    if (value === undefined)
      throw wrong(name, `“${text(name)}” is none of its values`, `Give ${values.join(' or ')}`);
    return value;
  };
  const yes = (name: string) => choice(name, ['true', 'false']) === 'true';
  const [rules, part] = [text('rules'), text('part')];
  return {
    event: needed('event'),
    changedOnly: yes('changed-only'),
    termsFrom: choice('terms-from', ['base', 'head']),
    rules: rules === '' ? undefined : rules,
    earlier: source.getMultilineInput('earlier').filter((one) => one !== ''),
    part: part === '' ? null : partFrom(part),
    folder: needed('report-folder').replaceAll('\\', '/'),
    failOn: choice('fail-on', failLevels),
    redact: yes('redact'),
  };
}

function wrong(where: string, what: string, hint: string): Problem {
  return new Problem({ code: 'usage', what, where: `input ${where}`, hint });
}
