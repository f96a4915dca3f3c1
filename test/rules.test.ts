import { describe, expect, it } from 'vitest';
import { ruleSet, shipped } from '../src/rules.ts';

describe('the rule set', () => {
  it('is the shipped one when nothing is laid over', async () => {
    const set = await ruleSet();
    expect(set.name).toBe('shipped');
    expect(set.rules).toEqual(shipped.rules);
    expect(set.overlaid).toEqual([]);
  });

  it('says everything that is wrong in one problem', async () => {
    const files = [
      { name: 'a.json', text: '{}' },
      { name: 'dead-cadence.rule.json', text: '{"id":"dead-cadence","titel":"x"}' },
    ];
    await expect(ruleSet(files, 'ours')).rejects.toMatchObject({
      code: 'rule-wrong',
      message: expect.stringMatching(
        /^a\.json: .*dead-cadence\.rule\.json › titel: .*Did you mean “title”\?$/,
      ),
    });
  });
});
