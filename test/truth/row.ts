import type { Grade, Level, ReasonId, Report } from '../../src/types.ts';
import type { StrengthName } from './plan.ts';

/** What one rule said about one subject of one submission. */
export interface Answer {
  readonly rule: string;
  readonly subject: string;
  readonly state: 'measured' | 'not applicable' | 'failed';
  readonly level: Level;
  readonly value: number | null;
  readonly interval: readonly [number, number] | null;
  readonly count: number | null;
  readonly declared: readonly [centre: number, spread: number] | null;
  readonly field: readonly [centre: number, spread: number] | null;
  readonly reason: ReasonId | 'failed' | null;
  /** Something that held the level down. */
  readonly held: boolean;
}

/** One submission, drawn and audited. */
export interface Row {
  readonly lot: number;
  readonly draw: number;
  readonly strength: StrengthName | null;
  /** In the fault's own measure. */
  readonly dose: number | null;
  /** Kind of ride, and what was handed in. */
  readonly ride: string;
  readonly minutes: number;
  readonly evidence: {
    readonly seconds: number;
    readonly history: number;
    readonly heartRate: boolean;
    readonly cadence: boolean;
  };
  readonly grade: Grade;
  readonly answers: readonly Answer[];
  readonly pairs: readonly PairCheck[];
}

/** How one pair was put on one clock, against what is known. */
export interface PairCheck {
  readonly secure: boolean;
  readonly origin: string;
  /** Farthest that any segment lies from the true lag of the power channel, s; null where nothing fits. */
  readonly off: number | null;
  readonly segments: number;
}

export function answersOf(report: Report): Answer[] {
  return report.measurements.map((measurement): Answer => {
    const { rule, subject, state, value, interval, count } = measurement;
    const finding = report.findings.find((one) => one.rule === rule && one.subject === subject);
    const expected = finding?.expected;
    return {
      rule,
      subject: subject.replace(/:.*/, ''),
      state,
      level: finding?.level ?? 'none',
      value,
      interval,
      count,
      declared: expected ? [expected.declared.centre, expected.declared.spread] : null,
      field: expected ? [expected.field.centre, expected.field.spread] : null,
      reason: measurement.reason?.id ?? null,
      held: (finding?.ceiling ?? null) !== null,
    };
  });
}
