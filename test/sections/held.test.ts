import { expect, it } from 'vitest';
import { heldLevels } from '../../src/sections/held.ts';
import { findSections } from '../../src/sections/index.ts';
import { settings } from '../../src/sections/settings.ts';
import { drawSubmission } from '../make/index.ts';
import { subjectsOf } from '../measure/pair/make.ts';

/** Stretches of the script in which nothing is asked but one level, at least so long. */
function scripted(effort: Float64Array, shortest: number): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  let from = 0;
  for (let t = 1; t <= effort.length; t++) {
    if (t < effort.length && effort[t] === effort[from]) continue;
    if (t - from >= shortest && effort[from]! > settings.heldWatts) found.push([from, t]);
    from = t;
  }
  return found;
}

it('cuts a set-point session where its script does', () => {
  let near = 0;
  let all = 0;
  for (let seed = 0; seed < 6; seed++) {
    const submission = drawSubmission(`held ${seed}`, { kind: 'set-point session', minutes: 50, seconds: 0 });
    const { primary, window } = subjectsOf(submission);
    const cuts = heldLevels(primary.channels.power!, window).map(({ stretch: [from] }) => from);
    for (const [from] of scripted(submission.truth.draft.demand.effort, 170)) {
      all++;
      if (cuts.some((cut) => Math.abs(cut - from) <= 10)) near++;
    }
  }
  expect(all).toBeGreaterThan(20);
  expect(near / all).toBeGreaterThan(0.85);
});

it('sees blocks in sessions on a trainer that holds the power, hardly any in a bunch', () => {
  const share = (kind: 'set-point session' | 'bunch race', seed: number) => {
    const all = subjectsOf(drawSubmission(`${kind} ${seed}`, { kind, minutes: 40 }));
    const blocks = all.sections.filter((section) => section.kind === 'set-point block');
    const seconds = blocks.reduce((sum, { stretch: [from, to] }) => sum + to - from, 0);
    return seconds / (all.window[1] - all.window[0]);
  };
  for (const seed of [0, 1, 2]) {
    expect(share('set-point session', seed)).toBeGreaterThan(0.3);
    expect(share('bunch race', seed)).toBeLessThan(0.1);
  }
});

it('ends a level at a gap, and knows none where nobody pedals', () => {
  const power = new Float64Array(400).fill(200);
  power.fill(Number.NaN, 150, 155);
  power.fill(0, 300, 400);
  const levels = heldLevels(power, [0, 400]);
  expect(levels.map(({ stretch }) => stretch)).toEqual([
    [0, 150],
    [155, 300],
  ]);
  expect(levels.map(({ watts }) => Math.round(watts))).toEqual([200, 200]);
});

it('finds intervals that go over and under', () => {
  const power = Float64Array.from({ length: 1200 }, (_, t) => (t % 120 < 60 ? 240 : 290) + 6 * Math.sin(t));
  const primary = { ...subjectsOf(drawSubmission('over', { minutes: 20, seconds: 0 })).primary };
  const sections = findSections(
    { primary: { ...primary, length: 1200, channels: { power } }, seconds: [] },
    [0, 1200],
  );
  const found = sections.filter(({ kind }) => kind === 'over-under');
  expect(found).toHaveLength(1);
  const [from, to] = found[0]!.stretch;
  expect(to - from).toBeGreaterThan(1000);
});
