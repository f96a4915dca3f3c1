import type { Reading, TracesChart } from '../../types.ts';
import type { Markup } from '../markup.ts';
import { number, position } from '../words/number.ts';
import { axisLeft, gutter, heading, marks, type Panel, panel, path, rule, sheet, timeAxis } from './frame.ts';
import { meterRole, type Role } from './palette.ts';
import type { NumberTable, Picture, Setting, View } from './picture.ts';
import { difference, extent, smooth, tracePath } from './reduce.ts';

/** Seconds over which the difference is averaged for the strong line; every second is behind it. */
const usualAveraging = 30;
/** A part of the ride no longer than this, s, is seen from close by: every second shows. */
const closeUp = 600;
/** Rows of the table of numbers. */
const tableRows = 12;

interface Curve {
  readonly values: readonly Reading[];
  readonly name: string;
  readonly role: Role;
  readonly width: number;
  /** Shown behind the others and left out of the legend. */
  readonly behind?: boolean;
}
interface Band {
  readonly title: string;
  readonly height: number;
  readonly zero: boolean;
  readonly curves: readonly Curve[];
}

/** Every second of the ride on one time axis: the difference of the meters first, then what they read. */
export function traces(chart: TracesChart, setting: Setting): Picture {
  const meters = metersOf(chart, setting);
  const view = setting.view ?? { within: [0, chart.primary.length], averaging: null };
  return {
    title: titleOf(meters),
    description: describe(chart, meters.length > 1),
    table: table(chart, meters),
    strip: strip(meters),
    draw: (width) => {
      let top = 0;
      const drawn: (Markup | null)[] = [];
      let last: Panel | null = null;
      for (const band of bandsOf(chart, meters, view)) {
        const shown = extent(...band.curves.map((curve) => curve.values));
        if (shown === null) continue;
        const on = panel(
          [gutter.left, width - gutter.right],
          [top + gutter.title + 4, top + gutter.title + band.height],
          view.within,
          band.zero ? [Math.min(0, shown[0]), Math.max(0, shown[1])] : shown,
          band.height > 90 ? 4 : 2,
        );
        drawn.push(...drawBand(band, on, setting, view.within[0]));
        top += gutter.title + band.height + 10;
        last = on;
      }
      if (last !== null) drawn.push(...timeAxis(last, view.within));
      return sheet(
        setting.id,
        [width, top + gutter.axis],
        titleOf(meters),
        describe(chart, meters.length > 1),
        drawn,
      );
    },
  };
}

interface Meter {
  readonly name: string;
  readonly power: readonly Reading[];
}

function titleOf({ length }: readonly Meter[]): string {
  if (length === 1) return 'The ride, second by second';
  return length === 2 ? 'Both meters through the ride' : 'All meters through the ride';
}

function metersOf(chart: TracesChart, { meter }: Setting): readonly Meter[] {
  return [
    { name: meter('primary'), power: chart.primary },
    ...chart.seconds.map(({ subject, power }) => ({ name: meter(subject), power })),
  ];
}

/** The panels from the top, their values cut to the part that is shown. */
function bandsOf(chart: TracesChart, meters: readonly Meter[], { within, averaging }: View): readonly Band[] {
  const cut = (values: readonly Reading[]) => values.slice(within[0], within[1]);
  const shown = (values: readonly Reading[]) => cut(averaging === null ? values : smooth(values, averaging));
  const bands: Band[] = [
    {
      title: 'Power, W',
      height: 150,
      zero: true,
      curves: meters
        .map(
          ({ name, power }, index): Curve => ({
            values: shown(power),
            name,
            role: meterRole(index),
            width: 1.25,
          }),
        )
        .reverse(),
    },
  ];
  if (meters.length > 1) bands.unshift(differenceBand(chart, meters, { within, averaging }));
  const rest = (title: string, values: readonly Reading[], zero: boolean): Band => ({
    title,
    height: 56,
    zero,
    curves: [{ values: cut(values), name: '', role: 'quiet', width: 1, behind: true }],
  });
  if (chart.cadence !== null) bands.push(rest('Cadence, rpm', chart.cadence, true));
  if (chart.heartRate !== null) bands.push(rest('Heart rate, bpm', chart.heartRate, false));
  return bands;
}

