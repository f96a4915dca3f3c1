import { Problem } from '../problem.ts';
import type { NamedBytes } from '../types.ts';
import { type Budget, budgetOf, inflate, tooLarge } from './inflate.ts';
import { limits } from './limits.ts';
import { type Content, sniff } from './sniff.ts';
import { type Member, members } from './zip.ts';

/** A recording's own bytes, out of their wrapping, and what they are. */
export interface Unpacked {
  readonly bytes: Uint8Array;
  readonly content: Exclude<Content, 'gzip' | 'zip'>;
}

/**
 * Takes a recording out of gzip, or out of a ZIP that holds exactly one.
 *
 * @throws Problem when the wrapping is damaged, encrypted or too large, or a ZIP holds no or several recordings.
 */
export async function unpack(bytes: Uint8Array): Promise<Unpacked> {
  if (bytes.length > limits.fileBytes) throw tooLarge('this file', limits.fileBytes);
  return unwrap(bytes, limits.wrappers, budgetOf(limits.fileBytes));
}

async function unwrap(bytes: Uint8Array, wrappers: number, budget: Budget): Promise<Unpacked> {
  const content = sniff(bytes);
  if (content !== 'gzip' && content !== 'zip') return { bytes, content };
  if (wrappers === 0) {
    throw new Problem({
      code: 'format-limits',
      what: 'the file is packed over and over again',
      hint: 'Unpack it and hand in the recording itself',
    });
  }
  if (content === 'zip') return onlyRecording(bytes, wrappers - 1, budget);
  return unwrap(await inflate(bytes, 'gzip', budget), wrappers - 1, budget);
}

async function onlyRecording(zip: Uint8Array, wrappers: number, budget: Budget): Promise<Unpacked> {
  let found: Unpacked | null = null;
  for await (const [, member] of recordingsIn(zip, wrappers, budget)) {
    if (member instanceof Problem) throw member;
    if (found !== null) {
      throw new Problem({
        code: 'format-unknown',
        what: 'this ZIP holds several recordings',
        hint: 'Unpack it and hand in the one that is meant',
      });
    }
    found = member;
  }
  if (found !== null) return found;
  throw new Problem({
    code: 'format-unknown',
    what: 'this ZIP holds no recording',
    hint: 'Hand in the original file from the head unit or the training app',
  });
}

/**
 * Every recording in a ZIP of past rides, in the order of its directory, named "archive/member"; other
 * files in it are passed over. A member that cannot be read comes as the Problem that says why, so that
 * one damaged ride does not cost the others.
 *
 * @throws Problem when it is no ZIP, or the ZIP as a whole cannot be read or is too large.
 */
export async function* openArchive(archive: NamedBytes): AsyncGenerator<NamedBytes | Problem> {
  const { bytes } = archive;
  try {
    if (bytes.length > limits.archiveBytes) throw tooLarge('this ZIP', limits.archiveBytes);
    const budget = budgetOf(limits.archiveUnpackedBytes);
    for await (const [name, found] of recordingsIn(bytes, limits.wrappers - 1, budget)) {
      const place = `${archive.name}/${name}`;
      yield found instanceof Problem ? found.at(place) : { name: place, bytes: found.bytes };
    }
  } catch (error) {
    throw error instanceof Problem ? error.at(archive.name) : error;
  }
}

/** Names of the files in a ZIP, in the order of its directory. @throws Problem when it is none. */
export function memberNames(bytes: Uint8Array): string[] {
  return members(bytes).map(({ name }) => name);
}

/** One file of a ZIP by its name; null when there is none of this name. @throws Problem */
export async function openMember(bytes: Uint8Array, name: string): Promise<Uint8Array | null> {
  const member = members(bytes).find((one) => one.name === name);
  return member === undefined ? null : member.unpack(budgetOf(limits.fileBytes));
}

/** Whether `openArchive` is the way to open these bytes. */
export function isArchive(bytes: Uint8Array): boolean {
  return sniff(bytes) === 'zip';
}

/** Whether these bytes are a table, and not one of a recording. */
export function holdsOtherTable(bytes: Uint8Array): boolean {
  return sniff(bytes) === 'table';
}

const recordings: readonly Content[] = ['fit', 'tcx', 'gpx', 'csv'];

/** Every recording among the members, or why a member could not be unpacked; the others are passed over. */
async function* recordingsIn(
  zip: Uint8Array,
  wrappers: number,
  budget: Budget,
): AsyncGenerator<[name: string, Unpacked | Problem]> {
  for (const member of members(zip)) {
    // Larger than any recording: a film or a nested backup.
    if (member.size > limits.fileBytes) continue;
    if (budget.left <= 0) throw tooLarge('what is packed in this ZIP', budget.whole);
    const share = budgetOf(Math.min(budget.left, limits.fileBytes));
    const found = await tryUnpack(member, wrappers, share);
    budget.left -= share.whole - share.left;
    if (found instanceof Problem || recordings.includes(found.content)) yield [member.name, found];
  }
}

async function tryUnpack(member: Member, wrappers: number, budget: Budget): Promise<Unpacked | Problem> {
  try {
    return await unwrap(await member.unpack(budget), wrappers, budget);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
