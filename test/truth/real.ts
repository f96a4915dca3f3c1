/** `npm run truth -- --real FOLDER`: the simulator and the rules held against recordings that the user has. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { auditRecordings } from '../../src/audit.ts';
import { limitReach } from '../../src/math/limits-of-agreement.ts';
import { read } from '../../src/read/index.ts';
import { levels, type Recording, type RuleSet } from '../../src/types.ts';
import { retotalled } from '../make/faults/edit.ts';
import { faults } from '../make/faults/index.ts';
import { fakeDigest, Random } from '../make/random.ts';
import { type Figures, figures, quantile } from '../make/realism.ts';
import { drawDraft, drawSubmission, iso, realise, type Submission } from '../make/submission.ts';
import { balancedAccuracy, type Sample } from './classifier.ts';
import type { Figures as Kept } from './figures.ts';
import { rankOf } from './tally.ts';
import { percent, table } from './text.ts';

/** Simulated rides of each sort that real ones are held against. */
const simulated = 40;
/** Records of a piece that the classifier sees. */
const pieceRecords = 600;

/** What the simulator and the rules make of real recordings. */
export interface AgainstReal {
  /** What all of them share, and nothing that tells one of them. */
  readonly figures: Omit<NonNullable<Kept['realism']>, 'date' | 'commit'>;
  readonly recordings: number;
  readonly traces: readonly TraceTable[];
  readonly grades: readonly string[];
  readonly halves: readonly string[];
  readonly planted: readonly string[];
}

export async function heldAgainstReal(folder: string, rules: RuleSet): Promise<AgainstReal> {
  const all = await recordingsIn(folder);
  const usable = all.filter(({ channels }) => channels.power !== undefined);
  const traces = traceTables(usable);
  const halves = usable.map((one) => oddAndEven(one, rules));
  const values = traces.flatMap(({ rows }) => rows.flatMap(({ values: told }) => told));
  return {
    figures: {
      recordings: usable.length,
      toldApart: accuracyOf(usable),
      inside: values.filter(({ inside }) => inside === true).length,
      of: values.filter(({ inside }) => inside !== null).length,
      oddAgainstEven: halves.reduce((sum, { findings }) => sum + asking(findings), 0),
    },
    recordings: all.length,
    traces,
    grades: asTheyAre(usable, rules),
    halves: table(
      ['recording', 'notes and more', 'half a minute, ± %: measured', 'by their seconds alone'],
      halves.map(({ findings, spread, due }, k) => [
        `real ${k + 1}`,
        raised(findings),
        spread?.toFixed(1) ?? '–',
        due.toFixed(1),
      ]),
    ),
    planted: planted(usable, rules),
  };
}

export function realPage({ figures: all, recordings, traces, ...parts }: AgainstReal): string {
  return [
    '# Held against real recordings',
    '',
    `${all.recordings} of ${recordings} recordings hold power. Nothing of them is kept but these figures.`,
    '',
    '## Figures of the traces',
    '',
    'Bold: outside the middle 95 % of simulated rides of the same sort.',
    '',
    ...traces.flatMap(traceLines),
    `${all.inside} of ${all.of} figures lie inside.`,
    '',
    `A simple classifier that sees pieces of ten minutes and has not seen the ride tells real from simulated in ${percent(all.toldApart, 0)} of cases (50 %: cannot tell; 100 %: always).`,
    '',
    '## As they are',
    '',
    ...parts.grades,
    '',
    '## Odd against even seconds',
    '',
    'Two halves of one recording are no two meters that differ: no rule on agreement may ask. They hold other seconds, however: where power changes much from one to the next, half a minute of one half lies as far from that of the other as the last column says, and wide-spread may rightly note it.',
    '',
    ...parts.halves,
    '',
    '## Faults planted into them',
    '',
    ...parts.planted,
    '',
  ].join('\n');
}

