import { declaredFor, secondRole } from './declared.ts';
import { meanOfValid } from './math/mean.ts';
import { tool } from './tool.ts';
import {
  type AlignedSecond,
  type Alignment,
  type Channel,
  type Chart,
  channels,
  type DeviceFacts,
  type Finding,
  type Grade,
  type Measurement,
  type Reading,
  type Report,
  type ReportMeasurement,
  type ReportRecording,
  type Requirement,
  type RuleSet,
  SecondState,
  type SectionsChart,
  type Series,
  type Step,
  type Subjects,
  type TracesChart,
  type UnreadableFile,
} from './types.ts';
import { toFigures } from './units.ts';

/** What the stages found, ready to be put into one object. */
export interface Parts {
  readonly all: Subjects;
  readonly rules: RuleSet;
  /** Files beside the recordings: facts, profile, rules. */
  readonly otherInputs: Report['inputs'];
  readonly windowGiven: boolean;
  readonly sections: Report['sections'];
  /** The same by kinds; null where there is no other meter. */
  readonly sectionKinds: SectionsChart | null;
  readonly setPoints: Report['setPoints'];
  readonly steps: readonly Step[];
  readonly unreadable: readonly UnreadableFile[];
  readonly measurements: readonly Measurement[];
  readonly findings: readonly Finding[];
  readonly missing: readonly Requirement[];
  readonly grade: Grade;
  readonly reach: Report['reach'];
}

/** The report object: everything that any form of the report is made from. */
export function assemble(parts: Parts): Report {
  const { all, rules } = parts;
  const handedIn = all.seconds.filter(({ further }) => !further);
  return {
    schemaVersion: 1,
    tool,
    inputs: [
      { role: 'primary', name: all.primary.recording.name, sha256: all.primary.recording.sha256 },
      ...handedIn.map(({ series: { recording } }) => ({
        role: 'second',
        name: recording.name,
        sha256: recording.sha256,
      })),
      ...parts.otherInputs,
    ],
    settings: { rider: all.rider, race: all.race, redacted: false },
    rules: { name: rules.name, sha256: rules.sha256, overlaid: rules.overlaid, items: rules.rules },
    submission: {
      primary: describe(
        all.primary,
        'primary',
        'primary',
        null,
        declaredFor(all.rider.devices, all.primary.recording.name, 'primary'),
      ),
      seconds: all.seconds.map((second, i) =>
        describe(
          second.series,
          second.subject,
          'second',
          second.further ? second.name : null,
          declaredFor(all.rider.devices, second.name, secondRole(i)),
        ),
      ),
      unreadable: parts.unreadable,
      window: { stretch: all.window, given: parts.windowGiven },
      history: describeHistory(all),
    },
    grade: parts.grade,
    reach: parts.reach,
    missing: parts.missing,
    findings: parts.findings,
    measurements: parts.measurements.map(summarise),
    sections: parts.sections,
    setPoints: parts.setPoints,
    alignment: all.seconds.map(({ alignment }) => alignmentOf(alignment)),
    steps: parts.steps,
    charts: [
      traces(all),
      ...(parts.sectionKinds === null ? [] : [parts.sectionKinds]),
      ...chartsOf(parts.measurements),
    ].map(rounded),
  };
}

function describe(
  series: Series,
  subject: string,
  role: ReportRecording['role'],
  field: string | null,
  declared: DeviceFacts | null,
): ReportRecording {
  const { recording, state } = series;
  const power = series.channels.power ?? new Float64Array();
  const { mean, count: known } = meanOfValid(power);
  const first = state.indexOf(SecondState.recorded);
  return {
    subject,
    role,
    name: recording.name,
    field,
    sha256: recording.sha256,
    format: recording.format,
    device: recording.device,
    declared,
    sport: recording.sport,
    indoors: recording.indoors,
    start: series.start + Math.max(0, first),
    seconds: state.lastIndexOf(SecondState.recorded) + 1 - Math.max(0, first),
    recordedSeconds: count(state, SecondState.recorded),
    meanPower: known === 0 ? null : toFigures(mean, 5),
    maxPower: known === 0 ? null : highest(power),
    channels: channels.filter((channel) => series.channels[channel] !== undefined),
    defects: recording.defects,
  };
}

