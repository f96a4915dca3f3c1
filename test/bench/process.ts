import { spawn, spawnSync } from 'node:child_process';
import process from 'node:process';

/**
 * Writes the processor time (ms) and the highest resident size (kB) as the last line of standard error. On Linux
 * the usual counter of memory starts with the memory of the process that started this one; the kernel's own high-water mark does not.
 */
const watcher = `data:text/javascript,${encodeURIComponent(`
import { readFileSync } from 'node:fs';
process.on('exit', () => {
  let peak = process.resourceUsage().maxRSS;
  try { peak = /VmHWM:\\s+(\\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))[1]; } catch {}
  const { userCPUTime, systemCPUTime } = process.resourceUsage();
  process.stderr.write('\\n' + Math.round((userCPUTime + systemCPUTime) / 1000) + ' ' + peak);
});`)}`;

export interface Cost {
  /** ms of the clock. */
  readonly time: number;
  /** ms of all processors together: another program beside it makes the clock run on, and these hardly. */
  readonly work: number;
  /** Highest resident size, kB. */
  readonly memory: number;
}

/** What Node is started with, so that it says what it cost. */
const watched = (args: readonly string[]) => ['--import', watcher, ...args];
const env = { ...process.env, NO_COLOR: '1' };

/** Runs Node with these arguments, and says what it cost. */
export function runProcess(args: readonly string[]): Cost {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, watched(args), { encoding: 'utf8', env });
  return costOf(args, status, stderr, performance.now() - start);
}

/** Runs Node several times at once: the time until the last is done, all their work, and their memory together. */
export async function runTogether(runs: readonly (readonly string[])[]): Promise<Cost> {
  const costs = await Promise.all(runs.map(runBeside));
  const sum = (of: (cost: Cost) => number) => costs.reduce((all, cost) => all + of(cost), 0);
  return {
    time: Math.max(...costs.map(({ time }) => time)),
    work: sum(({ work }) => work),
    memory: sum(({ memory }) => memory),
  };
}

function runBeside(args: readonly string[]): Promise<Cost> {
  const start = performance.now();
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, watched(args), { env, stdio: ['ignore', 'ignore', 'pipe'] });
    let stderr = '';
    child.stderr.setEncoding('utf8').on('data', (text) => {
      stderr += text;
    });
    child.on('error', reject).on('close', (status) => {
      try {
        resolve(costOf(args, status, stderr, performance.now() - start));
      } catch (error) {
        reject(error);
      }
    });
  });
}

/** @throws Error when the process failed */
function costOf(args: readonly string[], status: number | null, stderr: string, time: number): Cost {
  if (status !== 0) throw new Error(`${args.join(' ')}: ${stderr}`);
  const [work, memory] = stderr.split('\n').at(-1)!.split(' ').map(Number);
  return { time, work: work!, memory: memory! };
}
