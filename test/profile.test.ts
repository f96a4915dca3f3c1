import { beforeAll, describe, expect, it } from 'vitest';
import { printProfile } from '../src/history/index.ts';
import { compileProfile } from '../src/profile.ts';
import type { NamedBytes, Profile, Recording } from '../src/types.ts';
import { writeFit } from './make/fit-writer.ts';
import { drawSubmission } from './make/submission.ts';

const bytesOf = (recording: Recording): NamedBytes => ({ name: recording.name, bytes: writeFit(recording) });
const text = (name: string, content: string): NamedBytes => ({
  name,
  bytes: new TextEncoder().encode(content),
});

/** Two minutes of running, with a meter on the shoe. */
const run = `<?xml version="1.0"?>
<TrainingCenterDatabase>
<Activities><Activity Sport="Running"><Id>2026-01-01T10:00:00Z</Id><Lap StartTime="2026-01-01T10:00:00Z"><Track>
${Array.from({ length: 120 }, (_, i) => {
  const time = new Date(Date.UTC(2026, 0, 1, 10, 0, i)).toISOString();
  return `<Trackpoint><Time>${time}</Time><Extensions><TPX><Watts>250</Watts></TPX></Extensions></Trackpoint>`;
}).join('')}
</Track></Lap></Activity></Activities></TrainingCenterDatabase>`;

let recordings: readonly Recording[];
let files: NamedBytes[];
beforeAll(() => {
  recordings = drawSubmission('a folder of past rides', {
    seconds: 0,
    history: { rides: 6, days: 60, minutes: 12 },
  }).history;
  files = recordings.map(bytesOf);
});

describe('compileProfile', () => {
  it('keeps every ride once, by date, with its bests', async () => {
    const profile = await compileProfile(files);
    expect(profile.rides).toHaveLength(6);
    expect(profile.leftOut).toEqual([]);
    const dates = profile.rides.map((ride) => ride.from);
    expect([...dates].sort((a, b) => a - b)).toEqual(dates);
    expect(profile.rides[0]!.device).toEqual(recordings[0]!.device);
    const best = profile.rides[0]!.bests[profile.durations.indexOf(60)]!;
    expect(best).toBeGreaterThan(50);
    expect(profile.rides[0]!.bests[profile.durations.indexOf(28800)]).toBeNull();
  });

  it('leaves out other sports, rides without power, copies and what cannot be read, with the reason', async () => {
    const [first, second] = recordings as [Recording, Recording];
    const { power: _, ...others } = second.channels;
    const profile = await compileProfile([
      files[0]!,
      { ...files[0]!, name: 'copy.fit' },
      text('run.tcx', run),
      bytesOf({ ...second, name: 'bare.fit', channels: others }),
      bytesOf({
        ...first,
        name: 'hot.fit',
        channels: { ...first.channels, power: first.channels.power!.map(() => 4000) },
      }),
      text('notes.txt', 'not a recording'),
    ]);
    expect(Object.fromEntries(profile.leftOut.map(({ name, why }) => [name, why]))).toEqual({
      'copy.fit': 'duplicate',
      'run.tcx': 'other sport',
      'bare.fit': 'no power',
      'hot.fit': 'flawed',
      'notes.txt': 'unreadable',
    });
    expect(profile.rides).toHaveLength(1);
  });

  it('does not read a file again that it knows, and comes to the same profile', async () => {
    const all = await compileProfile(files);
    const some = await compileProfile(files.slice(0, 3));
    // A ride that was known keeps what is known of it: its file is not opened.
    const marked: Profile = {
      ...some,
      rides: some.rides.map((ride) => ({ ...ride, place: 'pedal' as const })),
    };
    const carried = await compileProfile(files, { previous: marked });
    expect(carried.rides.filter((ride) => ride.place === 'pedal')).toHaveLength(3);
    expect(printProfile(await compileProfile(files, { previous: some }))).toBe(printProfile(all));
    expect(printProfile(await compileProfile([], { previous: all }))).toBe(printProfile(all));
    expect(printProfile(await compileProfile([...files].reverse()))).toBe(printProfile(all));
  });

  it('tells which file it is at, and takes files as they come', async () => {
    const told: string[] = [];
    async function* coming() {
      for (const file of files.slice(0, 2)) yield file;
    }
    const profile = await compileProfile(coming(), {
      onFile: (name, index) => told.push(`${index} ${name}`),
    });
    expect(profile.rides).toHaveLength(2);
    expect(told).toEqual(files.slice(0, 2).map((file, k) => `${k} ${file.name}`));
  });

  it('remembers where a declared meter sits', async () => {
    const devices = [{ name: files[0]!.name, place: 'crank', sides: 2, tolerancePercent: 1.5 }] as const;
    const profile = await compileProfile(files.slice(0, 2), { devices });
    expect(profile.rides.map((ride) => ride.place).sort()).toEqual(['crank', null].sort());
  });
});
