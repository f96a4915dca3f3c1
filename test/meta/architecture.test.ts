import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { filesUnder, type Import, importsOf, reachableFrom, readText } from './tree.ts';

/** Stages in the order in which a submission passes them. They never import one another. */
const stages = [
  'read',
  'normalise',
  'align',
  'sections',
  'history',
  'measure',
  'judge',
  'report',
  'event',
  'files',
];
/** The tables of contents: the only modules that put stages together, beside the doors and the public list. */
const tables = ['audit', 'assemble', 'profile', 'rules', 'event', 'index'];
/** Doors: what people and programs start. */
const doors = ['cli', 'action', 'bin', 'dev'];

const modules = filesUnder('src').filter((file) => file.endsWith('.ts'));
const imports = modules.flatMap(importsOf);

/** The first folder under src, or the name of a module that stands in src itself. */
const homeOf = (file: string) => file.split('/')[1]?.replace(/\.ts$/, '') ?? '';
const isFolder = (file: string) => file.split('/').length > 2;
const stageOf = (file: string) =>
  file.startsWith('src/') && isFolder(file) && stages.includes(homeOf(file)) ? homeOf(file) : null;
const said = (found: readonly Import[]) => found.map(({ file, target }) => `${file} → ${target}`);

describe('architecture', () => {
  it('sees the imports', () => {
    expect(imports.length).toBeGreaterThan(modules.length);
    expect(imports.filter(({ target }) => target.startsWith('src/') && !existsSync(target))).toEqual([]);
  });

  it('keeps stages apart: they meet in types.ts', () => {
    const across = imports.filter(({ file, target }) => {
      const [from, to] = [stageOf(file), stageOf(target)];
      return from !== null && to !== null && from !== to;
    });
    expect(said(across)).toEqual([]);
  });

  it('lets only the tables of contents and the doors import stages', () => {
    const allowed = new Set([...tables, ...doors]);
    const others = imports.filter(
      ({ file, target }) => stageOf(target) !== null && stageOf(file) === null && !allowed.has(homeOf(file)),
    );
    expect(said(others)).toEqual([]);
  });

  it('lets no stage import a table of contents or a door', () => {
    const upward = imports.filter(
      ({ file, target }) =>
        (stageOf(file) !== null || homeOf(file) === 'math') &&
        target.startsWith('src/') &&
        stageOf(target) === null &&
        [...tables, ...doors].includes(homeOf(target)),
    );
    expect(said(upward)).toEqual([]);
  });

  it('keeps math free of everything but the nouns', () => {
    const foreign = imports.filter(
      ({ file, target }) =>
        homeOf(file) === 'math' &&
        target.startsWith('src/') &&
        !['math', 'types', 'problem', 'units'].includes(homeOf(target)),
    );
    expect(said(foreign)).toEqual([]);
  });

  it('lets nothing that a page loads reach Node', () => {
    const node = [...reachableFrom('src/index.ts')].filter(([target]) => target.startsWith('node:'));
    expect(node).toEqual([]);
  });

  it('keeps @actions/core to the action, out of the command line', () => {
    const users = imports.filter(({ target }) => target === '@actions/core');
    expect(
      users.map(({ file }) => file).filter((file) => !/^src\/(bin\/action|action)\.ts$/.test(file)),
    ).toEqual([]);
    expect([...reachableFrom('src/bin/wattassay.ts').keys()]).not.toContain('@actions/core');
  });

  it('reads the disk in files/ and the doors only', () => {
    const readers = imports.filter(
      ({ file, target }) =>
        target.startsWith('node:') && ![...doors, 'files'].includes(homeOf(file)) && !/worker/.test(file),
    );
    expect(said(readers)).toEqual([]);
  });

  it('gives measures no sight of limits, and the report none of statistics', () => {
    const limits = imports.filter(
      ({ file, target }) => stageOf(file) === 'measure' && /^rules\//.test(target),
    );
    const statistics = imports.filter(
      ({ file, target }) =>
        stageOf(file) === 'report' &&
        ((homeOf(target) === 'math' && target !== 'src/math/digest.ts') || target === 'simple-statistics'),
    );
    expect(said([...limits, ...statistics])).toEqual([]);
  });

  it('lets rules be read by the judge alone', () => {
    const readers = imports.filter(
      ({ file, target }) => target.startsWith('rules/') && homeOf(file) !== 'judge',
    );
    expect(said(readers).filter((line) => !line.startsWith('src/dev/'))).toEqual([]);
  });

  it('lets the simulator borrow nothing from what it tests', () => {
    const borrowed = filesUnder('test/make')
      .filter((file) => file.endsWith('.ts'))
      .flatMap(importsOf)
      .filter(({ target, typeOnly }) => target.startsWith('src/') && !typeOnly);
    expect(said(borrowed)).toEqual([]);
  });

  it('uses no clock and no unseeded chance', () => {
    const loose = modules
      .filter((file) => !doors.includes(homeOf(file)) && homeOf(file) !== 'files')
      .filter((file) =>
        /\bMath\.random\b|\bDate\.now\b|\bnew Date\(\)|\bperformance\.now\b/.test(readText(file)),
      );
    expect(loose).toEqual([]);
  });
});
