import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { documents, refreshed } from '../../src/dev/documents.ts';
import { filesUnder, readText } from './tree.ts';

const prose = filesUnder('.').filter((file) => file.endsWith('.md'));

describe('documents', () => {
  it('give the commands that continuous integration runs', () => {
    const section = /## Test\n[\s\S]*?```sh\n([\s\S]*?)```/.exec(readText('README.md'))?.[1];
    const commands = section?.trim().split('\n');
    expect(commands).toEqual(['npm ci', 'npm test']);
    expect(readText('.ci/run').match(/^npm .*$/gm)).toEqual(commands);
    const { jobs } = parse(readText('.github/workflows/ci.yml'));
    const steps: { run?: string }[] = jobs.test.steps;
    expect(steps.flatMap(({ run }) => run ?? [])).toEqual(commands);
  });

  it.each(documents)('%s holds what it describes as it is now: npm run docs', (file) => {
    expect(refreshed(readText(file))).toBe(readText(file));
  });

  it('name only scripts and paths that exist', () => {
    const { scripts } = JSON.parse(readText('package.json'));
    const missing = prose.flatMap((file) => {
      const text = readText(file);
      const commands = [...text.matchAll(/\bnpm run (?:-s )?([\w:]+)/g)].map((match) => match[1]!);
      const paths = [...text.matchAll(/`((?:src|test|rules|samples|dist|\.ci|\.github)\/[\w./-]*)`/g)]
        .map((match) => match[1]!)
        .filter((path) => !existsSync(path));
      return [...commands.filter((name) => !(name in scripts)), ...paths].map((name) => `${file}: ${name}`);
    });
    expect(missing).toEqual([]);
  });

  it('map every part of src/', () => {
    const map = readText('DEVELOPERS.md');
    const parts = readdirSync('src', { withFileTypes: true }).map((entry) =>
      entry.isDirectory() ? `src/${entry.name}/` : `src/${entry.name}`,
    );
    expect(parts.filter((part) => !map.includes(`\`${part}\``))).toEqual([]);
  });

  it('show the oldest Node that the package accepts', () => {
    const oldest = /\d+\.\d+/.exec(JSON.parse(readText('package.json')).engines.node)?.[0];
    expect(readText('README.md')).toContain(`${oldest} or newer`);
    const { jobs } = parse(readText('.github/workflows/ci.yml'));
    expect(jobs.test.strategy.matrix.node[0]).toBe(oldest);
  });

  it('pin every action that a workflow uses by its digest', () => {
    const uses = filesUnder('.github')
      .concat('README.md')
      .flatMap((file) => [...readText(file).matchAll(/uses: (\S+)/g)].map((match) => match[1]!))
      .filter((name) => name !== './' && !name.startsWith('OWNER/'));
    expect(uses.length).toBeGreaterThan(0);
    expect(uses.filter((name) => !/@[0-9a-f]{40}$/.test(name))).toEqual([]);
  });
});
