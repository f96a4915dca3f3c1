import { mkdirSync, mkdtempSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { beforeEach, describe, expect, it } from 'vitest';
import { refuseOutside } from '../../src/files/inside.ts';

let root: string;

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'wattassay-inside-'));
  mkdirSync(path.join(root, 'riders'));
});

describe('a path that must stay inside a folder', () => {
  it.each(['riders', 'riders/11/primary.fit', 'new/folder', '.', '..name', 'riders/../riders'])(
    'lets %j pass',
    async (file) => {
      await expect(refuseOutside(root, file)).resolves.toBeUndefined();
    },
  );

  it.each(['..', '../x', 'riders/../../x', path.resolve('package.json')])('refuses %j', async (file) => {
    await expect(refuseOutside(root, file)).rejects.toMatchObject({ code: 'file-refused', where: file });
  });

  it.skipIf(process.platform === 'win32')(
    'refuses a link anywhere on the way, dangling ones too',
    async () => {
      symlinkSync(tmpdir(), path.join(root, 'out'));
      symlinkSync('nowhere', path.join(root, 'riders', 'dangling.fit'));
      for (const file of ['out', 'out/x/y.html', 'riders/dangling.fit']) {
        await expect(refuseOutside(root, file)).rejects.toMatchObject({ code: 'file-refused' });
      }
    },
  );
});
