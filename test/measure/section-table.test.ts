import { expect, it } from 'vitest';
import { sectionsChart, sectionTable } from '../../src/measure/section-table.ts';
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

it('takes all sections of a kind together: sprints that read high stand out of steady agreement', () => {
  const sprint = { error: 0.3, from: 450, full: 480 };
  const all = subjectsOf(ridden('sections', { kind: 'bunch race', minutes: 60 }, [{ sprint }]));
  const { rows } = sectionsChart(all, all.seconds)!;
  const sprints = rows.find(({ section }) => section === 'sprint')!;
  const single = sectionTable(all, all.seconds).filter(({ kind }) => kind === 'sprint');
  expect(sprints.count).toBe(single.length);
  const [{ percent, low, high }] = sprints.differences as [(typeof sprints.differences)[number]];
  const each = single.map(({ differences }) => differences[0]!.percent);
  expect(percent).toBeGreaterThan(Math.min(...each));
  expect(percent).toBeLessThan(Math.max(...each));
  expect(low!).toBeGreaterThan(8);
  expect(high!).toBeGreaterThan(percent);
  for (const third of rows.filter(({ section }) => section.endsWith('third')))
    expect(third.differences[0]!.high!).toBeLessThan(low!);
});

it('holds nothing against a meter while its link was lost and zeros were written', () => {
  const all = subjectsOf(ridden('lost', { kind: 'bunch race', minutes: 60 }, [{}, {}]));
  const [from, to] = all.window;
  all.seconds[0]!.series.channels.power!.fill(0, from + 300, from + 900).fill(0, to - 600, to);
  const thirds = sectionTable(all, all.seconds).filter(({ kind }) => kind.endsWith('third'));
  expect(thirds).toHaveLength(2);
  for (const { differences } of thirds) expect(Math.abs(differences[0]!.percent)).toBeLessThan(3);
});

it('compares nothing while coasting, and makes no chart without another meter', () => {
  const all = subjectsOf(ridden('alone', { kind: 'bunch race', minutes: 30 }, []));
  expect(sectionsChart(all, [])).toBeNull();
  expect(sectionsChart(all, all.seconds)!.rows.map(({ section }) => section)).not.toContain('coasting');
});

it('holds the truth: of honest pairs 95 % intervals of a third leave out their overall ratio seldom', () => {
  let held = 0;
  let told = 0;
  for (let k = 0; k < 12; k++) {
    const all = subjectsOf(ridden(`held ${k}`, { kind: 'bunch race', minutes: 30 }, [{}, {}]));
    const other = all.seconds[0]!.series.channels.power!;
    for (const { section, differences } of sectionsChart(all, all.seconds)!.rows) {
      const [one] = differences;
      if (section === 'sprint' || one?.low == null) continue;
      told++;
      const [from, to] = all.window;
      let [own, second] = [0, 0];
      for (let t = from; t < to; t++) {
        own += all.primary.channels.power![t]! || 0;
        second += other[t]! || 0;
      }
      const whole = 100 * (own / second - 1);
      if (one.low <= whole + 0.05 && whole - 0.05 <= one.high!) held++;
    }
  }
  expect(held / told).toBeGreaterThan(0.85);
});
