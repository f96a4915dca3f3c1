import { spawnSync } from 'node:child_process';
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

/** Runs Node with these arguments, and says what it cost. */
export function runProcess(args: readonly string[]): Cost {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--import', watcher, ...args], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  const time = performance.now() - start;
  if (status !== 0) throw new Error(`${args.join(' ')}: ${stderr}`);
  const [work, memory] = stderr.split('\n').at(-1)!.split(' ').map(Number);
  return { time, work: work!, memory: memory! };
}
