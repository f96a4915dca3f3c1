/**
 * Figures that others published, and figures of the trade, put through the whole house: what is honest must
 * not be accused, what common practice calls a fault must be found.
 */
import { describe, expect, it } from 'vitest';
import { auditRecordings } from '../src/audit.ts';
import { verdictOf } from '../src/judge/judge.ts';
import { limitsOfAgreement } from '../src/math/limits-of-agreement.ts';
import { fieldScatter } from '../src/measure/pair/expected.ts';
import { ruleSet } from '../src/rules.ts';
import type { Finding, Place, Report } from '../src/types.ts';
import { drawDraft, type MeterSpec, Random, type SubmissionWish } from './make/index.ts';
import { ridden } from './measure/pair/make.ts';

const rules = await ruleSet();

function audited(seed: string, wish: SubmissionWish, changes: readonly Partial<MeterSpec>[]): Report {
  const { primary, seconds, rider, race } = ridden(seed, { places: ['trainer', 'pedal'], ...wish }, changes);
  const submission = { primary, seconds, unreadable: [], rider, race, profile: null, otherInputs: [] };
  return auditRecordings(submission, rules);
}

const finding = ({ findings }: Report, rule: string): Finding | undefined =>
  findings.find((one) => one.rule === rule && one.subject.startsWith('pair'));

const seeds = ['1', '2', '3'];

describe('Maier et al. 2017, Int J Sports Med 38:456-461: 54 meters, -0.9 ± 3.2 %, 6 of them beyond ±5 %', () => {
  const random = new Random('54 meters');
  const draw = () => -0.9 + fieldScatter * random.normal();

  it('is what is expected of a meter in the field', () => {
    const meters = Array.from({ length: 54_000 }, draw);
    const beyond = meters.filter((percent) => Math.abs(percent) > 5).length / meters.length;
    // A normal distribution of that mean and spread predicts 13.3 %; 6 of 54 are 11.1 %.
    expect(beyond).toBeCloseTo(0.133, 2);
    const pairs = Array.from({ length: 54_000 }, () => Math.abs(draw() - draw()));
    // Two of them: 95 % within 1.96·3.2·√2 % = 8.87 %.
    expect(pairs.filter((percent) => percent < 8.87).length / pairs.length).toBeCloseTo(0.95, 2);
  });

  it('makes 6 of 54 meters beyond 5 % an ordinary count', () => {
    const counts = Array.from(
      { length: 1000 },
      () => Array.from({ length: 54 }, draw).filter((percent) => Math.abs(percent) > 5).length,
    );
    expect(counts.filter((count) => count <= 6).length / 1000).toBeGreaterThan(0.25);
    expect(counts.filter((count) => count >= 6).length / 1000).toBeGreaterThan(0.25);
  });

  it('puts next to no honest pair before the jury, whatever is claimed', () => {
    const rule = rules.rules.find(({ id }) => id === 'mean-bias')!;
    const spread = fieldScatter * Math.SQRT2;
    const range = { centre: 0, spread };
    const pairs = 100_000;
    let referred = 0;
    for (let i = 0; i < pairs; i++) {
      const value = draw() - draw();
      const measured = {
        value,
        interval: [value, value] as const,
        expected: { declared: range, field: range },
      };
      if (verdictOf(rule, measured).level === 'refer') referred++;
    }
    expect(referred / pairs).toBeLessThan(0.001);
  });
});

