import { limits } from '../files/index.ts';
import { Problem } from '../problem.ts';
import type { Entry, NamedBytes, Profile } from '../types.ts';
import type { EventFiles } from './event-disk.ts';
import { type Input, inputOf } from './inputs.ts';
import { historyFrom, isProfile, profileFrom } from './past-rides.ts';

/** A rider's past as an entry names it: a profile, a folder or an archive; nothing where it names none. */
export async function pastOf(
  { history, rider }: Entry,
  files: EventFiles,
): Promise<{ profile: Profile | null; inputs: readonly Input[] }> {
  if (history === null) return { profile: null, inputs: [] };
  if (isProfile(history)) {
    const file = await files.read(history, limits.profileBytes);
    const text = new TextDecoder().decode(file.bytes);
    return { profile: profileFrom(text, history), inputs: [await inputOf('profile', file)] };
  }
  const { devices } = rider;
  return historyFrom(pastRides(history, files), {
    ...(devices === undefined ? {} : { devices }),
    onFile: () => {},
    onTrouble: () => {},
  });
}

/** Profiles and facts may lie beside the recordings: JSON is passed over. */
async function* pastRides(history: string, files: EventFiles): AsyncGenerator<NamedBytes | Problem> {
  for (const place of await files.pastFiles(history)) {
    if (isProfile(place)) continue;
    try {
      const { name, bytes } = await files.read(place, limits.archiveBytes);
      yield { name: place === history ? name : place.slice(history.length + 1), bytes };
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      yield error;
    }
  }
}
