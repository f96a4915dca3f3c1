import { expect, it } from 'vitest';
import { sprintExcess } from '../../src/measure/sprint-excess.ts';
import { measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 60 } as const;
/** Full error from well below any sprint. */
const always = (error: number) => ({ error, from: 450, full: 480 });

it.each([0, 0.15, 0.27])(
  'recovers a sprint error of %f, a quarter high being what common practice calls unusable',
  (error) => {
    const found = measuredOf(
      sprintExcess,
      'sprint-overshoot',
      ridden(`sprint ${error}`, ride, [{ sprint: always(error) }]),
    );
    // Only what lies above 450 W is wrong, and a sprint's edges are below it.
    expect(found.value).toBeGreaterThan(55 * error - 2);
    expect(found.value).toBeLessThan(100 * error + 4);
    expect(found.count).toBeGreaterThan(1);
  },
);

it('is not fooled by lag and averaging of one meter', () => {
  const slow = { lag: 2, kernel: { shape: 'box', seconds: 3 } } as const;
  const found = measuredOf(sprintExcess, 'sprint-overshoot', ridden('slow', ride, [slow]));
  expect(Math.abs(found.value)).toBeLessThan(3);
});

it('is not fooled by a gain: it looks beyond the steady difference', () => {
  const found = measuredOf(sprintExcess, 'sprint-overshoot', ridden('gain', ride, [{ gain: 1.1 }]));
  expect(Math.abs(found.value)).toBeLessThan(3);
  expect((found.details.steady as { value: number }).value).toBeCloseTo(10, -0.5);
});

it('needs a sprint', () => {
  const all = subjectsOf(ridden('none', ride, []));
  const even = { ...all, sections: all.sections.filter(({ kind }) => kind !== 'sprint') };
  expect(outcomeOf(sprintExcess, 'sprint-overshoot', even)).toMatchObject({ reason: 'too-few-efforts' });
});

it.each([
  ['zeros', () => 0],
  ['the last value', (before: number) => before],
])('leaves out a sprint in which a link was lost, and %s stand for what was not measured', (_, written) => {
  const all = subjectsOf(ridden('sprint 0', ride, []));
  const { stretch } = all.sections.find(({ kind }) => kind === 'sprint')!;
  const power = all.seconds[0]!.series.channels.power!;
  const whole = outcomeOf(sprintExcess, 'sprint-overshoot', all);
  power.fill(written(power[stretch[0] - 1]!), stretch[0], stretch[1]);
  const found = outcomeOf(sprintExcess, 'sprint-overshoot', all);
  if (found.state !== 'measured' || whole.state !== 'measured') throw new Error(found.state);
  expect(found.count).toBe(whole.count - 1);
  expect(Math.abs(found.value)).toBeLessThan(3);
});

it('takes no steady ratio from what a lost link left', () => {
  const all = subjectsOf(ridden('sprint 0', ride, []));
  const [from] = all.window;
  const power = all.seconds[0]!.series.channels.power!;
  const steadyOf = (given: typeof all) => {
    const found = outcomeOf(sprintExcess, 'sprint-overshoot', given);
    if (found.state !== 'measured') throw new Error(found.state);
    return (found.details.steady as { value: number }).value;
  };
  const sections = all.sections.filter(({ stretch }) => stretch[0] > from + 900);
  power.fill(2 * power[from + 60]!, from + 60, from + 900);
  expect(Math.abs(steadyOf({ ...all, sections }))).toBeLessThan(2);
});

it('leaves out a sprint before the edges of which a link was lost while the other meter rose already', () => {
  const all = subjectsOf(ridden('sprint 0', ride, []));
  const whole = outcomeOf(sprintExcess, 'sprint-overshoot', all);
  const sections = all.sections.map((one) =>
    one === all.sections.find(({ kind }) => kind === 'sprint')
      ? { ...one, stretch: [one.stretch[0] + 3, one.stretch[1]] as const }
      : one,
  );
  const first = sections.find(({ kind }) => kind === 'sprint')!.stretch[0];
  all.seconds[0]!.series.channels.power!.fill(0, first - 3, first);
  const found = outcomeOf(sprintExcess, 'sprint-overshoot', { ...all, sections });
  if (found.state !== 'measured' || whole.state !== 'measured') throw new Error(found.state);
  expect(found.count).toBe(whole.count - 1);
});

it('says when there is but one sprint: honest meters lie several percent apart in a single one', () => {
  const all = subjectsOf(ridden('sprint 0', ride, []));
  const [first] = all.sections.filter(({ kind }) => kind === 'sprint');
  const sections = [...all.sections.filter(({ kind }) => kind !== 'sprint'), first!];
  expect(outcomeOf(sprintExcess, 'sprint-overshoot', { ...all, sections })).toMatchObject({
    circumstances: ['single sprint'],
  });
});

it('knows less of a sprint that the end of the race cuts off', () => {
  const all = subjectsOf(ridden('sprint 0', ride, []));
  const [first] = all.sections.filter(({ kind }) => kind === 'sprint');
  const sections = [...all.sections.filter(({ kind }) => kind !== 'sprint'), first!];
  const half = (end: number) => {
    const found = outcomeOf(sprintExcess, 'sprint-overshoot', {
      ...all,
      sections,
      window: [all.window[0], end],
    });
    if (found.state !== 'measured') throw new Error(found.state);
    return (found.interval[1] - found.interval[0]) / 2;
  };
  const [from, to] = first!.stretch;
  // Half a second more or less of it: a rectangle has a standard deviation of 1/√12.
  const torn = (1.96 * 100) / Math.sqrt(12) / (to - from);
  expect(half(to)).toBeGreaterThan(torn);
  expect(half(to)).toBeGreaterThan(half(to + 30));
});
