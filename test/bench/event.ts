/**
 * `node src/dev/run.mjs test/bench/event.ts [COUNT]`: what an event costs, as ratios within one run. Runs the
 * built program as a user starts it. Takes a few minutes and some 2 GB of temporary disk for 2,000 submissions.
 */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { writeFit } from '../make/fit-writer.ts';
import { drawSubmission } from '../make/index.ts';
import { type Cost, runProcess, runTogether } from './process.ts';

const count = Number(process.argv[2] ?? 2000);
const minutes = 45;

const folder = mkdtempSync(path.join(tmpdir(), 'wattassay-event-'));
const at = (name: string) => path.join(folder, name);

/** Submissions of one race, each another rider; every third has a second recording. */
function generate(name: string, from: number, to: number): void {
  for (let number = from; number <= to; number++) {
    const { primary, seconds, rider } = drawSubmission(`bench ${number}`, {
      kind: 'bunch race',
      race: 'bench',
      minutes,
      seconds: number % 3 === 0 ? 1 : 0,
    });
    const home = at(`${name}/riders/${number}`);
    mkdirSync(home, { recursive: true });
    writeFileSync(path.join(home, 'primary.fit'), writeFit(primary));
    for (const second of seconds) writeFileSync(path.join(home, 'second.fit'), writeFit(second));
    writeFileSync(path.join(home, 'rider.json'), JSON.stringify(rider));
  }
  writeFileSync(at(`${name}/all.event.json`), JSON.stringify({ name, submissions: 'riders' }));
}

function auditing(name: string, out: string, jobs: number, ...others: string[]): readonly string[] {
  const cli = path.resolve('dist/cli.js');
  const how = ['--out', at(out), '--jobs', String(jobs), '--fail-on', 'never', ...others];
  return [cli, 'event', at(name), ...how];
}

const event = (name: string, out: string, jobs: number) => runProcess(auditing(name, out, jobs));

/**
 * What a second processor of this machine gives at best: to two loops that share nothing, and to the same
 * submissions audited by two programs with a half each, of which neither knows of the other.
 */
async function ceiling(one: Cost): Promise<string> {
  const spin = ['--eval', 'let x = 1; for (let i = 0; i < 3e9; i++) x = (x * 5 + i) | 0;'];
  const alone = await runTogether([spin]);
  const both = await runTogether([spin, spin]);
  const halves = await runTogether(
    [1, 2].map((part) => auditing('whole', `half-${part}`, 1, '--part', `${part}/2`)),
  );
  for (const part of [1, 2]) rmSync(at(`half-${part}`), { recursive: true });
  row('two programs, a half each', halves, `${times(one.time / halves.time)} as fast`);
  return `two empty loops ${times((2 * alone.time) / both.time)}, two programs ${times(one.time / halves.time)}`;
}

const times = (ratio: number) => `${ratio.toFixed(2)} times`;

function row(what: string, { time, work, memory }: Cost, note = ''): void {
  const seconds = `${(time / 1000).toFixed(1)} s`;
  const peak = `peak ${Math.round(memory / 1000)} MB`;
  // Above 1 with one worker too: collecting what is no longer needed and compiling have threads of their own.
  const busy = `${(work / time).toFixed(2)} processors`;
  process.stdout.write(
    `  ${what.padEnd(34)}${seconds.padStart(9)}  ${busy.padEnd(17)} ${peak.padEnd(13)} ${note}\n`,
  );
}

try {
  process.stdout.write(`Node ${process.version}, ${count} submissions of ${minutes} min\n`);
  generate('whole', 1, count);
  const few = Math.max(1, Math.round(count / 8));
  mkdirSync(at('few/riders'), { recursive: true });
  for (let number = 1; number <= few; number++) {
    cpSync(at(`whole/riders/${number}`), at(`few/riders/${number}`), { recursive: true });
  }
  writeFileSync(at('few/all.event.json'), JSON.stringify({ name: 'few', submissions: 'riders' }));

  row(`${few} submissions, 2 workers`, event('few', 'out-few', 2));
  rmSync(at('out-few'), { recursive: true });
  const one = event('whole', 'out-one', 1);
  row('all, 1 worker', one);
  const record = readFileSync(at('out-one/event.json'));
  const page = readFileSync(at('out-one/overview.html'));
  rmSync(at('out-one'), { recursive: true });
  const most = await ceiling(one);
  const two = event('whole', 'out', 2);
  const same = record.equals(readFileSync(at('out/event.json'))) ? 'same bytes' : 'OTHER BYTES';
  row('all, 2 workers', two, `${times(one.time / two.time)} as fast (target 1.8); ${same}`);
  process.stdout.write(`    the most that this machine gives now: ${most}\n`);
  const again = event('whole', 'out', 2);
  const share = (time: number) => `${((100 * time) / two.time).toFixed(1)} % of the first`;
  row('again, nothing changed', again, `${share(again.time)} (target 3 %)`);
  cpSync(at('whole/riders/1/primary.fit'), at('whole/riders/2/primary.fit'));
  const changed = event('whole', 'out', 2);
  row('again, one submission changed', changed, share(changed.time));
  const kilobytes = (bytes: Buffer) => `${Math.round(bytes.length / 1000)} kB`;
  process.stdout.write(`  event.json ${kilobytes(record)}, overview.html ${kilobytes(page)}\n`);
  if (process.env.KEEP_OVERVIEW !== undefined) writeFileSync(process.env.KEEP_OVERVIEW, page);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
