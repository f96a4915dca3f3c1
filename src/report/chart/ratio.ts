import type { RatioChart } from '../../types.ts';
import { position, quantity } from '../words/number.ts';
import {
  axisLeft,
  clipped,
  dots,
  gutter,
  heading,
  label,
  marks,
  panel,
  path,
  rule,
  shape,
  sheet,
  timeAxis,
} from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { polyline } from './reduce.ts';

const height = 210;
const percent = (value: number) => quantity(value, '%');

/** How the ratio of two meters runs through the ride, with its trend and where the trend crosses 100 %. */
export function ratio(chart: RatioChart, setting: Setting): Picture {
  const { blocks, trend } = chart;
  const crossings = crossingsOf(trend);
  const description = [
    `Each dot is one block: power of the primary over the second, in per cent, against time; ${blocks.length} blocks.`,
    trend.length > 0
      ? `The trend runs from ${percent(trend[0]!.percent)} to ${percent(trend.at(-1)!.percent)}.`
      : '',
    crossings.length > 0 ? `It crosses 100 % at ${crossings.map(position).join(', ')}.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
  return {
    title: 'Ratio of the meters through the ride',
    description,
    table: {
      head: ['time', 'primary over second', 'mean power'],
      rows: blocks.map((block) => [position(block.at), percent(block.percent), quantity(block.watts, 'W')]),
    },
    strip: { label: 'primary over second', values: blocks.map((block) => block.percent), say: percent },
    draw: (width) => {
      const values = [
        100,
        ...blocks.map((block) => block.percent),
        ...trend.flatMap(({ low, high }) => [low, high]),
      ];
      const times = [...blocks, ...trend].map((block) => block.at);
      const domain = setting.view?.within ?? [Math.min(0, ...times), Math.max(1, ...times)];
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        domain,
        [Math.min(...values), Math.max(...values)],
        5,
      );
      const upper = trend.map(({ at, high }) => [on.x(at), on.y(high)] as const);
      const lower = trend.map(({ at, low }) => [on.x(at), on.y(low)] as const).reverse();
      return sheet(setting.id, [width, height], 'Ratio of the meters through the ride', description, [
        marks(on, setting.marked),
        clipped(setting, 'band', on, [
          trend.length > 1 ? shape(`${polyline([...upper, ...lower])}Z`, 'band') : null,
        ]),
        axisLeft(on, (value) => `${value} %`),
        rule([on.left, on.y(100)], [on.right, on.y(100)], 'quiet'),
        clipped(setting, 'lines', on, [
          dots(
            blocks.map((block) => [on.x(block.at), on.y(block.percent)] as const),
            2.5,
            'a',
          ),
          path(polyline(trend.map(({ at, percent: value }) => [on.x(at), on.y(value)] as const)), 'ink', 2),
          ...crossings.flatMap((at) => [
            rule([on.x(at), on.y(100) - 8], [on.x(at), on.y(100) + 8], 'ink', 2),
            label(position(at), [on.x(at) + 4, on.y(100) + 14], 'ink'),
          ]),
        ]),
        timeAxis(on, domain),
        heading(on, 'Primary over second', [
          { name: 'block', role: 'a', mark: 'dot' },
          { name: 'trend', role: 'ink' },
          { name: '95 % band', role: 'band', mark: 'area' },
        ]),
      ]);
    },
  };
}

/** Where the trend passes 100 %, in seconds of the ride. */
function crossingsOf(trend: RatioChart['trend']): readonly number[] {
  return trend.slice(1).flatMap((point, index) => {
    const before = trend[index]!;
    const [from, to] = [before.percent - 100, point.percent - 100];
    return from * to < 0 ? [before.at + ((point.at - before.at) * from) / (from - to)] : [];
  });
}