async function recordingsIn(folder: string): Promise<Recording[]> {
  const names = readdirSync(folder).filter((name) => /\.(fit|tcx|gpx|csv)(\.gz)?$/i.test(name));
  return Promise.all(
    names.sort().map((name) => read({ name, bytes: new Uint8Array(readFileSync(path.join(folder, name))) })),
  );
}

const shown = [
  'lag1',
  'differenceRatio',
  'step',
  'tails',
  'allan1',
  'allan16',
  'longestRun',
  'zeros',
  'coastLength',
  'coastsPerHour',
  'cadencePower',
  'cadenceStep',
  'cadenceRepeats',
  'heartLag',
  'heartFit',
  'heartRepeats',
] as const satisfies readonly (keyof Figures)[];

const outdoors = ({ indoors }: Recording) => indoors === false;
const kindsOf = (outside: boolean) =>
  outside ? (['outdoor ride', 'long ride'] as const) : (['bunch race', 'time trial', 'short race'] as const);

function simulatedRides(outside: boolean): Recording[] {
  const kinds = kindsOf(outside);
  return Array.from(
    { length: simulated },
    (_, k) =>
      drawSubmission(`real ${outside} ${k}`, {
        kind: kinds[k % kinds.length]!,
        ...(outside ? { minutes: 75 } : {}),
        seconds: 0,
      }).primary,
  );
}

/** The figures of real traces beside the middle 95 % of simulated ones of the same sort. */
interface TraceTable {
  readonly outside: boolean;
  readonly rows: readonly {
    readonly name: string;
    readonly low: number;
    readonly high: number;
    /** `inside` is null where the recording does not have what the figure is of. */
    readonly values: readonly { readonly value: number; readonly inside: boolean | null }[];
  }[];
}

function traceTables(recordings: readonly Recording[]): TraceTable[] {
  return [true, false].flatMap((outside) => {
    const told = recordings.filter((one) => outdoors(one) === outside).map(figures);
    if (told.length === 0) return [];
    const made = simulatedRides(outside).map(figures);
    const rows = shown.map((name) => {
      const among = made.map((one) => one[name]).filter(Number.isFinite);
      const [low, high] = [quantile(among, 0.025), quantile(among, 0.975)];
      const values = told.map((one) => {
        const value = one[name];
        return { value, inside: Number.isFinite(value) ? value >= low && value <= high : null };
      });
      return { name, low, high, values };
    });
    return [{ outside, rows }];
  });
}
function traceLines({ outside, rows }: TraceTable): string[] {
  return [
    ...table(
      [
        outside ? 'outdoors' : 'indoors',
        ...rows[0]!.values.map((_, k) => `real ${k + 1}`),
        'simulated, middle 95 %',
      ],
      rows.map(({ name, low, high, values }) => [
        name,
        ...values.map(({ value, inside }) => {
          const text = inside === null ? '–' : value.toPrecision(3);
          return inside === false ? `**${text}**` : text;
        }),
        `${low.toPrecision(3)} – ${high.toPrecision(3)}`,
      ]),
    ),
    '',
  ];
}

/** Figures that a piece of ten minutes can give. */
const felt = [
  'lag1',
  'differenceRatio',
  'step',
  'tails',
  'allan1',
  'allan4',
  'cadenceStep',
  'cadenceRepeats',
] as const;

function accuracyOf(recordings: readonly Recording[]): number {
  const made = [true, false].flatMap(simulatedRides);
  const pieces = [
    ...recordings.flatMap((one, k) => piecesOf(one, true, `real ${k}`)),
    ...made.flatMap((one, k) => piecesOf(one, false, `made ${k}`)),
  ];
  return balancedAccuracy(pieces);
}

function piecesOf(recording: Recording, real: boolean, ride: string): Sample[] {
  const out: Sample[] = [];
  for (let from = 0; from + pieceRecords <= recording.time.length; from += pieceRecords) {
    const to = from + pieceRecords;
    const channels = Object.fromEntries(
      Object.entries(recording.channels).map(([name, column]) => [name, column.subarray(from, to)]),
    );
    const all = figures({ time: recording.time.subarray(from, to), channels });
    const values = felt.map((name) => Math.log(Math.max(1e-3, all[name])));
    if (values.every(Number.isFinite)) out.push({ figures: values, real, ride });
  }
  return out;
}

