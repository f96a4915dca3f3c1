import type { Chart, Reading, Stretch, Subject, TracesChart } from '../../types.ts';

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
 * Readings as text, a third of their size as JSON and still plain. Each character is the change from the
 * last reading: `a` to `z` 1 to 26 up, `A` to `Z` 1 to 26 down, `0` none, `_` nothing recorded; other changes
 * are written out in brackets. Whole numbers, or tenths where `scale` is 10.
 */
export interface Packed {
  readonly scale: 1 | 10;
  readonly changes: string;
}

const small = 26;

export function pack(values: readonly Reading[]): Packed {
  const scale = values.every((value) => value === null || Number.isInteger(value)) ? 1 : 10;
  let last = 0;
  const changes = values.map((value) => {
    if (value === null) return '_';
    const scaled = Math.round(value * scale);
    const change = scaled - last;
    last = scaled;
    if (change === 0) return '0';
    if (Math.abs(change) > small) return `(${change})`;
    return String.fromCharCode((change > 0 ? 96 : 64) + Math.abs(change));
  });
  return { scale, changes: changes.join('') };
}

export function unpack({ scale, changes }: Packed): readonly Reading[] {
  let last = 0;
  return (changes.match(/\(-?\d+\)|[a-zA-Z0_]/g) ?? []).map((sign) => {
    if (sign === '_') return null;
    const code = sign.charCodeAt(0);
    if (sign.length > 1) last += Number(sign.slice(1, -1));
    else if (sign !== '0') last += code > 96 ? code - 96 : 64 - code;
    return last / scale;
  });
}

/** A live chart as it travels: the ride's series packed, the others as they are. */
export type PackedChart = Exclude<LiveChart, TracesChart> | PackedTraces;
interface PackedTraces {
  readonly kind: 'traces';
  readonly id: string;
  readonly start: number;
  readonly primary: Packed;
  readonly seconds: readonly { readonly subject: Subject; readonly power: Packed }[];
  readonly cadence: Packed | null;
  readonly heartRate: Packed | null;
}

export function packChart(chart: LiveChart): PackedChart {
  if (chart.kind !== 'traces') return chart;
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
  if (chart.kind !== 'traces') return chart;
  const { primary, seconds, cadence, heartRate } = chart;
  return {
    ...chart,
    primary: unpack(primary),
    seconds: seconds.map(({ subject, power }) => ({ subject, power: unpack(power) })),
    cadence: cadence === null ? null : unpack(cadence),
    heartRate: heartRate === null ? null : unpack(heartRate),
  };
}
