import { spawnSync } from 'node:child_process';
import process from 'node:process';

/**
 * Writes the highest resident size (kB) as the last line of standard error. On Linux the usual counter
 * starts with the memory of the process that started this one; the kernel's own high-water mark does not.
 */
const watcher = `data:text/javascript,${encodeURIComponent(`
import { readFileSync } from 'node:fs';
process.on('exit', () => {
  let peak = process.resourceUsage().maxRSS;
  try { peak = /VmHWM:\\s+(\\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))[1]; } catch {}
  process.stderr.write('\\n' + peak);
});`)}`;

/** Runs Node with these arguments: ms, and the highest resident size in kB. */
export function runProcess(args: readonly string[]): { time: number; memory: number } {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--import', watcher, ...args], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  const time = performance.now() - start;
  if (status !== 0) throw new Error(`${args.join(' ')}: ${stderr}`);
  return { time, memory: Number(stderr.split('\n').at(-1)) };
}
