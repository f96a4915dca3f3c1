import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { ruleSet } from '../../src/rules.ts';
import recorded from './slice.json' with { type: 'json' };
import { compareFound, drawSlice } from './slice.ts';

describe('the small corpus', () => {
  it('finds no less than recorded', { timeout: 240_000 }, async () => {
    const { worse, better } = compareFound(recorded.found, drawSlice('faults', await ruleSet()).found);
    if (better.length > 0)
      process.stdout.write(`Better than recorded (npm run truth -- --write-slice):\n${better.join('\n')}\n`);
    expect(worse).toEqual([]);
  });
});
