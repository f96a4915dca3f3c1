import { parentPort, workerData } from 'node:worker_threads';
import { taskRunner } from '../cli/event-task.ts';

// One submission of an event after another, each by itself.
const run = taskRunner(workerData);
parentPort?.on('message', async (entry) => parentPort?.postMessage(await run(entry)));
