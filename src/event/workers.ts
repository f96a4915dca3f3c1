import { Worker } from 'node:worker_threads';

export interface Pool {
  /** The program that each worker runs: it answers every message with one. */
  readonly script: URL;
  /** Given to each worker when it starts. */
  readonly data: unknown;
  readonly size: number;
  /** ms after which a task is given up. Counted from when it starts, not from when it was put in line. */
  readonly patience: number;
  /** MB of heap in each worker. */
  readonly memory: number;
}

export type Outcome<R> =
  | { readonly state: 'done'; readonly result: R }
  | { readonly state: 'lost'; readonly why: 'time' | 'memory' | 'fault'; readonly message: string };

/**
 * Runs tasks on worker threads, each worker with one task in hand. A task that hangs, exhausts memory or
 * brings its worker down costs itself alone: the worker is replaced. Outcomes are told as they come.
 *
 * @param onOutcome told of each task by its place; what it throws ends the run
 */
export async function runTasks<T, R>(
  tasks: readonly T[],
  pool: Pool,
  onOutcome: (index: number, outcome: Outcome<R>) => void,
): Promise<void> {
  let next = 0;
  let stopped = false;
  const lane = async () => {
    let worker: Worker | null = null;
    try {
      while (next < tasks.length && !stopped) {
        const index = next++;
        worker ??= start(pool);
        const outcome: Outcome<R> = await run<R>(worker, tasks[index], pool.patience);
        if (outcome.state === 'lost') {
          await worker.terminate();
          worker = null;
        }
        onOutcome(index, outcome);
      }
    } catch (error) {
      stopped = true;
      throw error;
    } finally {
      await worker?.terminate();
    }
  };
  const lanes = Array.from({ length: Math.max(1, Math.min(pool.size, tasks.length)) }, lane);
  const ended = await Promise.allSettled(lanes);
  const failed = ended.find((one) => one.status === 'rejected');
  if (failed !== undefined) throw failed.reason;
}

function start({ script, data, memory }: Pool): Worker {
  return new Worker(script, {
    workerData: data,
    // Nothing of the environment is needed, and what starts Node differently here must not do so there.
    env: {},
    execArgv: [],
    resourceLimits: { maxOldGenerationSizeMb: memory },
  });
}

function run<R>(worker: Worker, task: unknown, patience: number): Promise<Outcome<R>> {
  return new Promise((resolve) => {
    const listeners = {
      message: (result: R) => settle({ state: 'done', result }),
      error: (error: NodeJS.ErrnoException) =>
        lost(error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? 'memory' : 'fault', String(error.message ?? error)),
      exit: (code: number) => lost('fault', `the worker ended with code ${code}`),
    };
    const lost = (why: 'time' | 'memory' | 'fault', message: string) => {
      // It may fail once more while it is being ended: that has been told already.
      worker.on('error', () => {});
      settle({ state: 'lost', why, message });
    };
    const settle = (outcome: Outcome<R>) => {
      clearTimeout(timer);
      for (const [name, listener] of Object.entries(listeners)) worker.off(name, listener);
      resolve(outcome);
    };
    const timer = setTimeout(
      () => lost('time', `no answer within ${Math.round(patience / 1000)} s`),
      patience,
    );
    for (const [name, listener] of Object.entries(listeners)) worker.on(name, listener);
    worker.postMessage(task);
  });
}
