import path from 'node:path';
import { filesBelow, isFolder, limits, readFileSafely } from '../files/index.ts';
import { sha256 } from '../math/digest.ts';
import { Problem } from '../problem.ts';
import { isArchive, openArchive } from '../read/index.ts';
import type { NamedBytes } from '../types.ts';
import type { Input } from './inputs.ts';
import type { Io } from './io.ts';

/** Files found by their checksums: each is opened again when it is wanted, for a past can be larger than memory. */
export type ByChecksum = ReadonlyMap<string, () => Promise<Uint8Array>>;

/** Missing files that are named one by one. */
const mostNamed = 5;

/**
 * Finds files by their checksums among files, folders and ZIPs, whatever they are called there.
 *
 * @throws AggregateError of Problems: one for each file that is not found
 */
export async function findByChecksum(
  io: Io,
  wanted: readonly Input[],
  places: readonly string[],
  onFile: (name: string) => void,
): Promise<ByChecksum> {
  const open = new Set(wanted.map((input) => input.sha256));
  const found = new Map<string, () => Promise<Uint8Array>>();
  const names = new Set<string>();
  const offer = async (name: string, bytes: Uint8Array, again: () => Promise<Uint8Array>) => {
    const digest = await sha256(bytes);
    names.add(path.basename(name));
    if (open.delete(digest)) found.set(digest, again);
  };
  for (const place of places) {
    for (const { shown, read } of await candidates(io, place)) {
      if (open.size === 0) break;
      onFile(shown);
      const bytes = await read();
      if (bytes === null) continue;
      await offer(shown, bytes, async () => (await read()) ?? new Uint8Array());
      // Recordings of an event may lie in a ZIP as if it were a folder.
      if (open.size > 0 && isArchive(bytes)) await offerMembers({ name: shown, bytes }, offer);
    }
  }
  const missing = wanted.filter((input) => open.has(input.sha256));
  if (missing.length > 0) throw new AggregateError(missingProblems(missing, names));
  return found;
}

async function offerMembers(
  archive: NamedBytes,
  offer: (name: string, bytes: Uint8Array, again: () => Promise<Uint8Array>) => Promise<void>,
): Promise<void> {
  try {
    for await (const member of openArchive(archive)) {
      if (!(member instanceof Problem)) await offer(member.name, member.bytes, async () => member.bytes);
    }
  } catch (error) {
    if (!(error instanceof Problem)) throw error; // A ZIP that cannot be opened holds nothing that was used.
  }
}

interface Candidate {
  readonly shown: string;
  /** Null: cannot be opened, and lies in a folder among others. */
  readonly read: () => Promise<Uint8Array | null>;
}

async function candidates({ cwd }: Io, named: string): Promise<Candidate[]> {
  const place = path.resolve(cwd, named);
  const most = limits.archiveBytes;
  if (!(await isFolder(place))) {
    return [{ shown: named, read: async () => (await readFileSafely(place, { most, shown: named })).bytes }];
  }
  return (await filesBelow(place)).map(({ path: file, name }) => ({
    shown: name,
    read: async () => {
      try {
        return (await readFileSafely(file, { most, root: place, shown: name })).bytes;
      } catch (error) {
        if (error instanceof Problem) return null;
        throw error;
      }
    },
  }));
}

function missingProblems(missing: readonly Input[], names: ReadonlySet<string>): Problem[] {
  const problems = missing.slice(0, mostNamed).map(({ role, name, sha256: digest }) => {
    const changed = names.has(path.posix.basename(name))
      ? ' A file of this name is there, with another content.'
      : '';
    return new Problem({
      code: 'file-missing',
      what: `the ${role} file with the checksum ${digest.slice(0, 12)}… is not among the files given.${changed}`,
      where: name,
      hint: 'Name it, or a folder that holds it, as it was handed in: a file that was saved again has another checksum',
    });
  });
  const more = missing.length - problems.length;
  if (more <= 0) return problems;
  const what = `${more} more of the ${missing.length} files that are missing are not named here`;
  return [...problems, new Problem({ code: 'file-missing', what })];
}
