import type {
  Chart,
  RatioChart,
  Reading,
  ResponseChart,
  Stretch,
  Subject,
  TracesChart,
} from '../../types.ts';

/** Charts with a time axis that the page draws again when its reader zooms. */
export type LiveChart = Extract<Chart, { kind: 'traces' | 'ratio' | 'response' }>;

/** What the page hands to its script, as JSON. */
export interface LiveData {
  readonly meters: Readonly<Record<Subject, string>>;
  readonly charts: readonly {
    readonly figure: string;
    readonly marked: readonly Stretch[];
    readonly chart: PackedChart;
  }[];
}

export function isLive(chart: Chart): chart is LiveChart {
  return chart.kind === 'traces' || chart.kind === 'ratio' || chart.kind === 'response';
}

/**
 * Readings as text, a quarter of their size as JSON and still plain. Each letter is the change from the last
 * reading: `a` to `z` 1 to 26 up, `A` to `Z` 1 to 26 down; the first mark of `+*=:;,!?~` before it adds 26, the
 * second 52, and so on; `.` none, `_` nothing recorded; larger changes are written out in brackets. In parts of
 * one by `scale`.
 */
type Scale = 1 | 10 | 100;

export interface Packed {
  readonly scale: Scale;
  readonly changes: string;
}

const letters = 26;
const marks = '+*=:;,!?~';
/** The largest change that a mark and a letter say. */
const largest = (marks.length + 1) * letters;

/** Readings in whole numbers where they are, else in tenths. */
export function pack(values: readonly Reading[]): Packed {
  return packAt(values, values.every((value) => value === null || Number.isInteger(value)) ? 1 : 10);
}

function packAt(values: readonly Reading[], scale: Scale): Packed {
  let last = 0;
  const changes = values.map((value) => {
    if (value === null) return '_';
    const scaled = Math.round(value * scale);
    const change = scaled - last;
    last = scaled;
    if (change === 0) return '.';
    const size = Math.abs(change);
    if (size > largest) return `(${change})`;
    const times = Math.floor((size - 1) / letters);
    const letter = String.fromCharCode((change > 0 ? 96 : 64) + size - times * letters);
    return times === 0 ? letter : marks[times - 1]! + letter;
  });
  return { scale, changes: changes.join('') };
}

export function unpack({ scale, changes }: Packed): readonly Reading[] {
  let last = 0;
  return (changes.match(/\(-?\d+\)|[+*=:;,!?~]?[a-zA-Z]|[._]/g) ?? []).map((sign) => {
    if (sign === '_') return null;
    if (sign.startsWith('(')) last += Number(sign.slice(1, -1));
    else if (sign !== '.') {
      const code = sign.charCodeAt(sign.length - 1);
      const more = sign.length === 1 ? 0 : letters * (marks.indexOf(sign[0]!) + 1);
      last += code > 96 ? code - 96 + more : 64 - code - more;
    }
    return last / scale;
  });
}

type Row = Readonly<Record<string, number>>;
type PackedRows<T extends Row> = { readonly [K in keyof T]: Packed };

/** Rows column by column, each as finely as a drawing can show. */
function packRows<T extends Row>(
  rows: readonly T[],
  scales: { readonly [K in keyof T]: Scale },
): PackedRows<T> {
  const columns = Object.entries(scales).map(([name, scale]) => [
    name,
    packAt(
      rows.map((row) => row[name]!),
      scale,
    ),
  ]);
  return Object.fromEntries(columns);
}

function unpackRows<T extends Row>(packed: PackedRows<T>): readonly T[] {
  const columns = Object.entries(packed).map(([name, column]) => [name, unpack(column)] as const);
  const length = columns[0]?.[1].length ?? 0;
  return Array.from(
    { length },
    (_, i) => Object.fromEntries(columns.map(([name, values]) => [name, values[i]])) as T,
  );
}

/** A live chart as it travels: columns packed, the rest as it is. */
export type PackedChart = PackedTraces | PackedRatio | PackedResponse;
interface PackedTraces {
  readonly kind: 'traces';
  readonly id: string;
  readonly start: number;
  readonly primary: Packed;
  readonly seconds: readonly { readonly subject: Subject; readonly power: Packed }[];
  readonly cadence: Packed | null;
  readonly heartRate: Packed | null;
}
interface PackedRatio extends Omit<RatioChart, 'blocks' | 'trend'> {
  readonly blocks: PackedRows<RatioChart['blocks'][number]>;
  readonly trend: PackedRows<RatioChart['trend'][number]>;
}
interface PackedResponse extends Omit<ResponseChart, 'blocks'> {
  readonly blocks: PackedRows<ResponseChart['blocks'][number]>;
}

export function packChart(chart: LiveChart): PackedChart {
  switch (chart.kind) {
    case 'traces':
      return packTraces(chart);
    case 'ratio':
      return {
        ...chart,
        blocks: packRows(chart.blocks, { at: 10, percent: 100, watts: 1 }),
        trend: packRows(chart.trend, { at: 10, percent: 100, low: 100, high: 100 }),
      };
    case 'response':
      return { ...chart, blocks: packRows(chart.blocks, { at: 10, watts: 1, heartRate: 10, predicted: 10 }) };
  }
}

function packTraces(chart: TracesChart): PackedTraces {
  const { primary, seconds, cadence, heartRate } = chart;
  return {
    ...chart,
    primary: pack(primary),
    seconds: seconds.map(({ subject, power }) => ({ subject, power: pack(power) })),
    cadence: cadence === null ? null : pack(cadence),
    heartRate: heartRate === null ? null : pack(heartRate),
  };
}

export function unpackChart(chart: PackedChart): LiveChart {
  switch (chart.kind) {
    case 'traces':
      return unpackTraces(chart);
    case 'ratio':
      return { ...chart, blocks: unpackRows(chart.blocks), trend: unpackRows(chart.trend) };
    case 'response':
      return { ...chart, blocks: unpackRows(chart.blocks) };
  }
}

function unpackTraces(chart: PackedTraces): TracesChart {
  const { primary, seconds, cadence, heartRate } = chart;
  return {
    ...chart,
    primary: unpack(primary),
    seconds: seconds.map(({ subject, power }) => ({ subject, power: unpack(power) })),
    cadence: cadence === null ? null : unpack(cadence),
    heartRate: heartRate === null ? null : unpack(heartRate),
  };
}
