import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { raceFrom, riderFrom } from '../../src/judge/facts.ts';
import { sentence } from '../../src/problem.ts';
import { layOver, shipped } from '../../src/rules.ts';

const text = readFileSync(new URL('../../rules/README.md', import.meta.url), 'utf8');
const blocks = [...text.matchAll(/```json\n([\s\S]*?)```/g)].map(([, json]) => json!);
const files = blocks
  .filter((json) => json.startsWith('{'))
  .map((json) => ({ json, value: JSON.parse(json) }));
const changes = files.filter(({ value }) => 'id' in value);

describe('what the guide to the rules shows', () => {
  it.each(changes)('can be laid over the shipped rules: $json', async ({ json, value }) => {
    const { set, problems } = await layOver([{ name: `${value.id}.rule.json`, text: json }], 'ours');
    expect(problems.map(sentence)).toEqual([]);
    expect(set).not.toBeNull();
  });

  it('holds two changes, a rider and a race that can be read', async () => {
    expect(changes).toHaveLength(2);
    const [rider, race] = files.filter(({ value }) => !('id' in value));
    await expect(riderFrom(rider!.value, 'rider.json')).resolves.toBeDefined();
    await expect(raceFrom(race!.value, 'race.json')).resolves.toBeDefined();
  });

  it('quotes what is really said of an example that the limits contradict', async () => {
    const rule = shipped.rules.find(({ id }) => id === 'late-drift')!;
    const change = { id: rule.id, limits: { query: { 'at least': 1000 } }, highest: 'query' };
    const limits = { ...change.limits, refer: null };
    const { problems } = await layOver(
      [{ name: 'late-drift.rule.json', text: JSON.stringify({ ...change, limits }) }],
      'ours',
    );
    const quoted = /`(late-drift\.rule\.json › examples[^`]*)`/.exec(text)?.[1];
    expect(problems.map((problem) => `${problem.where}: ${problem.message}`)).toContain(quoted);
  });
});