function asTheyAre(recordings: readonly Recording[], rules: RuleSet): string[] {
  return table(
    ['recording', 'grade', 'notes and more'],
    recordings.map((primary, k) => {
      const { grade, findings } = audited(primary, [], rules);
      return [`real ${k + 1}`, grade, raised(findings)];
    }),
  );
}

/** What the rules on agreement find between two halves of a recording. */
interface Halves {
  readonly findings: Findings;
  /** How far half-minute means lie apart, ± %; null where that could not be measured. */
  readonly spread: number | null;
  /** How far they would by change from second to second alone, ± %. */
  readonly due: number;
}

function oddAndEven(recording: Recording, rules: RuleSet): Halves {
  const agreement = new Set(rules.rules.filter(({ family }) => family === 'agreement').map(({ id }) => id));
  const halves = [half(recording, 0), half(recording, 1)] as const;
  const { findings, measurements } = audited(halves[0], [halves[1]], rules);
  const { value, options } = measurements.find(({ measure }) => measure === 'effort-spread')!;
  const due = dueApart(halves, Number(options.blockSeconds));
  return { findings: findings.filter(({ rule }) => agreement.has(rule)), spread: value, due };
}

/** Limits of agreement, ± %, of means of so many seconds that were drawn from a ride in turn: no meter is at work in them. */
function dueApart([odd, even]: readonly [Recording, Recording], seconds: number): number {
  const [a, b] = [odd.channels.power!, even.channels.power!];
  let [squares, sum, count] = [0, 0, 0];
  for (let k = 0; k < Math.min(a.length, b.length); k++) {
    if (!(a[k]! > 0 && b[k]! > 0)) continue;
    squares += (a[k]! - b[k]!) ** 2;
    sum += (a[k]! + b[k]!) / 2;
    count++;
  }
  return (100 * limitReach * Math.sqrt(squares / count / seconds)) / (sum / count);
}

function asking(findings: Findings): number {
  return findings.filter(({ level }) => levels.indexOf(level) >= 2).length;
}

/** Every other record, closed up to one a second. */
function half(recording: Recording, first: 0 | 1): Recording {
  const records = [...recording.time.keys()].filter((k) => k % 2 === first);
  const start = recording.time[0]!;
  const channels = Object.fromEntries(
    Object.entries(recording.channels).map(([name, column]) => [
      name,
      Float64Array.from(records, (k) => column[k]!),
    ]),
  );
  const time = Float64Array.from(records, (k) => start + Math.floor((recording.time[k]! - start) / 2));
  return {
    ...recording,
    sha256: fakeDigest(`${recording.sha256} ${first}`),
    time,
    channels,
    pauses: [],
    laps: [],
    totals: {},
    extraMeters: [],
  };
}

