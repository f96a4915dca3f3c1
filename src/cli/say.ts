import { styleText } from 'node:util';
import { type Problem, sentence } from '../problem.ts';
import { clean } from '../report/index.ts';
import { counted } from '../report/words/number.ts';
import { coloured, type Io } from './io.ts';

type Style = 'bold' | 'dim' | 'red' | 'underline';

/** Text in a style where the stream shows colour. */
export function painter(stream: Io['stdout'], env: Io['env']): (style: Style, text: string) => string {
  const colour = coloured(stream, env);
  return (style, text) => (colour ? styleText(style, text, { validateStream: false }) : text);
}

/** A remark on standard error: never a part of the output. */
export function remark({ stderr }: Io, text: string): void {
  stderr.write(`${clean(text)}\n`);
}

/** Why a command could not run: one line a problem. */
export function complain({ stderr, env }: Io, problems: readonly Problem[]): void {
  const paint = painter(stderr, env);
  for (const problem of problems) stderr.write(`${paint('red', 'error:')} ${clean(sentence(problem))}\n`);
}

/** "1 report", "2 reports": with an ordinary space, as people and programs search for it. */
export function many(count: number, one: string): string {
  return counted(count, one).replaceAll('\u00a0', ' ');
}
