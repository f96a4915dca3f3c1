import { deflateRawSync, gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { Problem } from '../../src/problem.ts';
import { isArchive, openArchive, read } from '../../src/read/index.ts';
import { limits } from '../../src/read/limits.ts';
import { crc32 } from '../../src/read/zip.ts';
import type { NamedBytes } from '../../src/types.ts';
import { smallRide } from './fit-bytes.ts';
import { joined, problem, text, zip } from './zip-bytes.ts';

const ride = smallRide(30).bytes();
const csv = text('time,power (W)\n0,200\n1,210\n');
const named = (bytes: Uint8Array): NamedBytes => ({ name: 'file', bytes });

async function opened(bytes: Uint8Array) {
  const found: (NamedBytes | Problem)[] = [];
  for await (const member of openArchive({ name: 'past.zip', bytes })) found.push(member);
  return found;
}

// CRC-32 of "123456789" (CRC-32/ISO-HDLC): Cook G, Catalogue of parametrised CRC algorithms.
test('the checksum of ZIP has its published check value', () => {
  expect(crc32(text('123456789'))).toBe(0xcbf43926);
});

describe('gzip', () => {
  test('is unpacked; the digest stays that of the file as handed in', async () => {
    const packed = new Uint8Array(gzipSync(ride));
    const [plain, unpacked] = [await read(named(ride)), await read(named(packed))];
    expect(unpacked.channels).toEqual(plain.channels);
    expect(unpacked.sha256).not.toBe(plain.sha256);
  });

  test('that breaks off is damaged', async () => {
    await problem(
      read(named(new Uint8Array(gzipSync(ride)).subarray(0, 60))),
      'format-damaged',
      /breaks off/,
    );
  });

  test('that unpacks to more than a recording needs is stopped', async () => {
    const bomb = new Uint8Array(gzipSync(new Uint8Array(limits.fileBytes + 1)));
    expect(bomb.length).toBeLessThan(100_000);
    await problem(read(named(bomb)), 'format-limits', /larger than 64 MB/);
  });

  test('in gzip in gzip is one too many', async () => {
    const twice = gzipSync(gzipSync(ride));
    expect((await read(named(new Uint8Array(twice)))).time).toHaveLength(30);
    await problem(read(named(new Uint8Array(gzipSync(twice)))), 'format-limits', /over and over/);
  });
});

describe('a ZIP with one recording', () => {
  test.each([
    ['deflated', { method: 8 }],
    ['stored', { method: 0 }],
    ['with sizes in its directory only', { method: 8, flags: 8 }],
  ])('%s is read', async (_, how) => {
    const bytes = zip([{ name: 'ride.bin', bytes: ride, ...how }], 'a comment');
    expect((await read(named(bytes))).time).toHaveLength(30);
  });

  test('beside other files and folders is read', async () => {
    const others = [
      { name: 'rides/', bytes: new Uint8Array(0), method: 0 },
      { name: 'readme.txt', bytes: text('Nothing of interest, really.') },
      { name: 'list.csv', bytes: text('name,place\na,1\nb,2\n') },
    ];
    expect((await read(named(zip([...others, { name: 'rides/a', bytes: ride }])))).time).toHaveLength(30);
  });

  test('gzipped inside is read', async () => {
    const bytes = zip([{ name: 'ride.fit.gz', bytes: new Uint8Array(gzipSync(ride)) }]);
    expect((await read(named(bytes))).time).toHaveLength(30);
  });
});

describe('a ZIP that cannot be read says why', () => {
  test.each([
    ['several recordings', [{ bytes: ride }, { bytes: csv }], 'format-unknown', /several recordings/],
    ['none', [{ bytes: text('hello') }], 'format-unknown', /no recording/],
    ['no files', [], 'format-unknown', /no recording/],
    ['an encrypted one', [{ bytes: ride, flags: 1 }], 'format-unknown', /encrypted/],
    ['another method', [{ bytes: ride, method: 14 }], 'format-unknown', /method \(14\)/],
    ['a wrong checksum', [{ bytes: ride, checksum: 1 }], 'format-damaged', /incomplete or damaged/],
    ['a wrong size', [{ bytes: ride, size: 5 }], 'format-damaged', /incomplete or damaged/],
  ])('%s', async (_, members, code, words) => {
    const bytes = zip(members.map((member, i) => ({ name: `f${i}`, ...member })));
    await problem(read(named(bytes)), code, words);
  });

  test('cut short, at any length', async () => {
    const whole = zip([{ name: 'a', bytes: ride }]);
    for (let length = 4; length < whole.length; length += 7) {
      await problem(read(named(whole.subarray(0, length))), 'format-damaged', /incomplete or damaged/);
    }
  });

  test('a bomb', async () => {
    const zeros = new Uint8Array(limits.fileBytes);
    const bytes = zip([{ name: 'a', bytes: deflated(zeros), method: 0 }]);
    // The member claims to unpack to a kilobyte.
    await problem(read(named(patched(bytes, 1024))), 'format-damaged', /damaged/);
  });
});

/** A one-member ZIP rewritten so that its stored bytes count as deflated data of a claimed size. */
function patched(bytes: Uint8Array, size: number): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  const entry = view.getUint32(copy.length - 22 + 16, true);
  view.setUint16(entry + 10, 8, true);
  view.setUint32(entry + 24, size, true);
  return copy;
}
const deflated = (bytes: Uint8Array) => new Uint8Array(deflateRawSync(bytes));

describe('an archive of past rides', () => {
  test('yields every recording, named by its place', async () => {
    const bytes = zip([
      { name: 'activities/1.fit', bytes: ride },
      { name: 'profile.json', bytes: text('{"a": 1}') },
      { name: 'activities/2.csv.gz', bytes: new Uint8Array(gzipSync(csv)) },
    ]);
    expect(isArchive(bytes)).toBe(true);
    const found = await opened(bytes);
    expect(found.map((member) => (member instanceof Problem ? null : member.name))).toEqual([
      'past.zip/activities/1.fit',
      'past.zip/activities/2.csv.gz',
    ]);
    expect((await read(found[0] as NamedBytes)).time).toHaveLength(30);
    expect((await read(found[1] as NamedBytes)).format).toBe('csv');
  });

  test('goes on after a member that is damaged, and says which', async () => {
    const found = await opened(
      zip([
        { name: 'a.fit', bytes: ride, checksum: 9 },
        { name: 'b.fit', bytes: ride },
      ]),
    );
    expect(found[0]).toMatchObject({ name: 'Problem', code: 'format-damaged', where: 'past.zip/a.fit' });
    expect(found[1]).toMatchObject({ name: 'past.zip/b.fit' });
  });

  test('of too many files is refused', async () => {
    const bytes = zip([{ name: 'a', bytes: ride }]);
    new DataView(bytes.buffer).setUint16(bytes.length - 12, limits.archiveMembers + 1, true);
    await problem(opened(bytes), 'format-limits', /holds 20001 files/);
  });

  test('what is no archive is a problem at its name', async () => {
    expect(isArchive(ride)).toBe(false);
    await problem(opened(ride), 'format-damaged', /ZIP/);
    await expect(opened(joined(text('PK'), Uint8Array.of(5, 6)))).rejects.toMatchObject({
      where: 'past.zip',
    });
  });
});
