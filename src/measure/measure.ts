import type {
  AlignedSecond,
  Measured,
  MeasureInfo,
  NotApplicable,
  OptionSpec,
  Outcome,
  ReasonId,
  Series,
  Subjects,
  Unit,
  Values,
} from '../types.ts';

/** What a measure of each kind is put to, beside the whole submission. */
interface Target {
  readonly recording: Series;
  readonly pair: AlignedSecond;
  readonly rider: null;
  readonly submission: null;
}

/** A pure function that computes one measurement. Its tunable numbers are options, kept in the rule file. */
export interface Measure<K extends keyof Target = keyof Target> extends MeasureInfo {
  readonly of: K;
  compute(all: Subjects, target: Target[K], options: never): Outcome;
}

type OptionsOf<S extends Record<string, OptionSpec>> = {
  readonly [N in keyof S]: S[N]['list'] extends true ? readonly number[] : number;
};

/** One number in the rule file: say what it is, with its unit. */
export const number = (what: string) => ({ what, list: false }) as const;
/** A list of numbers in the rule file. */
export const numbers = (what: string) => ({ what, list: true }) as const;

/** What a measure computes: its unit is stated once, beside its name. */
export type Reading = Omit<Measured, 'unit'>;

/** Defines a measure; `compute` receives the options typed as they are declared. */
export function defineMeasure<K extends keyof Target, S extends Record<string, OptionSpec>>(measure: {
  readonly id: string;
  readonly of: K;
  readonly unit: Unit;
  readonly options: S;
  readonly circumstances?: Readonly<Record<string, string>>;
  readonly compute: (all: Subjects, target: Target[K], options: OptionsOf<S>) => Reading | NotApplicable;
}): Measure<K> {
  const { unit } = measure;
  const compute = (all: Subjects, target: Target[K], options: OptionsOf<S>): Outcome => {
    const outcome = measure.compute(all, target, options);
    return outcome.state === 'measured' ? { ...outcome, unit } : outcome;
  };
  return { circumstances: {}, ...measure, compute } as Measure<K>;
}

/** The one way to say "cannot be computed": never NaN, never a pass. */
export function notApplicable(reason: ReasonId, values: Values = {}): NotApplicable {
  return { state: 'not applicable', reason, values };
}

type Extras = Partial<Omit<Reading, 'state' | 'value' | 'interval' | 'count'>>;

/**
 * The one way to return a value. Throws when it is not finite: a NaN that reached this point is a bug
 * of the measure, and the audit reports it as failed.
 */
export function measured(
  value: number,
  interval: readonly [number, number],
  count: number,
  extras: Extras = {},
): Reading {
  if (![value, ...interval, count].every(Number.isFinite)) {
    throw new Error(`not a finite measurement: ${value} [${interval.join(', ')}] of ${count}`);
  }
  return {
    state: 'measured',
    stretches: [],
    circumstances: [],
    details: {},
    charts: [],
    ...extras,
    value,
    interval,
    count,
  };
}

/** An exact count or length: its interval is itself. */
export function exact(value: number, count: number, extras: Extras = {}): Reading {
  return measured(value, [value, value], count, extras);
}
