import type {
  Alignment,
  Chart,
  DeviceFacts,
  Finding,
  Report,
  ReportMeasurement,
  ReportRecording,
  Unit,
  Values,
} from '../types.ts';
import { restsOnHealth } from './health.ts';
import { ownWords } from './words/fill.ts';

/** Units whose numbers are health data, or give body mass away beside a power in watts. */
const healthUnits: readonly Unit[] = ['bpm', 'kg', 'W/kg'];
/** Traits of people that are health data. */
const healthTraits = /heart|mass|weight/i;
const withheld = 'withheld';

type Coder = (name: string) => string;

/**
 * A report fit to publish: codes for names, heart rate and body mass left out of every number, chart and
 * sentence, checksums kept so that it can still be matched with its files. Levels and grade stay.
 */
export function redact(report: Report): Report {
  const code = coder(report);
  const healthy = healthRules(report);
  const charts = report.charts.map(redactChart).filter((chart) => chart !== null);
  const kept = new Set(charts.map((chart) => chart.id));
  const { primary, seconds, unreadable } = report.submission;
  return {
    ...report,
    // So little stands in a file of facts that its checksum would give the mass away to whoever tries all masses.
    inputs: report.inputs
      .filter(({ role }) => role !== 'rider')
      .map((input) => ({ ...input, name: code(input.name) })),
    settings: { ...report.settings, rider: redactRider(report.settings.rider, code), redacted: true },
    submission: {
      ...report.submission,
      primary: redactRecording(primary, code),
      seconds: seconds.map((one) => redactRecording(one, code)),
      unreadable: unreadable.map(({ name, sha256, why }) => ({
        name: code(name),
        sha256,
        why: why.replaceAll(name, code(name)),
      })),
    },
    findings: report.findings.map((finding) => redactFinding(finding, healthy(finding), kept)),
    measurements: report.measurements.map((one) => redactMeasurement(one, healthy(one))),
    alignment: report.alignment.map(redactAlignment),
    steps: report.steps.map((step) => ({ ...step, values: redactValues(step.values) })),
    charts,
  };
}

/**
 * A file's code is the start of its checksum; a name without one is numbered. A report that bears codes already
 * keeps them, so that whoever audits the same files under their codes gets the same report.
 */
function coder({ inputs, submission: { primary, seconds, unreadable } }: Report): Coder {
  const codes = new Map<string, string>();
  for (const { name, sha256 } of [...inputs, primary, ...seconds, ...unreadable]) {
    if (sha256 !== null) codes.set(name, `file ${sha256.slice(0, 8)}`);
  }
  let numbered = 0;
  return (name) => {
    const known = codes.get(name);
    if (known !== undefined) return known;
    numbered++;
    codes.set(name, `name ${numbered}`);
    return `name ${numbered}`;
  };
}

/** Roles stand in for names already and need no code. */
const role = /^(primary|second( \d+)?)$/;

function redactDevice(facts: DeviceFacts, code: Coder): DeviceFacts {
  return role.test(facts.name) ? facts : { ...facts, name: code(facts.name) };
}

function redactRider(
  { devices, recordClass }: Report['settings']['rider'],
  code: Coder,
): Report['settings']['rider'] {
  return {
    ...(recordClass === undefined ? {} : { recordClass }),
    ...(devices === undefined ? {} : { devices: devices.map((one) => redactDevice(one, code)) }),
  };
}

function redactRecording(one: ReportRecording, code: Coder): ReportRecording {
  return {
    ...one,
    name: code(one.name),
    field: one.field === null ? null : code(one.field),
    device: { ...one.device, serial: null },
    declared: one.declared === null ? null : redactDevice(one.declared, code),
    defects: one.defects.map((defect) => ({ ...defect, values: redactValues(defect.values) })),
  };
}

/** Which results rest on health data: by their unit, or by what their rule needs. */
function healthRules(
  report: Report,
): (one: { readonly rule: string; readonly unit: Unit | null }) => boolean {
  const rules = new Set(report.rules.items.filter(restsOnHealth).map((rule) => rule.id));
  return ({ rule, unit }) => rules.has(rule) || (unit !== null && healthUnits.includes(unit));
}

/** Numbers stay unless they are health data; words stay when they are ours. */
function redactValues(values: Values): Values {
  const shown = Object.entries(values).map(([name, value]) => {
    if (typeof value === 'string') return [name, ownWords(value) === null ? withheld : value] as const;
    const secret = typeof value === 'object' && healthUnits.includes(value.unit);
    return [name, secret ? withheld : value] as const;
  });
  return Object.fromEntries(shown);
}

function redactFinding(finding: Finding, healthy: boolean, kept: ReadonlySet<string>): Finding {
  const charts = finding.charts.filter((id) => kept.has(id));
  const { summary, limits } = finding;
  if (!healthy) return { ...finding, charts, summary: { ...summary, values: redactValues(summary.values) } };
  const bare = Object.entries(limits).map(([level, limit]) => [
    level,
    { ...limit, atLeast: null, atMost: null },
  ]);
  return {
    ...finding,
    value: null,
    interval: null,
    limits: Object.fromEntries(bare),
    expected: null,
    charts,
    summary: { ...summary, values: {} },
  };
}

function redactMeasurement(one: ReportMeasurement, healthy: boolean): ReportMeasurement {
  const reason =
    one.reason === null ? null : { ...one.reason, values: healthy ? {} : redactValues(one.reason.values) };
  return healthy ? { ...one, value: null, interval: null, reason } : { ...one, reason };
}

function redactAlignment(alignment: Alignment): Alignment {
  return { ...alignment, byChannel: alignment.byChannel.filter(({ channel }) => channel !== 'heartRate') };
}

/** The chart without heart rate and mass; null when nothing else is in it. */
function redactChart(chart: Chart): Chart | null {
  switch (chart.kind) {
    case 'traces':
      return { ...chart, heartRate: null };
    case 'close-ups':
      return { ...chart, closeUps: chart.closeUps.map((one) => ({ ...one, heartRate: null })) };
    case 'response':
    case 'climbs':
      return null;
    case 'totals':
      return { ...chart, rows: chart.rows.filter(({ unit }) => !healthUnits.includes(unit)) };
    case 'traits':
      return {
        ...chart,
        traits: chart.traits.filter(
          ({ trait, unit }) => !healthUnits.includes(unit) && !healthTraits.test(trait),
        ),
      };
    case 'sections':
    case 'ratio':
    case 'dependence':
    case 'agreement':
    case 'meters':
    case 'efforts':
    case 'curve':
    case 'coverage':
    case 'comb':
    case 'copies':
    case 'plateaus':
    case 'averaging':
      return chart;
    case 'speed-curve':
      // What power keeps to the curve with may be the mass of rider and bicycle, and its points hold it.
      return chart.inertia === null ? chart : null;
  }
}