/** Every second of the difference with its mean in front; from close by, or averaged, the line alone. */
function differenceBand(chart: TracesChart, meters: readonly Meter[], { within, averaging }: View): Band {
  const others = meters.slice(1);
  const apart = others.map(({ power }) => difference(chart.primary, power));
  const cut = (values: readonly Reading[]) => values.slice(within[0], within[1]);
  const close = averaging === null && within[1] - within[0] <= closeUp;
  const window = averaging ?? usualAveraging;
  const line = (values: readonly Reading[], index: number): Curve => ({
    values: cut(close ? values : smooth(values, window)),
    name: [
      others.length > 1 ? `minus ${others[index]!.name}` : '',
      close ? 'as recorded' : `${window} s mean`,
    ]
      .filter((part) => part !== '')
      .join(', '),
    role: others.length > 1 ? meterRole(index + 1) : 'ink',
    width: 1.5,
  });
  const haze = (values: readonly Reading[]): Curve => ({
    values: cut(values),
    name: '',
    role: 'haze',
    width: 1,
    behind: true,
  });
  return {
    title: others.length > 1 ? 'Primary minus another, W' : 'Primary minus second, W',
    height: 130,
    zero: true,
    curves: [...(close || averaging !== null ? [] : apart.map(haze)), ...apart.map(line)],
  };
}

function drawBand(band: Band, on: Panel, setting: Setting, from: number): readonly Markup[] {
  const keys = band.curves.filter((curve) => curve.behind !== true).map(({ name, role }) => ({ name, role }));
  const x = (index: number) => on.x(from + index);
  return [
    ...marks(on, setting.marked),
    ...axisLeft(on, number),
    band.zero && on.ticksY[0]! < 0 ? rule([on.left, on.y(0)], [on.right, on.y(0)], 'quiet') : null,
    ...band.curves.map((curve) => path(tracePath(curve.values, x, on.y), curve.role, curve.width)),
    ...heading(
      on,
      band.title,
      keys.length > 1 || band.title.startsWith('Primary') ? [...keys].reverse() : [],
    ),
  ].filter((one) => one !== null);
}

function describe(chart: TracesChart, pair: boolean): string {
  const parts = [
    pair ? `Difference of the meters, with its mean over ${usualAveraging} s in front` : null,
    'power',
    chart.cadence === null ? null : 'cadence',
    chart.heartRate === null ? null : 'heart rate',
  ].filter((part) => part !== null);
  return `${parts.join(', ')} against time, ${position(chart.primary.length)} in all. Where several seconds share a pixel the lowest and the highest are drawn. Stretches that findings argue from are marked.`;
}

/** Lowest and highest of equal parts of the ride. */
function table(
  chart: TracesChart,
  meters: readonly { name: string; power: readonly Reading[] }[],
): NumberTable {
  const length = chart.primary.length;
  const part = Math.max(60, Math.ceil(length / tableRows / 60) * 60);
  const columns = [
    ...meters.map(({ name, power }) => ({ head: `${name}, W`, values: power })),
    ...(chart.cadence === null ? [] : [{ head: 'cadence, rpm', values: chart.cadence }]),
    ...(chart.heartRate === null ? [] : [{ head: 'heart rate, bpm', values: chart.heartRate }]),
  ];
  const rows: string[][] = [];
  for (let from = 0; from < length; from += part) {
    const to = Math.min(length, from + part);
    rows.push([
      `${position(from)}–${position(to)}`,
      ...columns.map(({ values }) => {
        const shown = extent(values.slice(from, to));
        return shown === null ? '–' : `${number(Math.round(shown[0]))} to ${number(Math.round(shown[1]))}`;
      }),
    ]);
  }
  return { head: ['time', ...columns.map(({ head }) => `${head}: lowest to highest`)], rows };
}

function strip(meters: readonly { power: readonly Reading[] }[]): Picture['strip'] {
  const second = meters[1];
  const values = second === undefined ? meters[0]!.power : difference(meters[0]!.power, second.power);
  return {
    label: second === undefined ? 'power' : 'primary minus second',
    values,
    say: (value) => `${number(Math.round(value))} W`,
  };
}
