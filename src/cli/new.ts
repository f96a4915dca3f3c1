import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { Command } from 'commander';
import { whyUnwritable, writeWhole } from '../files/index.ts';
import { Problem } from '../problem.ts';
import { makeFolder } from './event-folders.ts';
import type { Io } from './io.ts';
import { repositoryFiles } from './new-files.ts';
import { remark } from './say.ts';
import { status } from './status.ts';

const examples = `
Examples:
  $ wattassay new our-series

Lays out a folder for events, rules, profiles and texts for riders. Make it a PRIVATE repository: a recording in a
public one publishes a rider's home and heart rate for good.
`;

/** `wattassay new FOLDER`. `done` is told the exit status. */
export function newCommand(io: Io, done: (status: number) => void): Command {
  return new Command('new')
    .summary('lay out a private results repository')
    .description(
      'Lays out a private results repository: events, rules, profiles, texts for riders, workflows.',
    )
    .argument('<folder>', 'the folder to make; it must be empty or not there')
    .addHelpText('after', examples)
    .action(async (folder: string) => done(await run(io, folder)));
}

async function run(io: Io, folder: string): Promise<number> {
  const place = path.resolve(io.cwd, folder);
  const there = await readdir(place).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw whyUnwritable(error, folder);
  });
  if (there.some((name) => name !== '.git')) {
    throw new Problem({
      code: 'file-unwritable',
      what: 'this folder is not empty, and nothing in it is overwritten',
      where: folder,
      hint: 'Name a folder that is not there yet',
    });
  }
  const files = Object.entries(repositoryFiles(path.basename(place)));
  for (const [name, text] of files) {
    const file = path.join(place, ...name.split('/'));
    await makeFolder(path.dirname(file), path.join(folder, path.dirname(name)));
    await writeWhole(file, text);
  }
  io.stdout.write(`${files.map(([name]) => `${folder}/${name}`).join('\n')}\n`);
  remark(io, 'Keep it private: the README says why, and how riders hand files in.');
  return status.done;
}
