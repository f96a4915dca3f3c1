import process from 'node:process';
import { parentPort, Worker } from 'node:worker_threads';
import { ruleSet } from '../../src/rules.ts';
import { rowsOf } from './draw.ts';
import type { Plan, Task } from './plan.ts';
import type { Row } from './row.ts';

/** What a worker sends back for a task. */
interface Done {
  readonly task: Task;
  readonly rows: readonly Row[];
  /** Resident memory of the whole process just now, bytes. */
  readonly memory: number;
}

/**
 * Runs the tasks in worker threads of the script that is running; each takes the next when it is done.
 *
 * @param onDone told the rows of every task, in no particular order
 */
export async function inWorkers(
  plan: Plan,
  tasks: readonly Task[],
  workers: number,
  onDone: (done: Done) => void,
): Promise<void> {
  let next = 0;
  const script = process.argv[1]!;
  await Promise.all(
    Array.from({ length: Math.min(workers, tasks.length) }, () => {
      const worker = new Worker(script, { workerData: { plan } });
      return new Promise<void>((resolve, reject) => {
        const give = () => {
          const task = tasks[next++];
          if (task === undefined) void worker.terminate().then(() => resolve(), reject);
          else worker.postMessage(task);
        };
        worker.on('error', reject);
        worker.on('message', (done: Done) => {
          onDone(done);
          give();
        });
        give();
      });
    }),
  );
}

/** The other end. */
export async function work(plan: Plan): Promise<void> {
  const rules = await ruleSet();
  parentPort!.on('message', (task: Task) => {
    const rows: Row[] = [];
    for (let draw = task.from; draw < task.to; draw++) rows.push(...rowsOf(plan, task.lot, draw, rules));
    const done: Done = { task, rows, memory: process.memoryUsage().rss };
    parentPort!.postMessage(done);
  });
}
