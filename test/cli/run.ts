import path from 'node:path';
import process from 'node:process';
import type { Io } from '../../src/cli/io.ts';
import { main } from '../../src/cli.ts';

interface World {
  readonly cwd?: string;
  readonly env?: Io['env'];
  /** A terminal of so many columns instead of a pipe. */
  readonly columns?: number;
}

export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process. */
export async function run(argv: readonly string[], world: World = {}): Promise<Ran> {
  const { cwd = process.cwd(), env = {}, columns } = world;
  const out: string[] = [];
  const err: string[] = [];
  const stream = (into: string[]) => ({
    write: (text: string) => into.push(text),
    ...(columns === undefined ? {} : { isTTY: true, columns }),
  });
  const status = await main(argv, { stdout: stream(out), stderr: stream(err), env, cwd });
  return { status, out: out.join(''), err: err.join('') };
}

/** A file of the sample event. */
export const sample = (...parts: readonly string[]): string => path.resolve('samples/event', ...parts);

/** The recordings and facts of a sample rider who handed in a second recording. */
export const pairOf = (rider: string): string[] => [
  sample('riders', rider, 'primary.fit'),
  '--second',
  sample('riders', rider, 'second.fit'),
  '--rider',
  sample('riders', rider, 'rider.json'),
  '--race',
  sample('race.json'),
];
