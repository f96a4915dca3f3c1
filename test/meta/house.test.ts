import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { tool } from '../../src/tool.ts';
import { filesUnder, importsOf, readText } from './tree.ts';

const manifest = JSON.parse(readText('package.json'));
const lock = JSON.parse(readText('package-lock.json'));
const written = filesUnder('.').filter((file) => /\.(ts|mjs|md|json|ya?ml|txt)$|^\.ci\//.test(file));
const modules = written.filter((file) => /\.(ts|mjs)$/.test(file));

const topLevel = [
  'LICENSE',
  'README.md',
  'DEVELOPERS.md',
  'action.yml',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'dist',
  'rules',
  'samples',
  'src',
  'test',
];
/** Made by commands, and ignored by git. */
const madeHere = ['node_modules', 'out', 'coverage'];

describe('the house', () => {
  it('keeps its top level to what the developers’ guide names', () => {
    const there = readdirSync('.').filter((name) => !name.startsWith('.') && !madeHere.includes(name));
    expect(there.filter((name) => !topLevel.includes(name))).toEqual([]);
  });

  it('states one version everywhere', () => {
    expect(tool).toEqual({ name: manifest.name, version: manifest.version });
    expect(lock.version).toBe(manifest.version);
  });

  it('pins every package exactly, and the lock file names no registry', () => {
    const versions = Object.values({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(String(version)))).toEqual([]);
    const entries: { resolved?: string; link?: boolean }[] = Object.values(lock.packages);
    expect(entries.filter(({ resolved }) => resolved !== undefined)).toEqual([]);
  });

  it('uses every package that it depends on, and depends on every package that it uses', () => {
    const used = (files: readonly string[]) =>
      new Set(
        files
          .flatMap(importsOf)
          .map(({ target }) => target)
          .filter((name) => !/^(node:|src\/|test\/|rules\/|samples\/|\.|[\w-]+\.json$)/.test(name))
          .map((name) =>
            name
              .split('/')
              .slice(0, name.startsWith('@') ? 2 : 1)
              .join('/'),
          ),
      );
    const shipped = modules.filter((file) => file.startsWith('src/') && !file.startsWith('src/dev/'));
    expect([...used(shipped)].sort()).toEqual(Object.keys(manifest.dependencies).sort());
    const known = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
    expect([...used(modules)].filter((name) => !known.includes(name))).toEqual([]);
  });

  it('ships under one licence, with the licence of every bundled package beside it', () => {
    expect(manifest.license).toBe('MIT');
    expect(readText('LICENSE')).toMatch(/^MIT License/);
    const texts = readText('dist/licenses.txt');
    const bundled = Object.keys(manifest.dependencies).filter((name) => !texts.includes(`${name} `));
    expect(bundled).toEqual([]);
  });

  it('has a test for every measure', () => {
    const measures = modules.filter(
      (file) => file.startsWith('src/measure/') && /\bdefineMeasure\(\{/.test(readText(file)),
    );
    const untested = measures.filter(
      (file) => !existsSync(file.replace(/^src/, 'test').replace(/\.ts$/, '.test.ts')),
    );
    expect(untested).toEqual([]);
  });

  it('speaks of no machine, and links to nothing outside itself', () => {
    const machine = /(^|[\s"'`(=])(\/(home|Users|root|work|farm|mnt)\/|[A-Z]:\\\\?Users)/m;
    expect(written.filter((file) => machine.test(readText(file)))).toEqual([]);
    const broken = written
      .filter((file) => file.endsWith('.md'))
      .flatMap((file) =>
        [...readText(file).matchAll(/\]\((?!https?:|mailto:|#)([^)#\s]+)/g)]
          .map(([, target]) => path.posix.join(path.posix.dirname(file), target ?? ''))
          .filter((target) => target.startsWith('..') || !existsSync(target))
          .map((target) => `${file} → ${target}`),
      );
    expect(broken).toEqual([]);
  });

  it('leaves nothing for later in the code', () => {
    const marks = /\b(TODO|FIXME|XXX|HACK)\b/;
    const others = written.filter((file) => file !== 'test/meta/house.test.ts');
    expect(others.filter((file) => marks.test(readText(file)))).toEqual([]);
  });
});
