import type { AgreementChart } from '../../types.ts';
import { figure, number, quantity, range } from '../words/number.ts';
import {
  axisBottom,
  axisLeft,
  dots,
  gutter,
  heading,
  label,
  panel,
  roundTicks,
  rule,
  sheet,
} from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent } from './reduce.ts';

const height = 230;
const percent = (value: number) => quantity(value, '%');
const around = (value: number, half: number) => range([value - half, value + half], '%') ?? '';

/** Difference of two meters against their mean, with the limits of agreement. */
export function agreement(chart: AgreementChart, setting: Setting): Picture {
  const { points, mean, low, high, half } = chart;
  const title = 'How far apart single efforts are';
  const description = `Each dot is one block: difference of the primary from the second, in per cent, against the mean of both; ${points.length} blocks. The mean difference is ${percent(mean)}; about 95 of 100 blocks lie between ${percent(low)} and ${percent(high)}.${concordanceSaid(chart)}`;
  return {
    title,
    description,
    table: {
      head: ['line', 'value', '95 % interval'],
      rows: [
        ['mean', percent(mean), around(mean, half.mean)],
        ['lower limit of agreement', percent(low), around(low, half.low)],
        ['upper limit of agreement', percent(high), around(high, half.high)],
        ...concordanceRows(chart),
      ],
    },
    strip: null,
    draw: (width) => {
      const across = extent(points.map(({ watts }) => watts)) ?? [0, 1];
      const up = extent([0, low, high, ...points.map((point) => point.percent)]) ?? [-1, 1];
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        across,
        up,
        5,
      );
      const line = (value: number, name: string) => [
        rule([on.left, on.y(value)], [on.right, on.y(value)], 'ink', value === mean ? 2 : 1),
        label(name, [on.right - 4, on.y(value) - 4], 'ink', 'end'),
      ];
      return sheet(setting.id, [width, height], title, description, [
        axisLeft(on, (value) => `${value} %`),
        rule([on.left, on.y(0)], [on.right, on.y(0)], 'quiet'),
        dots(
          points.map((point) => [on.x(point.watts), on.y(point.percent)] as const),
          2.2,
          'a',
        ),
        line(mean, percent(mean)),
        line(low, percent(low)),
        line(high, percent(high)),
        axisBottom(on, roundTicks(across, width), (tick) => `${number(tick)} W`),
        heading(on, 'Primary against second', [{ name: 'block', role: 'a', mark: 'dot' }]),
      ]);
    },
  };
}

function concordanceRows({ concordance }: AgreementChart): string[][] {
  if (concordance === null) return [];
  const { value, low, high, honest } = concordance;
  return [
    ['concordance', figure(value, 'r'), range([low, high], 'r') ?? ''],
    ['concordance of honest meters in such a ride, at least', figure(honest, 'r'), ''],
  ];
}

function concordanceSaid({ concordance }: AgreementChart): string {
  return concordance === null
    ? ''
    : ` Concordance is ${figure(concordance.value, 'r')}: 1 where both read alike in every block. The less the power of a ride varies, the lower it is for the same difference: compare it with no other ride, but with the ${figure(concordance.honest, 'r')} and more that honest meters have in one like this.`;
}
