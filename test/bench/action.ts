/**
 * `node src/dev/run.mjs test/bench/action.ts [COUNT]`: what the action costs for one changed submission in a
 * repository of 2,000, against all of them. Runs the built program as a runner does, over a pull request. All are
 * reckoned from one part in twenty: they would take a quarter of an hour.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { writeFit } from '../make/fit-writer.ts';
import { drawSubmission } from '../make/index.ts';
import { runProcess } from './process.ts';

const count = Number(process.argv[2] ?? 2000);
const minutes = 45;
/** Rides that are drawn; riders take turns at them, since only their number and size matter here. */
const rides = Math.min(count, 100);
const parts = 20;

const folder = mkdtempSync(path.join(tmpdir(), 'wattassay-action-'));
const at = (name: string) => path.join(folder, 'checkout', ...name.split('/'));

function git(...args: readonly string[]): string {
  const who = ['-c', 'user.name=A', '-c', 'user.email=a@example.org', '-c', 'gc.auto=0'];
  return execFileSync('git', [...who, ...args], {
    cwd: path.join(folder, 'checkout'),
    encoding: 'utf8',
  }).trim();
}

function generate(): void {
  for (let number = 1; number <= count; number++) {
    const home = at(`riders/${number}`);
    mkdirSync(home, { recursive: true });
    if (number > rides) {
      cpSync(at(`riders/${((number - 1) % rides) + 1}`), home, { recursive: true });
      continue;
    }
    const { primary, seconds, rider } = drawSubmission(`bench ${number}`, {
      kind: 'bunch race',
      race: 'bench',
      minutes,
      seconds: number % 3 === 0 ? 1 : 0,
    });
    writeFileSync(path.join(home, 'primary.fit'), writeFit(primary));
    for (const second of seconds) writeFileSync(path.join(home, 'second.fit'), writeFit(second));
    writeFileSync(path.join(home, 'rider.json'), JSON.stringify(rider));
  }
  writeFileSync(at('all.event.json'), JSON.stringify({ name: 'all', submissions: 'riders' }));
}

/** A run of the action on a pull request that has been checked out. */
function action(out: string, inputs: Readonly<Record<string, string>>): { time: number; work: number } {
  const payload = path.join(folder, 'payload.json');
  writeFileSync(payload, '{}');
  const given = {
    EVENT: '.',
    'CHANGED-ONLY': 'true',
    'TERMS-FROM': 'base',
    RULES: '',
    EARLIER: '',
    PART: '',
    'REPORT-FOLDER': out,
    'FAIL-ON': 'never',
    REDACT: 'true',
    ...inputs,
  };
  Object.assign(process.env, {
    ...Object.fromEntries(Object.entries(given).map(([name, value]) => [`INPUT_${name}`, value])),
    GITHUB_WORKSPACE: path.join(folder, 'checkout'),
    GITHUB_EVENT_NAME: 'pull_request',
    GITHUB_EVENT_PATH: payload,
    GITHUB_REF: 'refs/pull/1/merge',
    GITHUB_SHA: git('rev-parse', 'HEAD'),
  });
  return runProcess([path.resolve('dist/action.js')]);
}

function row(what: string, { time, work }: { time: number; work: number }, note = ''): void {
  const said = `${(time / 1000).toFixed(2)} s`.padStart(10);
  process.stdout.write(`  ${what.padEnd(44)}${said}   work ${(work / 1000).toFixed(2)} s   ${note}\n`);
}

try {
  mkdirSync(path.join(folder, 'checkout'));
  git('init', '--quiet', '--template=', '--initial-branch=main');
  generate();
  git('add', '--all');
  git('commit', '--quiet', '--message', 'all');
  const base = git('rev-parse', 'HEAD');
  writeFileSync(at('riders/1/rider.json'), JSON.stringify({ massKg: 61 }));
  git('commit', '--quiet', '--all', '--message', 'one');
  const tip = git('rev-parse', 'HEAD');
  git('update-ref', 'HEAD', git('commit-tree', 'HEAD^{tree}', '-p', base, '-p', tip, '-m', 'merge'));

  process.stdout.write(`Node ${process.version}, ${count} submissions of ${minutes} min\n`);
  const one = action('out-one', {});
  row('one changed', one, '(target: under 2 s)');
  const part = action('out-part', { PART: `1/${parts}` });
  row(`one part in ${parts}`, part);
  const ratio = (of: 'time' | 'work') => `${((100 * one[of]) / (parts * part[of])).toFixed(2)} %`;
  process.stdout.write(
    `  one against all, reckoned: ${ratio('time')} of the time, ${ratio('work')} of the work\n`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
