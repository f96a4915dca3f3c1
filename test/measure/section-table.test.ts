import { expect, it } from 'vitest';
import { sectionTable } from '../../src/measure/section-table.ts';
import { ridden, subjectsOf } from './pair/make.ts';

it('tells where a meter is good and where not', () => {
  const sprint = { error: 0.3, from: 450, full: 480 };
  const all = subjectsOf(ridden('sections', { kind: 'bunch race', minutes: 60 }, [{ sprint }]));
  const table = sectionTable(all, all.seconds);
  const sprints = table
    .filter(({ kind }) => kind === 'sprint')
    .map(({ differences }) => differences[0]!.percent);
  const thirds = table.filter(({ kind }) => kind.endsWith('third')).map(({ differences }) => differences[0]!);
  expect(sprints.length).toBeGreaterThan(1);
  expect(sprints.reduce((a, b) => a + b, 0) / sprints.length).toBeGreaterThan(12);
  for (const { percent, low, high } of thirds) {
    expect(Math.abs(percent)).toBeLessThan(9);
    expect(low).toBeLessThan(percent);
    expect(high).toBeGreaterThan(percent);
  }
});
