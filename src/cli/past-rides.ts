import path from 'node:path';
import { filesBelow, isFolder, limits, readFileSafely } from '../files/index.ts';
import { parseProfile } from '../history/index.ts';
import { Problem, sentence } from '../problem.ts';
import { compileProfile } from '../profile.ts';
import { isArchive, openArchive } from '../read/index.ts';
import type { DeviceFacts, NamedBytes, Profile } from '../types.ts';
import { type Input, inputOf, readNamed, readText } from './inputs.ts';
import type { Io } from './io.ts';
import type { Source } from './outputs.ts';

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
  if (isProfile(named)) return profileGiven(io, named);
  const inputs: Input[] = [];
  const files = (await isFolder(path.resolve(io.cwd, named)))
    ? ridesOf(inFolder(path.resolve(io.cwd, named)), inputs, options)
    : inArchive(await archiveNamed(io, named), inputs, options);
  return compiled(files, inputs, options);
}

async function archiveNamed(io: Io, named: string): Promise<NamedBytes> {
  const file = await readNamed(io, named, limits.archiveBytes);
  if (isArchive(file.bytes)) return file;
  throw new Problem({
    code: 'usage',
    what: 'this is neither a folder nor a ZIP of recordings nor a profile (.json)',
    where: named,
    hint: 'Name the folder that the earlier rides lie in',
  });
}

/** A rider's history from files that were opened elsewhere, ZIPs of recordings among them. */
export function historyFrom(
  files: AsyncIterable<NamedBytes | Problem>,
  options: HistoryOptions,
): Promise<HistoryGiven> {
  const inputs: Input[] = [];
  return compiled(ridesOf(files, inputs, options), inputs, options);
}

/** Whether this is a compiled profile, or facts beside recordings, and no recording. */
export const isProfile = (name: string) => path.extname(name).toLowerCase() === '.json';

/** A history, as a place that is read. */
export const historyRead = (place: string): Source => ({ place, takes: (name) => !isProfile(name) });

async function compiled(
  files: AsyncIterable<NamedBytes>,
  inputs: readonly Input[],
  { devices, previous, onFile }: HistoryOptions,
): Promise<HistoryGiven> {
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
  return { profile: profileFrom(text, file), inputs: [input] };
}

/** @throws Problem, placed at the file */
export function profileFrom(text: string, where: string): Profile {
  try {
    return parseProfile(text);
  } catch (error) {
    throw error instanceof Problem ? error.at(where) : error;
  }
}

/** Profiles and facts may lie beside the recordings: JSON is passed over. */
async function* inFolder(folder: string): AsyncGenerator<NamedBytes | Problem> {
  for (const { path: place, name } of await filesBelow(folder)) {
    if (isProfile(name)) continue;
    try {
      const { bytes } = await readFileSafely(place, {
        most: limits.recordingBytes,
        root: folder,
        shown: name,
      });
      yield { name, bytes };
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      yield error;
    }
  }
}

async function* ridesOf(
  files: AsyncIterable<NamedBytes | Problem>,
  inputs: Input[],
  options: HistoryOptions,
): AsyncGenerator<NamedBytes> {
  for await (const file of files) {
    if (file instanceof Problem) options.onTrouble(sentence(file));
    else if (isArchive(file.bytes)) yield* inArchive(file, inputs, options);
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
