import { chmodSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeWhole } from '../../src/files/index.ts';
import { whyNot } from '../../src/files/trouble.ts';
import { isRoot, onWindows, scratch } from './scratch.ts';

describe('writing a file', () => {
  it('writes it whole, replaces what was there and leaves nothing else behind', async () => {
    const folder = scratch();
    const file = path.join(folder, 'report.html');
    await writeWhole(file, 'one, long');
    await writeWhole(file, 'two');
    expect(readFileSync(file, 'utf8')).toBe('two');
    await writeWhole(file, new Uint8Array([1, 2]));
    expect([...readFileSync(file)]).toEqual([1, 2]);
    expect(readdirSync(folder)).toEqual(['report.html']);
  });

  it('says when the folder is not there, and makes none', async () => {
    const folder = scratch();
    const file = path.join(folder, 'none', 'report.html');
    await expect(writeWhole(file, 'x')).rejects.toMatchObject({
      code: 'file-unwritable',
      message: 'its folder is not there',
      where: file,
      hint: `Make the folder ${path.join(folder, 'none')} first`,
    });
    expect(readdirSync(folder)).toEqual([]);
  });

  it('replaces no folder', async () => {
    const folder = scratch();
    mkdirSync(path.join(folder, 'report.html'));
    await expect(writeWhole(path.join(folder, 'report.html'), 'x')).rejects.toThrow(
      'there is a folder of this name',
    );
    expect(readdirSync(folder)).toEqual(['report.html']);
  });

  it.skipIf(onWindows)('replaces no device, and a link but not what it points at', async () => {
    await expect(writeWhole('/dev/null', 'x')).rejects.toThrow('it is no ordinary file');
    const folder = scratch();
    writeFileSync(path.join(folder, 'kept'), 'kept');
    symlinkSync('kept', path.join(folder, 'link'));
    await writeWhole(path.join(folder, 'link'), 'new');
    expect(readFileSync(path.join(folder, 'kept'), 'utf8')).toBe('kept');
    expect(readFileSync(path.join(folder, 'link'), 'utf8')).toBe('new');
  });

  it.skipIf(isRoot || onWindows)('says when the folder may not be written', async () => {
    const folder = scratch();
    chmodSync(folder, 0o500);
    await expect(writeWhole(path.join(folder, 'a'), 'x')).rejects.toThrow('permission is denied');
  });

  it('takes a long name without making a longer one beside it', async () => {
    const folder = scratch();
    const file = path.join(folder, `${'x'.repeat(250)}.md`);
    await writeWhole(file, 'x');
    expect(readFileSync(file, 'utf8')).toBe('x');
  });
});

describe('the words for a refusal', () => {
  it.each([
    ['ENOSPC', 'the disk is full'],
    ['EROFS', 'the disk can only be read'],
    ['EACCES', 'permission is denied'],
    ['EEXIST', 'it is there already'],
    ['EBUSY', 'another program is using it'],
  ])('%s', (code, what) => {
    expect(whyNot(Object.assign(new Error(), { code }))).toMatchObject({ what });
  });

  it.each([null, 'x', new Error('bug'), { code: 3 }, { code: 'toString' }])('are none for %j', (error) => {
    expect(whyNot(error)).toBeNull();
  });
});
