import process from 'node:process';
import { parentPort, Worker } from 'node:worker_threads';
import { ruleSet } from '../../src/rules.ts';
import type { RuleSet } from '../../src/types.ts';
import type { Plan, Task } from './plan.ts';

/** What a worker sends back for a task. */
interface Done<R> {
  readonly task: Task;
  readonly rows: readonly R[];
  /** Draws that could not be made or audited, each with why: they must not end a long run. */
  readonly broken: readonly string[];
  /** Resident memory of the whole process just now, bytes. */
  readonly memory: number;
}

/**
 * Runs the tasks in worker threads of the script that is running; each takes the next when it is done.
 *
 * @param until clock of `performance` after which no further task is begun
 * @param onDone told the rows of every task in the order of the tasks, whoever was faster: sums come out alike
 */
export async function inWorkers<R>(
  plan: Plan,
  tasks: readonly Task[],
  workers: number,
  until: number,
  onDone: (done: Done<R>) => void,
): Promise<void> {
  let next = 0;
  let told = 0;
  const waiting = new Map<number, Done<R>>();
  const tell = (index: number, done: Done<R>) => {
    waiting.set(index, done);
    for (let ready = waiting.get(told); ready !== undefined; ready = waiting.get(told)) {
      waiting.delete(told++);
      onDone(ready);
    }
  };
  const script = process.argv[1]!;
  await Promise.all(
    Array.from({ length: Math.min(workers, tasks.length) }, () => {
      const worker = new Worker(script, { workerData: { plan } });
      return new Promise<void>((resolve, reject) => {
        let index = -1;
        const give = () => {
          index = next++;
          const task = performance.now() < until ? tasks[index] : undefined;
          if (task === undefined) void worker.terminate().then(() => resolve(), reject);
          else worker.postMessage(task);
        };
        worker.on('error', reject);
        worker.on('message', (done: Done<R>) => {
          tell(index, done);
          give();
        });
        give();
      });
    }),
  );
}

/** Rows of one draw of a lot. */
export type Maker<R> = (plan: Plan, lot: number, draw: number, rules: RuleSet) => R[];

/** The other end. */
export async function work<R>(plan: Plan, make: Maker<R>): Promise<void> {
  const rules = await ruleSet();
  parentPort!.on('message', (task: Task) => {
    const rows: R[] = [];
    const broken: string[] = [];
    for (let draw = task.from; draw < task.to; draw++) {
      try {
        rows.push(...make(plan, task.lot, draw, rules));
      } catch (error) {
        const { count, ...lot } = plan.lots[task.lot]!;
        broken.push(`${JSON.stringify(lot)} draw ${draw}: ${(error as Error).stack ?? error}`);
      }
    }
    const done: Done<R> = { task, rows, broken, memory: process.memoryUsage().rss };
    parentPort!.postMessage(done);
  });
}
