import path from 'node:path';
import { Command } from 'commander';
import { writeWhole } from '../files/index.ts';
import { completenessOf, printProfile } from '../history/index.ts';
import { completenessSaid } from '../report/words/completeness.ts';
import type { LeftOut, Profile } from '../types.ts';
import { type FactOptions, riderGiven } from './facts.ts';
import type { Io } from './io.ts';
import { options } from './options.ts';
import { keepApart } from './outputs.ts';
import { historyGiven, historyRead, profileGiven } from './past-rides.ts';
import { progressOn } from './progress.ts';
import { remark } from './say.ts';
import { status } from './status.ts';

interface ProfileOptions extends FactOptions {
  readonly out?: string;
  readonly history?: string;
}

const examples = `
Examples:
  $ wattassay profile rides/ --out profile.json
  $ wattassay profile new-rides/ --history profile.json --out profile.json
  $ wattassay audit trainer.fit --history profile.json

A profile holds the best mean power of each ride over some durations, no traces and no positions. It holds
heart rate, and the mass that climbs show, which are health data: keep it where only those see it who decide.
`;

/** `wattassay profile FOLDER`. `done` is told the exit status. */
export function profileCommand(io: Io, done: (status: number) => void): Command {
  return new Command('profile')
    .summary("compile a rider's earlier rides into a small file")
    .description("Compiles a folder or ZIP of a rider's earlier rides into a profile for --history.")
    .argument('<folder>', 'the recordings; folders in it are searched too')
    .option('--out <file>', 'write the profile to a file instead of printing it')
    .option('--history <profile>', 'an earlier profile to carry on: rides that it knows are not read again')
    .addOption(options.rider())
    .addOption(options.device())
    .addHelpText('after', examples)
    .action(async (folder: string, given: ProfileOptions) => done(await run(io, folder, given)));
}

async function run(io: Io, folder: string, given: ProfileOptions): Promise<number> {
  // An earlier profile may be carried on in its place.
  if (given.out !== undefined)
    await keepApart(io, [historyRead(folder), given.rider], [{ option: '--out', file: given.out }]);
  const progress = progressOn(io);
  try {
    const { devices } = (await riderGiven(io, given)).facts;
    const previous =
      given.history === undefined ? undefined : (await profileGiven(io, given.history)).profile;
    const { profile } = await historyGiven(io, folder, {
      ...(devices === undefined ? {} : { devices }),
      ...(previous === undefined ? {} : { previous }),
      onFile: (name) => progress.now(name),
      onTrouble: (said) => remark(io, `left out: ${said}`),
    });
    progress.clear();
    const text = printProfile(profile);
    if (given.out === undefined) io.stdout.write(text);
    else await writeWhole(path.resolve(io.cwd, given.out), text);
    remark(io, summary(profile));
    const completeness = completenessOf(profile);
    if (completeness !== null) remark(io, completenessSaid(completeness).replaceAll('\u00a0', ' '));
    return status.done;
  } finally {
    progress.clear();
  }
}

/** "41 rides; left out: 3 other sport, 1 duplicate". */
function summary({ rides, leftOut }: Profile): string {
  const counts = new Map<LeftOut, number>();
  for (const { why } of leftOut) counts.set(why, (counts.get(why) ?? 0) + 1);
  const said = [...counts].map(([why, count]) => `${count} ${why}`).sort();
  const kept = `${rides.length} ${rides.length === 1 ? 'ride' : 'rides'}`;
  return said.length === 0 ? kept : `${kept}; left out: ${said.join(', ')}`;
}