describe('Zadow et al. 2016, Int J Sports Physiol Perform 11:1115-1117: a trainer in set-power mode against a rig', () => {
  // Range of power (W), bias and half of the 95 % limits of agreement (%).
  const bands = [
    { from: 100, to: 200, bias: 4.5, half: 6.8 },
    { from: 250, to: 700, bias: -1.1, half: 2.5 },
    { from: 750, to: 999, bias: 13, half: 37.35 },
  ];

  it.each(bands)('shows as limits of agreement from $from to $to W', ({ from, to, bias, half }) => {
    const random = new Random(`rig ${from}`);
    const differences = Array.from({ length: 4000 }, () => {
      const rig = random.between(from, to);
      const trainer = rig * (1 + (bias + (half / 1.96) * random.normal()) / 100);
      return 100 * (trainer / rig - 1);
    });
    const { mean, low, high } = limitsOfAgreement(differences);
    expect(Math.abs(mean - bias)).toBeLessThan(0.05 * half);
    expect(Math.abs(low - (bias - half))).toBeLessThan(0.06 * half);
    expect(Math.abs(high - (bias + half))).toBeLessThan(0.06 * half);
  });

  /** Each stretch in one range of power errs by a draw of its own. */
  const trainer: MeterSpec['twist'] = (power, { step }, random) => {
    const shortest = 20 / step;
    let since = 0;
    let now: (typeof bands)[number] | undefined;
    let gain = 1;
    for (let i = 0; i < power.length; i++) {
      const band = bands.findLast(({ from }) => power[i]! >= from);
      if (band !== now && (i - since >= shortest || band === bands[2])) {
        now = band;
        since = i;
        gain = band === undefined ? 1 : 1 + (band.bias + (band.half / 1.96) * random.normal()) / 100;
      }
      power[i]! *= gain;
    }
  };

  it.each(seeds)('is honest in a race: asked about at most (ride %s)', (seed) => {
    const report = audited(`rig ${seed}`, { kind: 'bunch race', minutes: 60 }, [{ twist: trainer }]);
    expect(['clear', 'query']).toContain(report.grade);
    expect(finding(report, 'mean-bias')!.level).toBe('none');
  });
});

describe('Gardner et al. 2004, Med Sci Sports Exerc 36:1252-1258: two honest meters on a hill', () => {
  // 411 against 432 W on average, 651 against 702 W at most: sprints are 2.5 % apart beyond that.
  const lower = { gain: 411 / 432, sprint: { error: -0.025, from: 450, full: 650 } };
  const cases = seeds.flatMap((seed) => [
    { seed, name: 'lower first', places: ['hub', 'crank'] as Place[], changes: [lower, {}], percent: -4.9 },
    { seed, name: 'higher first', places: ['crank', 'hub'] as Place[], changes: [{}, lower], percent: 5.1 },
  ]);

  it.each(cases)('are asked about at most: $name, ride $seed', ({ seed, places, changes, percent }) => {
    const report = audited(`hill ${seed}`, { kind: 'long climb', minutes: 45, places }, changes);
    expect(finding(report, 'mean-bias')!.value).toBeCloseTo(percent, 0);
    expect(['clear', 'query']).toContain(report.grade);
  });
});

