/**
 * Past recordings → profile: read → normalise → sift → bests. The second table of contents.
 */
import {
  collect,
  emptyProfile,
  flaw,
  knownBefore,
  pastRide,
  placeOf,
  type Taken,
  tooShort,
  unfit,
} from './history/index.ts';
import { sha256 } from './math/digest.ts';
import { normalise } from './normalise/index.ts';
import { Problem } from './problem.ts';
import { read } from './read/index.ts';
import type { DeviceFacts, LeftOut, NamedBytes, Profile } from './types.ts';

export interface ProfileOptions {
  /** A profile to carry on: files it knows are not read again, rides it holds stay. */
  readonly previous?: Profile;
  /** The rider's meters, matched by file name or by maker and product. */
  readonly devices?: readonly DeviceFacts[];
  /** Told before each file, counted from 0. */
  readonly onFile?: (name: string, index: number) => void;
}

/**
 * Compiles a rider's mean-maximal power history. No file stops it: what cannot serve is left out and
 * counted with its reason. The order of the files does not change the rides.
 */
export async function compileProfile(
  files: AsyncIterable<NamedBytes> | Iterable<NamedBytes>,
  options: ProfileOptions = {},
): Promise<Profile> {
  const previous = options.previous ?? emptyProfile;
  const known = knownBefore(previous);
  const seen = new Set<string>();
  const taken: Taken[] = [];
  let index = 0;
  for await (const file of files) {
    options.onFile?.(file.name, index++);
    const digest = await sha256(file.bytes);
    const outcome = seen.has(digest)
      ? left('duplicate')
      : (known.get(digest) ?? (await take(file, options.devices ?? [])));
    seen.add(digest);
    taken.push({ name: file.name, sha256: digest, outcome });
  }
  return collect(previous, taken);
}

const left = (why: LeftOut) => ({ leftOut: { why } });

async function take(file: NamedBytes, devices: readonly DeviceFacts[]): Promise<Taken['outcome']> {
  try {
    const recording = await read(file);
    const why = unfit(recording);
    if (why !== null) return left(why);
    const { series, steps } = normalise(recording, file.name);
    if (tooShort(series)) return left('too short');
    const found = flaw(series, steps);
    if (found !== null) return { leftOut: { why: 'flawed', flaw: found } };
    return { ride: pastRide(series, placeOf(file.name, recording.meter ?? recording.device, devices)) };
  } catch (error) {
    if (error instanceof Problem) return left(whyRefused(error));
    throw error;
  }
}

function whyRefused(problem: Problem): LeftOut {
  return problem.code === 'no-power' ? 'no power' : 'unreadable';
}
