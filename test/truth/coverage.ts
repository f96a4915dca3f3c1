import { auditRecordings } from '../../src/audit.ts';
import type { Finding, Report, RuleSet, Stretch, Value } from '../../src/types.ts';
import { type MeterSpec, read } from '../make/meter.ts';
import { Random } from '../make/random.ts';
import type { RideKind, Truth } from '../make/ride.ts';
import { type Draft, drawDraft, realise, rideOf } from '../make/submission.ts';
import { handedIn } from './evidence.ts';
import type { Lot, Plan } from './plan.ts';

/** An interval of a measure, and the true value that it should hold. */
export interface Check {
  readonly rule: string;
  readonly truth: number;
  readonly value: number;
  readonly interval: readonly [low: number, high: number];
}

export interface CoverageRow {
  readonly lot: number;
  readonly draw: number;
  readonly checks: readonly Check[];
  /** Rules that were asked and could not be applied. */
  readonly silent: readonly string[];
}

/** Rides in which intervals are tried: kind and minutes of the race. */
export const coverageRides: readonly (readonly [kind: RideKind, minutes: number])[] = [
  ['bunch race', 30],
  ['bunch race', 60],
  ['time trial', 20],
  ['time trial', 45],
  ['long climb', 45],
  ['set-point session', 50],
  ['outdoor ride', 60],
  ['group ride and finale', 70],
  ['short race', 12],
  ['long ride', 180],
];

/**
 * What is wrong with the meters of a draw, so that the truth of what a rule estimates can be told without
 * doing as the rule does. The rest of each meter is honest: noise, strokes, wander, lag, averaging, gain.
 */
interface Design {
  readonly plant: (draft: Draft, random: Random) => Draft;
  readonly truths: { readonly [rule: string]: (known: Known) => number | null };
}

interface Known {
  readonly draft: Draft;
  readonly ride: Truth;
  /** Values of the finding, for ends of a range. */
  readonly details: { readonly [name: string]: Value };
  /** Where the rule looked: stretches of the finding, and the race, both on the primary's series (s). */
  readonly stretches: Finding['stretches'];
  readonly window: Stretch;
  /** Options of the rule. */
  readonly options: RuleSet['rules'][number]['options'];
}

const designs: readonly Design[] = [
  {
    plant: (draft, random) =>
      onPrimary(draft, {
        driftPerHour: (random.between(-0.08, 0.08) * 3600) / windowOf(draft),
        cadenceSlope: random.between(-0.012, 0.012),
        twist: powerLaw(random.between(-0.05, 0.05), draft.today.ability.cp),
      }),
    truths: {
      'mean-bias': meanRatio,
      'late-drift': growth,
      'cadence-dependent-bias': ({ draft, details }) => {
        const slope = draft.meters[0]!.cadenceSlope;
        const at = (rpm: number) => 1 + (slope * (rpm - 85)) / 10;
        return 100 * (at(quantity(details.to)) / at(quantity(details.from)) - 1);
      },
      'power-dependent-bias': ({ draft, details }) =>
        100 *
        ((quantity(details.to) / quantity(details.from)) ** exponents.get(draft.meters[0]!.twist!)! - 1),
    },
  },
  {
    plant(draft, random) {
      const { cp } = draft.rider.ability;
      const sprint = { error: random.between(-0.1, 0.25), from: cp * 1.25, full: cp * 1.6 };
      return onPrimary(draft, { sprint });
    },
    truths: { 'mean-bias': meanRatio, 'sprint-overshoot': sprintExcess },
  },
  {
    plant: (draft, random) => onPrimary(draft, { torqueOffset: random.between(-2.5, 2.5) }),
    truths: { 'mean-bias': meanRatio, 'zero-offset': ({ draft }) => draft.meters[0]!.torqueOffset },
  },
  {
    // A heart that neither drifts nor warms: what is left is the meter.
    plant(draft, random) {
      const heart = { ...draft.today.heart, driftPerHour: 0 };
      const driftPerHour = (random.between(-0.1, 0.2) * 3600) / windowOf(draft);
      const calm = { ...draft, today: { ...draft.today, heart }, conditions: { heat: 0, fanFrom: null } };
      return onPrimary(calm, { driftPerHour });
    },
    truths: { 'late-drift': growth, 'late-power-rise': growth },
  },
];

/** Draws of one ride with each design once. */
export const designCount = designs.length;

export function coverageRowsOf(plan: Plan, lot: number, draw: number, rules: RuleSet): CoverageRow[] {
  const what = plan.lots[lot] as Extract<Lot, { sort: 'coverage' }>;
  const key = `${plan.build} ${plan.seed} coverage ${what.kind} ${what.minutes} ${draw}`;
  const base = plain(
    drawDraft(key, {
      kind: what.kind,
      minutes: what.minutes,
      build: plan.build,
      places: ['crank', 'pedal'],
    }),
  );
  const ride = rideOf(base);
  return designs.map((design, k): CoverageRow => {
    const draft = design.plant(
      { ...base, random: base.random.fork(`design ${k}`) },
      new Random(`${key} ${k}`),
    );
    const known = draft.conditions === base.conditions ? ride : rideOf({ ...draft, random: base.random });
    const asked = Object.keys(design.truths);
    const few = { ...rules, rules: rules.rules.filter(({ id }) => asked.includes(id)) };
    const report = auditRecordings(handedIn(realise(draft, known)), few);
    const checks = asked.flatMap((rule) =>
      checkOf(report, few.rules.find(({ id }) => id === rule)!, design.truths[rule]!, { draft, ride: known }),
    );
    const heard = new Set(checks.map(({ rule }) => rule));
    return { lot, draw, checks, silent: asked.filter((rule) => !heard.has(rule)) };
  });
}

