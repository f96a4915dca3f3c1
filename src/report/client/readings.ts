import type { Reading, Subject, TracesChart, Unit } from '../../types.ts';
import { smooth } from '../chart/reduce.ts';
import { quantity } from '../words/number.ts';

/** What is read under the cursor: one second of each channel, of the data itself and never of the drawing. */
export interface Channel {
  readonly name: string;
  readonly unit: Unit;
  readonly values: readonly Reading[];
}

/** The channels of the ride; powers averaged as the drawing is. */
export function channelsOf(
  chart: TracesChart,
  meter: (subject: Subject) => string,
  averaging: number | null,
): readonly Channel[] {
  const power = (name: string, values: readonly Reading[]): Channel => ({
    name,
    unit: 'W',
    values: averaging === null ? values : smooth(values, averaging),
  });
  return [
    power(meter('primary'), chart.primary),
    ...chart.seconds.map((one) => power(meter(one.subject), one.power)),
    ...(chart.cadence === null ? [] : [{ name: 'cadence', unit: 'rpm' as const, values: chart.cadence }]),
    ...(chart.heartRate === null
      ? []
      : [{ name: 'heart rate', unit: 'bpm' as const, values: chart.heartRate }]),
  ];
}

export function readingsAt(channels: readonly Channel[], at: number) {
  return channels.map(({ name, unit, values }) => {
    const value = values[at] ?? null;
    return { name, value: value === null ? null : quantity(value, unit) };
  });
}