describe('common practice, no source', () => {
  const outside = (report: Report, ...told: readonly string[]) =>
    report.findings.filter(
      ({ rule, level, explainedBy }) =>
        (level === 'query' || level === 'refer') && explainedBy === null && !told.includes(rule),
    );

  it.each(seeds)('sprints about a quarter high beside good steady agreement (ride %s)', (seed) => {
    const wish = { kind: 'bunch race', minutes: 70 } as const;
    const { cp } = drawDraft(`quarter ${seed}`, wish).rider.ability;
    const sprint = { error: 0.27, from: 1.4 * cp, full: 1.6 * cp };
    const report = audited(`quarter ${seed}`, wish, [{ sprint }]);
    const high = finding(report, 'sprint-overshoot')!;
    expect(['query', 'refer']).toContain(high.level);
    expect(high.value).toBeGreaterThan(14);
    expect(['none', 'note']).toContain(finding(report, 'late-drift')!.level);
    const steady = report.sections.filter(({ kind }) => kind === 'steady');
    for (const { differences } of steady) expect(Math.abs(differences[0]!.percent)).toBeLessThan(3);
  });

  it.each(seeds)('a warm-up drift that crosses zero 15 to 35 minutes in (ride %s)', (seed) => {
    const warming: MeterSpec['twist'] = (power, { step }) => {
      for (let i = 0; i < power.length; i++) power[i]! *= 0.93 * (1 + 0.13 * -Math.expm1((-i * step) / 2000));
    };
    const report = audited(`warm ${seed}`, { kind: 'time trial', minutes: 75 }, [{ twist: warming }]);
    expect(['query', 'refer']).toContain(finding(report, 'late-drift')!.level);
    const crossing = finding(report, 'warmup-crossing')!;
    expect(crossing.value).toBeGreaterThan(15);
    expect(crossing.value).toBeLessThan(35);
    // Plain in five-minute means: below before, above after.
    const ratio = report.charts.find(({ kind, id }) => kind === 'ratio' && id.includes('pair'));
    if (ratio?.kind !== 'ratio') throw new Error('no chart of the ratio');
    const means = fiveMinuteMeans(ratio.blocks);
    expect(means[0]).toBeLessThan(98);
    expect(means.at(-2)).toBeGreaterThan(102);
  });

  function fiveMinuteMeans(blocks: readonly { readonly at: number; readonly percent: number }[]): number[] {
    const sums = new Map<number, { sum: number; count: number }>();
    for (const { at, percent } of blocks) {
      const { sum, count } = sums.get(Math.floor(at / 300)) ?? { sum: 0, count: 0 };
      sums.set(Math.floor(at / 300), { sum: sum + percent, count: count + 1 });
    }
    return [...sums.values()].map(({ sum, count }) => sum / count);
  }

  it.each(seeds)('agreement early and 5 % over in the last quarter (ride %s)', (seed) => {
    const late: MeterSpec['twist'] = (power) => {
      for (let i = Math.round(0.75 * power.length); i < power.length; i++) power[i]! *= 1.05;
    };
    const report = audited(`late ${seed}`, { kind: 'time trial', minutes: 60 }, [{ twist: late }]);
    const drift = finding(report, 'late-drift')!;
    expect(drift.level).toBe('query');
    expect(drift.value).toBeGreaterThan(3.5);
    expect(outside(report, 'late-drift')).toEqual([]);
  });

  it.each(seeds)('a trainer that holds 15 W too much at a slow flywheel (ride %s)', (seed) => {
    // What it holds too much it does not see: below 9 m/s it reads 15 W less than there is.
    const slow: MeterSpec['twist'] = (power, { step, speed }) => {
      for (let i = 0; i < power.length; i++) {
        const slowness = Math.max(0, Math.min(1, (10.5 - speed[Math.floor(i * step)]!) / 1.5));
        if (power[i]! > 60) power[i]! -= 15 * slowness;
      }
    };
    const wish = { kind: 'set-point session', minutes: 60 } as const;
    const report = audited(`flywheel ${seed}`, wish, [{ twist: slow }]);
    const { blocks, trends } = report.setPoints!;
    const apart = blocks.map(({ speed, meters: [trainer, pedals] }) => ({
      speed: speed!,
      watts: pedals!.over - trainer!.over,
    }));
    const mean = (part: typeof apart) => part.reduce((sum, { watts }) => sum + watts, 0) / part.length;
    const atSlow = apart.filter(({ speed }) => speed < 3.6 * 9);
    const atFast = apart.filter(({ speed }) => speed > 3.6 * 10.5);
    if (atSlow.length > 0) {
      expect(mean(atSlow)).toBeGreaterThan(12);
      expect(mean(atSlow)).toBeLessThan(18);
    }
    if (atFast.length > 0) expect(Math.abs(mean(atFast))).toBeLessThan(4);
    const trend = trends.find(({ of }) => of === 'speed')!;
    expect(Math.min(Math.abs(trend.low), Math.abs(trend.high))).toBeGreaterThan(3);
    expect(['clear', 'query']).toContain(report.grade);
  });
});
