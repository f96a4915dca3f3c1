import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const timeout = 120_000;

it('the demonstration audits a pair and a rider with a history, and says where the pages lie', {
  timeout,
}, () => {
  const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
  const [, ...args] = scripts.demo.split(' ');
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  expect(stderr.replaceAll(/written: .*\r?\n/g, '')).toBe('');
  expect(status).toBe(0);
  expect(stdout.match(/checks could be judged/g)).toHaveLength(2);
  const pages = [...stdout.matchAll(/file:\S+\.html/g)].map(([url]) => fileURLToPath(url));
  expect(pages).toHaveLength(2);
  for (const page of pages) expect(readFileSync(page, 'utf8')).toMatch(/^<!doctype html>[\s\S]*<svg/);
});
