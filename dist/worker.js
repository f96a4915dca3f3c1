import { x as taskRunner } from "./program.js";
import { parentPort, workerData } from "node:worker_threads";
// src/bin/worker.ts
const run = taskRunner(workerData);
parentPort?.on("message", async (entry) => parentPort?.postMessage(await run(entry)));
export {};
