import path from 'node:path';
import { limits, readFileSafely } from '../files/index.ts';
import { sha256 } from '../math/digest.ts';
import type { NamedBytes, Report } from '../types.ts';
import type { Io } from './io.ts';

/** A file that the answer depends on, as the report lists it. */
export type Input = Report['inputs'][number];

/** Reads a file that the user named. */
export function readNamed({ cwd }: Io, file: string, most: number, shown = file): Promise<NamedBytes> {
  return readFileSafely(path.resolve(cwd, file), { most, shown });
}

/** Reads a small text file that the user named, with how the report lists it. */
export async function readText(
  io: Io,
  file: string,
  role: string,
  most: number = limits.factsBytes,
): Promise<{ text: string; input: Input }> {
  const { name, bytes } = await readNamed(io, file, most);
  return { text: new TextDecoder().decode(bytes), input: await inputOf(role, { name, bytes }) };
}

export async function inputOf(role: string, { name, bytes }: NamedBytes): Promise<Input> {
  return { role, name, sha256: await sha256(bytes) };
}
