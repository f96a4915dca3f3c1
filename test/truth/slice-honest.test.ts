import process from 'node:process';
import { describe, expect, it } from 'vitest';
import { ruleSet } from '../../src/rules.ts';
import recorded from './slice.json' with { type: 'json' };
import { compareAsked, drawSlice } from './slice.ts';

describe('the small corpus', () => {
  it('asks no more honest riders than recorded', { timeout: 240_000 }, async () => {
    const { worse, better } = compareAsked(recorded.asked, drawSlice('honest', await ruleSet()).asked);
    if (better.length > 0)
      process.stdout.write(`Better than recorded (npm run truth -- --write-slice):\n${better.join('\n')}\n`);
    expect(worse).toEqual([]);
  });
});
