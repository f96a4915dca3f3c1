import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesBelow, filesIn } from '../../src/files/index.ts';
import { onWindows, scratch } from './scratch.ts';

function tree(...files: string[]): string {
  const root = scratch();
  for (const file of files) {
    mkdirSync(path.join(root, path.dirname(file)), { recursive: true });
    writeFileSync(path.join(root, file), '');
  }
  return root;
}
const names = (found: readonly { name: string }[]) => found.map(({ name }) => name);
const bounds = { depth: 3, entries: 100 };

describe('walking a folder', () => {
  it('finds files in order of name, with / on every system, and no hidden ones', async () => {
    const root = tree('b.fit', 'a/2.fit', 'a/10.fit', 'Z.fit', 'ä.fit', '.hidden', '.git/config');
    const found = await filesBelow(root, bounds);
    expect(names(found)).toEqual(['Z.fit', 'a/10.fit', 'a/2.fit', 'b.fit', 'ä.fit']);
    expect(found[1]!.path).toBe(path.join(root, 'a', '10.fit'));
    expect(names(await filesIn(root))).toEqual(['Z.fit', 'b.fit', 'ä.fit']);
  });

  it.skipIf(onWindows)('follows no links, so that circles end', async () => {
    const root = tree('a/1.fit');
    symlinkSync('..', path.join(root, 'a', 'up'));
    symlinkSync('1.fit', path.join(root, 'a', '2.fit'));
    expect(names(await filesBelow(root, bounds))).toEqual(['a/1.fit']);
  });

  it('stops at too many entries, and at folders too deep', async () => {
    const root = tree('a/b/c/d.fit', 'a/e.fit');
    await expect(filesBelow(root, { depth: 3, entries: 5 })).resolves.toHaveLength(2);
    await expect(filesBelow(root, { depth: 3, entries: 4 })).rejects.toThrow('too many files');
    await expect(filesBelow(root, { depth: 2, entries: 5 })).rejects.toThrow('too deep');
  });

  it('says when there is no such folder, or it is none', async () => {
    const root = tree('a.fit');
    await expect(filesBelow(path.join(root, 'none'))).rejects.toMatchObject({
      code: 'file-missing',
      message: 'there is no such folder',
    });
    await expect(filesIn(path.join(root, 'a.fit'))).rejects.toMatchObject({ code: 'file-missing' });
  });
});
