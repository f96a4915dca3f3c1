import { stat } from 'node:fs/promises';
import path from 'node:path';
import { filesBelow, limits, readFileSafely } from '../files/index.ts';
import { parseProfile } from '../history/index.ts';
import { Problem, sentence } from '../problem.ts';
import { compileProfile } from '../profile.ts';
import { isArchive, openArchive } from '../read/index.ts';
import type { DeviceFacts, NamedBytes, Profile } from '../types.ts';
import { type Input, inputOf, readNamed, readText } from './inputs.ts';
import type { Io } from './io.ts';

export interface HistoryOptions {
  readonly devices?: readonly DeviceFacts[];
  /** A profile to carry on. */
  readonly previous?: Profile;
  readonly onFile: (name: string) => void;
  /** Told of a file that could not even be opened. */
  readonly onTrouble: (sentence: string) => void;
}

export interface HistoryGiven {
  readonly profile: Profile;
  readonly inputs: readonly Input[];
}

/** A rider's history as the user names it: a folder of recordings, a ZIP of them, or a profile. */
export async function historyGiven(io: Io, named: string, options: HistoryOptions): Promise<HistoryGiven> {
  if (path.extname(named).toLowerCase() === '.json') return profileGiven(io, named);
  const inputs: Input[] = [];
  const files = (await isFolder(path.resolve(io.cwd, named)))
    ? inFolder(path.resolve(io.cwd, named), inputs, options)
    : inArchive(await readNamed(io, named, limits.archiveBytes), inputs, options);
  const { devices, previous, onFile } = options;
  const profile = await compileProfile(files, {
    onFile,
    ...(devices === undefined ? {} : { devices }),
    ...(previous === undefined ? {} : { previous }),
  });
  return { profile, inputs };
}

/** A compiled profile from its file. */
export async function profileGiven(io: Io, file: string): Promise<HistoryGiven> {
  const { text, input } = await readText(io, file, 'profile', limits.profileBytes);
  try {
    return { profile: parseProfile(text), inputs: [input] };
  } catch (error) {
    throw error instanceof Problem ? error.at(file) : error;
  }
}

async function isFolder(place: string): Promise<boolean> {
  try {
    return (await stat(place)).isDirectory();
  } catch {
    return false; // Reading it as a file says what is wrong.
  }
}

/** Profiles and facts may lie beside the recordings: JSON is passed over. */
async function* inFolder(
  folder: string,
  inputs: Input[],
  options: HistoryOptions,
): AsyncGenerator<NamedBytes> {
  for (const found of await filesBelow(folder)) {
    if (found.name.toLowerCase().endsWith('.json')) continue;
    let bytes: Uint8Array;
    try {
      ({ bytes } = await readFileSafely(found.path, {
        most: limits.recordingBytes,
        root: folder,
        shown: found.name,
      }));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      options.onTrouble(sentence(error));
      continue;
    }
    const file = { name: found.name, bytes };
    if (isArchive(bytes)) yield* inArchive(file, inputs, options);
    else {
      inputs.push(await inputOf('history', file));
      yield file;
    }
  }
}

async function* inArchive(
  archive: NamedBytes,
  inputs: Input[],
  { onTrouble }: HistoryOptions,
): AsyncGenerator<NamedBytes> {
  inputs.push(await inputOf('history', archive));
  for await (const member of openArchive(archive)) {
    if (member instanceof Problem) onTrouble(sentence(member));
    else yield member;
  }
}