/** Faults that change the recording alone, and those of a meter put on one half of it. */
function planted(recordings: readonly Recording[], rules: RuleSet): string[] {
  const known = new Set(rules.rules.map(({ id }) => id));
  const inFile = faults.filter(
    ({ after, before, needs, rules: names }) =>
      after !== undefined &&
      before === undefined &&
      known.has(names[0]!) &&
      needs.every((need) => need === 'cadence' || need === 'heart rate'),
  );
  const rows = [
    ...inFile.map((fault) => ({
      name: fault.name,
      right: fault.rules,
      strengths: fault.strengths,
      report: (recording: Recording, dose: number, random: Random) => {
        const one = fault.after!(asSubmission(recording), dose, random);
        return audited(one.primary, [], rules, one.race);
      },
      fits: (recording: Recording) =>
        (!fault.needs.includes('cadence') || recording.channels.cadence !== undefined) &&
        (!fault.needs.includes('heart rate') || recording.channels.heartRate !== undefined),
    })),
    ...meterFaults.map(({ name, right, strengths, change }) => ({
      name: `${name} (one half)`,
      right,
      strengths,
      report: (recording: Recording, dose: number) => {
        const own = half(recording, 0);
        const power = change(own.channels.power!, dose, own.channels.cadence).map(Math.round);
        const primary = retotalled({ ...own, channels: { ...own.channels, power } });
        return audited(primary, [half(recording, 1)], rules);
      },
      fits: (recording: Recording) => recording.time.length > 2400,
    })),
  ];
  return table(
    ['fault', 'borderline', 'moderate', 'clear-cut', 'recordings'],
    rows.map(({ name, right, strengths, report, fits }) => {
      const highest = rules.rules.find(({ id }) => id === right[0])?.highest;
      const from = highest === undefined ? 2 : Math.min(2, rankOf(highest));
      const fitting = recordings.filter(fits);
      const found = (dose: number) => {
        const asked = fitting.filter((recording, k) => {
          const { findings, grade } = report(recording, dose, new Random(`real ${name} ${k}`));
          return (
            (right.includes('missing-channel') && grade === 'incomplete') ||
            findings.some(({ rule, level }) => right.includes(rule) && levels.indexOf(level) >= from)
          );
        });
        return `${asked.length}`;
      };
      const { borderline, moderate, clear } = strengths;
      return [name, found(borderline), found(moderate), found(clear), String(fitting.length)];
    }),
  );
}

interface MeterFault {
  readonly name: string;
  readonly right: readonly string[];
  readonly strengths: { readonly borderline: number; readonly moderate: number; readonly clear: number };
  readonly change: (power: Float64Array, dose: number, cadence: Float64Array | undefined) => Float64Array;
}

const meterFaults: readonly MeterFault[] = [
  {
    name: 'reads high',
    right: ['mean-bias'],
    strengths: { borderline: 0.04, moderate: 0.07, clear: 0.18 },
    change: (power, dose) => power.map((watts) => watts * (1 + dose)),
  },
  {
    name: 'drift',
    right: ['late-drift'],
    strengths: { borderline: 0.04, moderate: 0.08, clear: 0.16 },
    change: (power, dose) => power.map((watts, k) => watts * (1 + (dose * k) / power.length)),
  },
  {
    name: 'adds a torque',
    right: ['zero-offset', 'mean-bias'],
    strengths: { borderline: 10, moderate: 20, clear: 35 },
    change: (power, dose, cadence) =>
      power.map((watts, k) => (watts > 0 ? watts + (dose * (cadence?.[k] ?? 90)) / 90 : watts)),
  },
];

const declaredMeters = [
  { name: 'primary', place: 'crank', sides: 2, tolerancePercent: 2 },
  { name: 'second', place: 'crank', sides: 2, tolerancePercent: 2 },
] as const;

function audited(
  primary: Recording,
  seconds: readonly Recording[],
  rules: RuleSet,
  race: Submission['race'] = { kind: 'race' },
) {
  return auditRecordings(
    {
      primary,
      seconds,
      unreadable: [],
      rider: { devices: declaredMeters },
      race,
      profile: null,
      otherInputs: [],
    },
    rules,
  );
}

/** A real recording in the place of a drawn one: faults of the file look at nothing but records and facts. */
function asSubmission(primary: Recording): Submission {
  const draft = drawDraft(`beside ${primary.sha256}`, { kind: 'short race', seconds: 0 });
  const { truth } = realise(draft);
  const race = { start: iso(primary.time[0]!), finish: iso(primary.time.at(-1)!), kind: 'race' as const };
  return { primary, seconds: [], rider: {}, race, history: [], others: [], truth };
}

type Findings = ReturnType<typeof audited>['findings'];

function raised(findings: Findings): string {
  const text = findings
    .filter(({ level }) => level !== 'none')
    .map(({ rule, level }) => `${rule} (${level})`);
  return text.length === 0 ? '–' : text.join(', ');
}
