import type { Chart, Report, Stretch } from '../../types.ts';
import { type Outline, outline, type Told } from '../outline.ts';

/** The report, what is told of it, and where each chart but the whole ride is drawn: once, where it is first argued from. */
export interface Layout {
  readonly report: Report;
  readonly told: Outline;
  readonly place: ReadonlyMap<string, Told>;
}

export function layOut(report: Report): Layout {
  const told = outline(report);
  const whole = new Set(report.charts.filter(isWholeRide).map(({ id }) => id));
  const place = new Map<string, Told>();
  for (const one of [...raisedOf(told), ...told.fine]) {
    for (const id of one.finding.charts) if (!place.has(id) && !whole.has(id)) place.set(id, one);
  }
  return { report, told, place };
}

export function isWholeRide(chart: Chart): boolean {
  return chart.kind === 'traces';
}

/** What is shown of the ride as a whole, before any finding. */
export function isOverview(chart: Chart): boolean {
  return isWholeRide(chart) || chart.kind === 'sections';
}

function raisedOf({ raised }: Outline): readonly Told[] {
  return raised.flatMap(({ findings }) => findings);
}

/** Names for links: places in the report, which no measure or rule file can choose. */
export const findingId = (number: number) => `finding-${number}`;
export const chartId = ({ report }: Layout, { id }: Chart) =>
  `chart-${report.charts.findIndex((chart) => chart.id === id) + 1}`;

/** The stretches marked on a chart: on the whole ride those of every raised finding, else of its own. */
export function markedOn({ told, place }: Layout, chart: Chart): readonly Stretch[] {
  if (isWholeRide(chart)) return raisedOf(told).flatMap(({ finding }) => finding.stretches);
  const own = place.get(chart.id);
  return own === undefined || own.finding.level === 'none' ? [] : own.finding.stretches;
}
