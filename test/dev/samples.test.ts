import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { sampleEvent } from '../../src/dev/sample-event.ts';

const made = sampleEvent();

describe('the invented event', () => {
  it('lies on disk byte for byte as it is made, and nothing else does', () => {
    const found = readdirSync('samples/event', { recursive: true, encoding: 'utf8' })
      .map((name) => path.join('samples/event', name))
      .filter((file) => statSync(file).isFile())
      .map((file) => path.relative('samples', file).replaceAll(path.sep, '/'));
    expect(found.sort()).toEqual([...made.keys()].sort());
    for (const [name, bytes] of made) {
      const same = Buffer.compare(readFileSync(path.join('samples', name)), bytes) === 0;
      expect(same, `samples/${name} differs: run \`npm run samples\``).toBe(true);
    }
  });

  it('stays small', () => {
    let bytes = 0;
    for (const content of made.values()) bytes += content.length;
    expect(bytes).toBeLessThan(6e6);
  });

  it('has every rider’s story told', () => {
    const told = readFileSync('samples/README.md', 'utf8');
    const riders = new Set(
      [...made.keys()].map((name) => name.split('/')[2]!).filter((part) => /^\d+$/.test(part)),
    );
    expect(riders.size).toBe(24);
    for (const rider of riders) expect(told).toContain(`| ${rider} | **`);
  });
});