function checkOf(
  report: Report,
  { id, options }: RuleSet['rules'][number],
  truthOf: (known: Known) => number | null,
  { draft, ride }: Pick<Known, 'draft' | 'ride'>,
): Check[] {
  const finding = report.findings.find((one) => one.rule === id && one.subject !== 'second');
  if (finding === undefined || finding.value === null || finding.interval === null) return [];
  const { stretches, summary } = finding;
  const window = report.submission.window.stretch;
  const truth = truthOf({ draft, ride, details: summary.values, stretches, window, options });
  return truth === null ? [] : [{ rule: id, truth, value: finding.value, interval: finding.interval }];
}

/** Two meters at the cranks with nothing but noise, wander, lag and gain. */
function plain(draft: Draft): Draft {
  const meters = draft.meters.map(
    (meter): MeterSpec => ({
      ...meter,
      sides: 2,
      temperature: { ...meter.temperature, perDegree: 0 },
      powerSlope: 0,
      cadenceSlope: 0,
      torqueOffset: 0,
      overshoot: 0,
      sprint: null,
    }),
  );
  return { ...draft, meters };
}

function onPrimary(draft: Draft, change: Partial<MeterSpec>): Draft {
  const [own, ...others] = draft.meters;
  return { ...draft, meters: [{ ...own!, ...change }, ...others] };
}

const windowOf = ({ demand: { window } }: Draft) => window[1] - window[0];
const exponents = new WeakMap<NonNullable<MeterSpec['twist']>, number>();

/** Reading ∝ power^(1 + c). */
function powerLaw(c: number, pivot: number): NonNullable<MeterSpec['twist']> {
  const twist = (power: Float64Array) => {
    for (let i = 0; i < power.length; i++) {
      if (power[i]! > 0) power[i]! *= Math.exp(c * Math.log(power[i]! / pivot));
    }
  };
  exponents.set(twist, c);
  return twist;
}

function quantity(value: Value | undefined): number {
  return typeof value === 'object' ? value.value : Number.NaN;
}

/** Ratio of the two meters in this race, wander and all, without noise: primary over second, %. */
function meanRatio({ draft, ride }: Known): number {
  const [from, to] = draft.demand.window;
  const work = (k: number) => {
    const silent = { noise: 0, jitter: 0, every: 0, ripple: null };
    const { power, step } = read(ride, { ...draft.meters[k]!, ...silent }, draft.random.fork(`signal ${k}`));
    return power.subarray(from / step, to / step).reduce((sum, watts) => sum + watts, 0);
  };
  return 100 * (work(0) / work(1) - 1);
}

/** Growth of the gain from the start of the race to its end, %: the cause alone, no wander. */
function growth({ draft }: Known): number {
  const { driftPerHour } = draft.meters[0]!;
  const at = (second: number) => 1 + (driftPerHour * second) / 3600;
  const [from, to] = draft.demand.window;
  return 100 * (at(to) / at(from) - 1);
}

/**
 * Surplus of the sprints that the rule found over the rest of the race, primary over second, % of their work
 * between their edges, on average over sprints, each weighted by the inverse of its power as the rule does:
 * what was planted, before any averaging.
 */
function sprintExcess({ draft, ride, stretches, window, options }: Known): number {
  const { error, from, full } = draft.meters[0]!.sprint!;
  const room = Number(options.roomSeconds);
  const later = draft.demand.window[0] - window[0];
  const sums = ([start, end]: Stretch) => {
    const sum = { work: 0, surplus: 0 };
    for (let i = Math.round((start + later) / ride.step); i < (end + later) / ride.step; i++) {
      const watts = ride.power[i]!;
      sum.work += watts;
      sum.surplus += watts * error * Math.max(0, Math.min(1, (watts - from) / (full - from)));
    }
    return sum;
  };
  const rest = sums(window);
  for (const stretch of stretches) {
    const { work, surplus } = sums(stretch);
    rest.work -= work;
    rest.surplus -= surplus;
  }
  const steady = rest.surplus / rest.work;
  const excesses = stretches.map((stretch) => {
    // Room was left around a sprint, but for where the race begins or ends.
    const edge = (at: number, inwards: number) => (window.includes(at) ? at : at + inwards);
    const { work, surplus } = sums(stretch);
    const between = [edge(stretch[0], room), edge(stretch[1], -room)] as const;
    const core = sums(between);
    const weight = (between[1] - between[0]) / core.work;
    return { excess: (surplus - steady * work) / (core.work * (1 + steady)), weight };
  });
  const total = excesses.reduce((sum, { weight }) => sum + weight, 0);
  return (100 * excesses.reduce((sum, { excess, weight }) => sum + weight * excess, 0)) / total;
}