/** The highest of what is known in a column, no less than 0. */
function highest(column: Float64Array): number {
  let most = 0;
  for (let i = 0; i < column.length; i++) if (column[i]! > most) most = column[i]!;
  return most;
}

function count(state: Uint8Array, wanted: number): number {
  let counted = 0;
  for (let i = 0; i < state.length; i++) if (state[i] === wanted) counted++;
  return counted;
}

/** Offsets to a thousandth of a second whatever their size: of a wrong month six figures would leave no second. */
function alignmentOf(alignment: Alignment): Alignment {
  const { offset, segments } = alignment;
  const exact = (seconds: number) => Math.round(seconds * 1000) / 1000;
  return {
    ...rounded(alignment),
    offset: offset && { value: exact(offset.value), low: exact(offset.low), high: exact(offset.high) },
    segments: segments.map((one) => ({ ...one, offset: exact(one.offset) })),
  };
}

function describeHistory({ history }: Subjects): Report['submission']['history'] {
  if (history === null) return null;
  const leftOut: Record<string, number> = {};
  for (const { why } of history.profile.leftOut) leftOut[why] = (leftOut[why] ?? 0) + 1;
  return { rides: history.rides.length, notBefore: history.notBefore, leftOut };
}

function summarise({ measure, rule, subject, options, outcome }: Measurement): ReportMeasurement {
  const known = { measure, rule, subject, state: outcome.state, options };
  const nothing = { value: null, unit: null, interval: null, count: null };
  switch (outcome.state) {
    case 'measured': {
      const { value, unit, interval, count } = outcome;
      return { ...known, value, unit, interval, count, reason: null };
    }
    case 'not applicable':
      return { ...known, ...nothing, reason: { id: outcome.reason, values: outcome.values } };
    case 'failed':
      return { ...known, ...nothing, reason: { id: 'failed', values: { message: outcome.message } } };
  }
}

function chartsOf(measurements: readonly Measurement[]): Chart[] {
  const charts = measurements.flatMap(({ outcome }) => (outcome.state === 'measured' ? outcome.charts : []));
  // Two rules may argue from the same chart of one measure: it is kept once.
  return [...new Map(charts.map((chart) => [chart.id, chart])).values()];
}

function traces({ primary, seconds }: Subjects): TracesChart {
  const own = (channel: Channel) => primary.channels[channel];
  return {
    kind: 'traces',
    id: 'traces',
    start: primary.start,
    primary: readings(own('power')) ?? [],
    seconds: seconds.map(({ subject, series }: AlignedSecond) => ({
      subject,
      power: readings(series.channels.power) ?? [],
    })),
    cadence: readings(own('cadence')),
    heartRate: readings(own('heartRate')),
  };
}

function readings(column: Float64Array | undefined): Reading[] | null {
  if (column === undefined) return null;
  const list: Reading[] = new Array(column.length);
  for (let i = 0; i < column.length; i++) list[i] = Number.isNaN(column[i]!) ? null : column[i]!;
  return list;
}

/** Every number to six figures, so that the last bit of a logarithm never shows in the report's bytes. */
function rounded<T>(data: T): T {
  if (typeof data === 'number') return (Number.isInteger(data) ? data : toFigures(data, 6)) as T;
  if (data === null || typeof data !== 'object') return data;
  // Most of a report is columns of whole watts: an array that needs no rounding is kept as it is.
  if (Array.isArray(data)) return (data.every(needsNone) ? data : data.map(rounded)) as T;
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(data)) copy[key] = rounded(data[key as keyof T]);
  return copy as T;
}

const needsNone = (value: unknown) => value === null || Number.isInteger(value);
