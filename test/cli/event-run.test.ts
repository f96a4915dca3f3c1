import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { runEntries } from '../../src/cli/event-run.ts';
import type { Entry } from '../../src/types.ts';

/** Audits nobody: it dies of each submission, and says in its error what it was told of the rider. */
const program = `
import { parentPort } from 'node:worker_threads';
parentPort.on('message', ({ number, name }) => {
  if (number === '1') for (;;);
  if (number === '2') { const all = []; for (;;) all.push(new Array(1e5).fill(all.length + 0.5)); }
  throw new Error(name);
});`;

function entry(number: string): Entry {
  return {
    number,
    name: 'Jane Oyster',
    id: 'LIC-998877',
    category: null,
    place: null,
    race: {},
    rider: {},
    factInputs: [],
    rules: null,
    primary: `${number}/oyster.fit`,
    seconds: [],
    history: null,
    doubt: null,
    secondsAbove: null,
  };
}

async function run(numbers: readonly string[], patience: number, redacted: boolean) {
  const root = mkdtempSync(path.join(tmpdir(), 'wattassay-lost-'));
  const script = path.join(root, 'worker.mjs');
  writeFileSync(script, program);
  const setting = { root, out: root, cwd: root, terms: root, rules: null, event: 'Round 3', redacted };
  const workers = { script: pathToFileURL(script), memory: 32 };
  const options = { jobs: 2, patience, onRow: () => {}, workers };
  return (await runEntries(numbers.map(entry), setting, options)).rows;
}

/** Only what never ends is given up for its time, however busy the machine is. */
const lost = async (redacted: boolean) => [
  ...(await run(['1'], 0.2, redacted)),
  ...(await run(['2', '3'], 60, redacted)),
];

describe('submissions that are lost to time, memory or a fault', { timeout: 60_000 }, () => {
  it('name nobody where names are withheld, and are told as not audited', async () => {
    const rows = await lost(true);
    expect(rows.map(({ state, grade }) => [state, grade])).toEqual(
      Array.from({ length: 3 }, () => ['not audited', 'incomplete']),
    );
    expect(JSON.stringify(rows)).not.toMatch(/oyster|998877/i);
  });

  it('say why they were lost otherwise', async () => {
    const rows = await lost(false);
    expect(rows.map(({ name }) => name)).toEqual(Array.from({ length: 3 }, () => 'Jane Oyster'));
    expect(rows.map(({ why }) => why)).toEqual([
      expect.stringContaining('did not come to an end'),
      expect.stringContaining('needs more memory'),
      expect.stringContaining('Jane Oyster'),
    ]);
  });
});
