#!/usr/bin/env node
import { p as main } from "./program.js";
import process from "node:process";
// src/bin/wattassay.ts
process.stdout.on("error", (error) => {
	if (error.code !== "EPIPE") throw error;
});
const { stdout, stderr, env } = process;
process.exitCode = await main(process.argv.slice(2), {
	stdout,
	stderr,
	env,
	cwd: process.cwd()
});
export {};
