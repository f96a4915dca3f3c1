import { expect, it } from 'vitest';
import { explain } from '../../src/judge/explain.ts';
import type { Finding } from '../../src/types.ts';
import { finding, rule } from './make.ts';

/** Who accounts for each finding, where the rules explain these others. */
function accounted(explains: Readonly<Record<string, readonly string[]>>, findings: readonly Finding[]) {
  const rules = new Map(Object.entries(explains).map(([id, ids]) => [id, { ...rule, id, explains: ids }]));
  return explain(findings, rules).map(({ explainedBy }) => explainedBy);
}

it('marks what a finding of the same subject and at least the same level accounts for', () => {
  const rules = { sway: ['wobble'] };
  expect(accounted(rules, [finding('query'), finding('query', 'sway')])).toEqual(['sway', null]);
  expect(accounted(rules, [finding('query'), finding('refer', 'sway')])).toEqual(['sway', null]);
});

it('leaves a graver finding, one of another subject, and what is fine to themselves', () => {
  const rules = { sway: ['wobble'] };
  expect(accounted(rules, [finding('refer'), finding('query', 'sway')])).toEqual([null, null]);
  expect(accounted(rules, [finding('none'), finding('query', 'sway')])).toEqual([null, null]);
  const elsewhere = { ...finding('query', 'sway'), subject: 'pair:0' };
  expect(accounted(rules, [finding('query'), elsewhere])).toEqual([null, null]);
});

it('leaves one of those that would account for each other standing, however long the circle', () => {
  const [a, b, c] = [finding('query', 'a'), finding('query', 'b'), finding('query', 'c')];
  expect(accounted({ a: ['a'] }, [a])).toEqual([null]);
  expect(accounted({ a: ['b'], b: ['a'] }, [a, b])).toEqual(['b', null]);
  expect(accounted({ a: ['c'], b: ['a'], c: ['b'] }, [a, b, c])).toEqual(['b', 'c', null]);
});
