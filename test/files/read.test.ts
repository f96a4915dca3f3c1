import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { checksum, checksumSafely, holdsSafely, readFileSafely } from '../../src/files/index.ts';
import { Problem, sentence } from '../../src/problem.ts';
import { isRoot, onWindows, scratch } from './scratch.ts';

const most = 100;
/** A file of Linux that is said to be empty and is not: as one that has grown since its size was asked. */
const claimsNothing = '/proc/version';
const said = (reading: Promise<unknown>) =>
  reading.then(
    () => 'read',
    (error) => (error instanceof Problem ? sentence(error) : Promise.reject(error)),
  );

/** A folder with a file `a.fit` in it, inside another with a file `secret`. */
function folders() {
  const outside = scratch();
  const root = path.join(outside, 'root');
  mkdirSync(root);
  writeFileSync(path.join(outside, 'secret'), 'secret');
  writeFileSync(path.join(root, 'a.fit'), 'abc');
  return { outside, root, inside: (name: string) => path.join(root, name) };
}

describe('reading a file', () => {
  it('gives its name and bytes', async () => {
    const { inside } = folders();
    const { name, bytes } = await readFileSafely(inside('a.fit'), { most });
    expect(name).toBe('a.fit');
    expect(new TextDecoder().decode(bytes)).toBe('abc');
  });

  it('reads as much as is allowed and no byte more', async () => {
    const { inside } = folders();
    writeFileSync(inside('full'), Buffer.alloc(most));
    writeFileSync(inside('over'), Buffer.alloc(most + 1));
    expect((await readFileSafely(inside('full'), { most })).bytes.length).toBe(most);
    expect(await said(readFileSafely(inside('over'), { most: 1024, shown: 'over' }))).toBe('read');
    writeFileSync(inside('over'), Buffer.alloc(3000));
    expect(await said(readFileSafely(inside('over'), { most: 2048, shown: 'over' }))).toBe(
      'over: it is larger than 2 kB.',
    );
  });

  it('reads an empty file', async () => {
    const { inside } = folders();
    writeFileSync(inside('empty'), '');
    expect((await readFileSafely(inside('empty'), { most })).bytes.length).toBe(0);
  });

  it.skipIf(!existsSync(claimsNothing))(
    'reads one that holds more than it claims, and no more than is allowed',
    async () => {
      const options = { most: 1024 * 1024, root: path.dirname(claimsNothing) };
      expect(statSync(claimsNothing).size).toBe(0);
      const { bytes } = await readFileSafely(claimsNothing, options);
      expect(new TextDecoder().decode(bytes)).toBe(readFileSync(claimsNothing, 'utf8'));
      expect(await checksumSafely(claimsNothing, options)).toBe(checksum(bytes));
      for (const way of [readFileSafely, checksumSafely]) {
        expect(await said(way(claimsNothing, { most: 10, shown: 'it' }))).toContain('it is larger than');
      }
    },
  );

  it('makes the checksum of what it would read, and refuses the same', async () => {
    const { inside } = folders();
    writeFileSync(inside('long'), randomBytes(600_000));
    const { bytes } = await readFileSafely(inside('long'), { most: 600_000 });
    expect(await checksumSafely(inside('long'), { most: 600_000 })).toBe(checksum(bytes));
    const held = (other: Uint8Array) => holdsSafely(inside('long'), other, { most: 600_000 });
    expect(await held(bytes)).toBe(true);
    const changed = Uint8Array.from(bytes);
    changed[bytes.length - 1]! ^= 1;
    expect(await held(changed)).toBe(false);
    expect(await held(bytes.subarray(1))).toBe(false);
    expect(checksum('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'); // FIPS 180-2
    for (const way of [readFileSafely, checksumSafely]) {
      const options = { most: 2048, root: inside('.'), shown: 'it' };
      expect(await said(way(inside('long'), options))).toBe('it: it is larger than 2 kB.');
      expect(await said(way('../secret', options))).toContain('outside');
    }
  });

  it('suggests the file that was meant', async () => {
    const { inside } = folders();
    expect(await said(readFileSafely(inside('a.fti'), { most, shown: 'a.fti' }))).toBe(
      'a.fti: there is no such file. Did you mean a.fit?',
    );
    expect(await said(readFileSafely(inside('none/zzzzzz'), { most, shown: 'z' }))).toBe(
      'z: there is no such file.',
    );
  });

  it('refuses a folder', async () => {
    const { root } = folders();
    expect(await said(readFileSafely(root, { most, shown: 'root' }))).toBe(
      'root: it is a folder, and a file is wanted.',
    );
  });

  it('refuses a name that no file can have', async () => {
    expect(await said(readFileSafely('a\0b', { most, shown: 'a' }))).toBe(
      'a: the name holds a character that no file name can hold.',
    );
    expect(await said(readFileSafely('x'.repeat(5000), { most, shown: 'x' }))).toContain('x: ');
  });

  it.skipIf(onWindows)('does not wait for a pipe, and refuses devices', async () => {
    const { inside } = folders();
    execFileSync('mkfifo', [inside('pipe')]);
    expect(await said(readFileSafely(inside('pipe'), { most, shown: 'pipe' }))).toBe(
      'pipe: it is no ordinary file.',
    );
    expect(await said(readFileSafely('/dev/zero', { most, shown: 'zero' }))).toBe(
      'zero: it is no ordinary file.',
    );
  });

  it.skipIf(isRoot || onWindows)('says when permission is denied', async () => {
    const { inside } = folders();
    chmodSync(inside('a.fit'), 0);
    expect(await said(readFileSafely(inside('a.fit'), { most, shown: 'a.fit' }))).toBe(
      'a.fit: permission is denied. Look at the rights of the file and its folder.',
    );
  });
});

describe('reading inside a folder', () => {
  it('takes a path from that folder', async () => {
    const { root } = folders();
    expect((await readFileSafely('a.fit', { most, root })).name).toBe('a.fit');
    expect((await readFileSafely(path.join(root, 'a.fit'), { most, root })).name).toBe('a.fit');
  });

  it.each(['../secret', 'sub/../../secret', '..', '.', ''])('refuses %j', async (file) => {
    const { root } = folders();
    mkdirSync(path.join(root, 'sub'));
    expect(await said(readFileSafely(file, { most, root, shown: 'it' }))).toBe(
      'it: it lies outside the folder that may be read.',
    );
  });

  it('takes a name that only looks like the way out', async () => {
    const { root, inside } = folders();
    writeFileSync(inside('..a'), 'x');
    expect((await readFileSafely('..a', { most, root })).name).toBe('..a');
  });

  it.skipIf(onWindows)('follows no link to a file or folder, inside or outside', async () => {
    const { outside, root, inside } = folders();
    symlinkSync(path.join(outside, 'secret'), inside('file-link'));
    symlinkSync('a.fit', inside('inner-link'));
    symlinkSync(outside, inside('folder-link'));
    for (const link of ['file-link', 'inner-link']) {
      expect(await said(readFileSafely(link, { most, root, shown: link }))).toBe(
        `${link}: it is a link. Hand in the file itself.`,
      );
    }
    expect(await said(readFileSafely('folder-link/secret', { most, root, shown: 'it' }))).toBe(
      'it: it lies outside the folder that may be read.',
    );
  });

  it.skipIf(onWindows)('follows a link that the user named', async () => {
    const { inside } = folders();
    symlinkSync('a.fit', inside('mine'));
    expect(new TextDecoder().decode((await readFileSafely(inside('mine'), { most })).bytes)).toBe('abc');
    linkSync(inside('a.fit'), inside('hard'));
    expect((await readFileSafely(inside('hard'), { most })).bytes.length).toBe(3);
  });
});
