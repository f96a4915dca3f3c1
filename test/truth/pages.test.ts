import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shippedRules } from '../../src/judge/shipped.ts';
import { chartsPage } from './charts-page.ts';
import { countedFrom, countsText } from './counts.ts';
import { answer, countedOf, driftRun, row, smallPlan } from './make.ts';
import { resultsPage } from './markdown.ts';
import { falseAlarmOf, withFalseAlarm } from './rates.ts';

const counted = driftRun();
const drift = shippedRules.find(({ id }) => id === 'late-drift')!;
const cellsOf = (page: string, start: string) =>
  page
    .split('\n')
    .find((line) => line.startsWith(`| ${start}`))
    ?.split('|')
    .map((cell) => cell.trim())
    .slice(1, -1);

describe('RESULTS.md', () => {
  const page = resultsPage(counted, shippedRules, [], {});

  it('says of each fault and strength what a right rule did, with the bound', () => {
    const at = (strength: string) => cellsOf(page, `drift | ${strength}`);
    expect(at('borderline')).toEqual([
      'drift',
      'borderline 0.04',
      '20',
      '0 %',
      '0 %',
      '0 %',
      '0 %',
      '0 %',
      '0 %',
    ]);
    expect(at('moderate')!.slice(3, 6)).toEqual(['100 % (≥ 86 %)', '0 %', '0 %']);
    expect(at('clear-cut')!.slice(3, 6)).toEqual(['100 % (≥ 86 %)', '100 % (≥ 86 %)', '100 % (≥ 86 %)']);
  });

  it('says at which strength half are found', () => {
    const half = Number(/- drift: .*; half are found at ([\d.]+)\./.exec(page)![1]);
    expect(half).toBeGreaterThan(0.04);
    expect(half).toBeLessThan(0.08);
  });

  it('says of honest submissions at which level they were, and by which rule', () => {
    expect(cellsOf(page, 'even')).toEqual([
      'even',
      '20',
      '0.0 %',
      'none (≤ 13.91 %)',
      'none (≤ 13.91 %)',
      '',
      '',
    ]);
    expect(page).toContain('late-drift 2 to refer, late-drift 2');
  });

  it('lists the targets with what became of them', () => {
    expect(cellsOf(page, 'honest, as found: refer')!.slice(1, 6)).toEqual([
      '5.00 %',
      '40',
      '≤ 14.92 %',
      '≤ 0.3 %',
      '**missed**',
    ]);
  });

  it('keeps a record of runs of the generator that reports', () => {
    const run = { ...counted.run, build: 'reporting' as const, commit: 'abc1234' };
    expect(cellsOf(resultsPage(counted, shippedRules, [run], {}), '2026-03-14')!.slice(1, 6)).toEqual([
      '`abc1234`',
      '1',
      'all',
      '1 / 0.5',
      String(run.submissions),
    ]);
  });

  it('is the same, byte for byte, when made from the kept counts', async () => {
    const again = countedFrom(countsText(counted));
    expect(resultsPage(again, shippedRules, [], {})).toBe(page);
    expect(await chartsPage(again, shippedRules)).toBe(await chartsPage(counted, shippedRules));
  });
});

describe('a run that drew nothing of some lots', () => {
  it('says nothing of them', async () => {
    const plan = smallPlan('late-drift', 4);
    const few = countedOf(plan, (lot, draw) =>
      lot === 0 ? [row(lot, draw, [answer('late-drift', 'none')])] : [],
    );
    expect(resultsPage(few, shippedRules, [], {})).toContain(': 4 honest submissions of 2 kinds.');
    expect(await chartsPage(few, shippedRules)).not.toMatch(/NaN|undefined/);
    expect(resultsPage(few, shippedRules, [], {})).not.toMatch(/NaN|undefined/);
  });
});

describe('charts.html', () => {
  it('stands by itself and stays small', async () => {
    const page = await chartsPage(counted, shippedRules);
    expect(page).not.toMatch(/https?:\/\/(?!www\.w3\.org)|src=|NaN|undefined/);
    expect(page.length).toBeLessThan(300_000);
    expect(page.match(/<svg/g)!.length).toBeGreaterThan(4);
  });
});

describe('false-alarm rates', () => {
  const text = readFileSync('rules/late-drift.rule.json', 'utf8');
  const rates = falseAlarmOf(counted, drift)!;

  it('are the counts of the run, bounds rounded away from zero', () => {
    expect(rates).toEqual({
      command: 'npm run truth -- --honest --scale 1',
      withinClaims: {
        submissions: 40,
        query: { share: 0, atMost: 0.07216 },
        refer: { share: 0, atMost: 0.07216 },
      },
      asFound: {
        submissions: 40,
        query: { share: 0.1, atMost: 0.2144 },
        refer: { share: 0.05, atMost: 0.14916 },
      },
    });
  });

  it('are left out where nothing was asked, or nothing could be', () => {
    const rule = (id: string) => shippedRules.find((one) => one.id === id)!;
    expect(falseAlarmOf(counted, rule('machine-like'))).toBeNull();
    expect(falseAlarmOf(counted, rule('odd-one-out'))).toBeNull();
  });

  it('are laid into a rule file, over and over, without touching anything else', () => {
    const bare = withFalseAlarm(text, null);
    const once = withFalseAlarm(text, rates);
    expect(JSON.parse(once)).toEqual({
      ...JSON.parse(bare),
      source: { ...JSON.parse(bare).source, falseAlarm: rates },
    });
    expect(withFalseAlarm(once, rates)).toBe(once);
    expect(withFalseAlarm(once, null)).toBe(bare);
  });

  it.each(shippedRules.map(({ id }) => id))('find their place in the file of %s', (id) => {
    const file = readFileSync(`rules/${id}.rule.json`, 'utf8');
    expect(JSON.parse(withFalseAlarm(file, rates)).source.falseAlarm).toEqual(rates);
  });
});
