import { describe, expect, it } from 'vitest';
import { type Outcome, runTasks } from '../../src/event/workers.ts';

/** Answers what it is told to; some tasks it does not survive. */
const script = new URL(
  `data:text/javascript,${encodeURIComponent(`
import { parentPort, workerData } from 'node:worker_threads';
parentPort.on('message', (task) => {
  if (task === 'hang') for (;;);
  if (task === 'throw') throw new Error('broken');
  if (task === 'exit') process.exit(3);
  if (task === 'memory') { const all = []; for (;;) all.push(new Array(1e5).fill(all.length + 0.5)); }
  parentPort.postMessage(workerData + task);
});`)}`,
);

async function run(tasks: readonly string[], size: number): Promise<Outcome<string>[]> {
  const outcomes: Outcome<string>[] = [];
  const pool = { script, data: 'did ', size, patience: 5000, memory: 64 };
  await runTasks<string, string>(tasks, pool, (index, outcome) => {
    outcomes[index] = outcome;
  });
  return outcomes;
}

describe('the pool of workers', () => {
  it('lets a task that hangs, throws, exits or exhausts memory cost itself alone', async () => {
    const tasks = ['a', 'hang', 'b', 'throw', 'c', 'exit', 'd', 'memory', 'e'];
    const outcomes = await run(tasks, 2);
    expect(outcomes.map((one) => (one.state === 'done' ? one.result : one.why))).toEqual([
      'did a',
      'time',
      'did b',
      'fault',
      'did c',
      'fault',
      'did d',
      'memory',
      'did e',
    ]);
  });

  it('puts outcomes back in order, however many work', async () => {
    const tasks = Array.from({ length: 40 }, (_, i) => String(i));
    expect(await run(tasks, 3)).toEqual(await run(tasks, 1));
  });

  it('stops when whoever listens can go on no longer', async () => {
    const seen: number[] = [];
    const pool = { script, data: '', size: 1, patience: 1500, memory: 64 };
    const stopped = runTasks<string, string>(['a', 'b', 'c'], pool, (index) => {
      seen.push(index);
      throw new Error('the disk is full');
    });
    await expect(stopped).rejects.toThrow('the disk is full');
    expect(seen).toEqual([0]);
  });
});
