import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { detailsOf } from '../../src/judge/check/claims.ts';
import { ruleFaults } from '../../src/judge/load.ts';
import { shippedGrades, shippedRules } from '../../src/judge/shipped.ts';
import { measures } from '../../src/measure/index.ts';
import { faultsOf } from '../../src/schema.ts';

const folder = new URL('../../rules/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
const ids = readdirSync(folder)
  .filter((name) => name.endsWith('.rule.json'))
  .map((name) => name.slice(0, -'.rule.json'.length))
  .sort();

describe('the shipped rules', () => {
  it('are the files of the folder, all of them', () => {
    expect(shippedRules.map((rule) => rule.id).sort()).toEqual(ids);
  });

  it('stand in the order of the families', () => {
    const order = ['recording', 'trace', 'agreement', 'physiology'];
    const places = shippedRules.map((rule) => order.indexOf(rule.family));
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it.each(ids)('%s follows its schema and makes sense', async (id) => {
    const { $schema, ...rule } = read(`${id}.rule.json`);
    expect($schema).toBe('./rule.schema.json');
    expect(rule.id).toBe(id);
    const others = shippedRules.map(({ id }) => id);
    expect(await ruleFaults(rule, { rules: [rule], measures }, others)).toEqual([]);
  });

  it.each(shippedRules.map((rule) => [rule.id, rule] as const))(
    '%s has an example of every level that it makes, and of none',
    (_, rule) => {
      const shown = new Set(rule.examples.map((example) => example.level));
      for (const level of ['none', ...Object.keys(rule.limits)]) expect([...shown]).toContain(level);
    },
  );

  it('fill their claims with details that some measure states', () => {
    const sources = readdirSync(new URL('../../src/measure/', import.meta.url), { recursive: true })
      .map(String)
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(new URL(`../../src/measure/${name}`, import.meta.url), 'utf8'))
      .join('\n');
    const unstated = shippedRules
      .flatMap(detailsOf)
      .filter((name) => !new RegExp(`\\b${name}\\b`).test(sources));
    expect(unstated).toEqual([]);
  });

  it('use every measure that there is', () => {
    const used = new Set(shippedRules.map((rule) => rule.measure));
    expect(measures.map((measure) => measure.id).filter((id) => !used.has(id))).toEqual([]);
  });

  it('name every measure once', () => {
    expect(new Set(measures.map((measure) => measure.id)).size).toBe(measures.length);
  });

  it('come with grades that follow their schema', async () => {
    expect(await faultsOf(read('grades.schema.json'), read('grades.json'))).toEqual([]);
    expect(shippedGrades.queriesThatRefer).toBeNull();
  });
});
