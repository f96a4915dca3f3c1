import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { NamedBytes } from '../../src/types.ts';
import { writeFit } from '../make/fit-writer.ts';
import { drawSubmission } from '../make/index.ts';

/** A submission on disk, as an organiser would have it. */
export interface OnDisk {
  readonly primary: string;
  readonly second: string;
  readonly rider: string;
  readonly race: string;
}

/** Past rides of an hour as files, each with its own content: a few rides are simulated, the rest shifted by days. */
export function pastFiles(count: number): NamedBytes[] {
  const simulated = [1, 2, 3, 4].map(
    (k) => drawSubmission(`bench past ${k}`, { kind: 'bunch race', minutes: 60, seconds: 0 }).primary,
  );
  return Array.from({ length: count }, (_, k) => {
    const ride = simulated[k % simulated.length]!;
    const time = ride.time.map((clock) => clock - 86_400 * k);
    return { name: `${k}.fit`, bytes: writeFit({ ...ride, time, pauses: [], laps: [] }) };
  });
}

/** An honest pair of the given length, the same bytes at every run. */
export function writePair(folder: string, hours: number): OnDisk {
  const submission = drawSubmission(`bench ${hours} h`, { kind: 'bunch race', minutes: hours * 60 });
  const files = {
    'primary.fit': writeFit(submission.primary),
    'second.fit': writeFit(submission.seconds[0]!),
    'rider.json': JSON.stringify(submission.rider),
    'race.json': JSON.stringify(submission.race),
  };
  const home = path.join(folder, `${hours}h`);
  mkdirSync(home);
  for (const [name, content] of Object.entries(files)) writeFileSync(path.join(home, name), content);
  const at = (name: keyof typeof files) => path.join(home, name);
  return {
    primary: at('primary.fit'),
    second: at('second.fit'),
    rider: at('rider.json'),
    race: at('race.json'),
  };
}
