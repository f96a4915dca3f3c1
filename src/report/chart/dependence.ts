import type { DependenceChart } from '../../types.ts';
import { number, quantity } from '../words/number.ts';
import { axisBottom, axisLeft, dots, gutter, heading, panel, roundTicks, rule, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent } from './reduce.ts';

const height = 230;
/** More dots than these make a cloud that tells no more, and a page of three hours too large to be mailed. */
const mostDots = 300;
const percent = (value: number) => quantity(value, '%');

/** How the ratio of two meters depends on power or cadence, block by block and in bands. */
export function dependence(chart: DependenceChart, setting: Setting): Picture {
  const { points, bands, of, unit } = chart;
  const step = Math.ceil(points.length / mostDots);
  const shown = points.filter((_, index) => index % step === 0);
  const which = step > 1 ? `, of which one in ${step} is shown` : '';
  const title = `Ratio of the meters by ${of}`;
  const description = `Each dot is one block: power of the primary over the second, in per cent, against ${of}; ${points.length} blocks${which}. Bars are the means of bands with as many blocks each, with their 95 % intervals.`;
  return {
    title,
    description,
    table: {
      head: [of, 'blocks', 'primary over second', '95 % interval'],
      rows: bands.map((band) => [
        `${number(Math.round(band.from))} to ${quantity(Math.round(band.to), unit)}`,
        number(band.count),
        percent(band.percent),
        `${percent(band.low)} to ${percent(band.high)}`,
      ]),
    },
    strip: {
      label: 'primary over second, low to high',
      values: bands.map((band) => band.percent),
      say: percent,
    },
    draw: (width) => {
      const across = extent(
        shown.map(({ x }) => x),
        bands.flatMap(({ from, to }) => [from, to]),
      ) ?? [0, 1];
      const up = extent([
        100,
        ...shown.map((point) => point.percent),
        ...bands.flatMap(({ low, high }) => [low, high]),
      ]);
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        across,
        up ?? [90, 110],
        5,
      );
      return sheet(setting.id, [width, height], title, description, [
        axisLeft(on, (value) => `${value} %`),
        rule([on.left, on.y(100)], [on.right, on.y(100)], 'quiet'),
        dots(
          shown.map((point) => [on.x(point.x), on.y(point.percent)] as const),
          2,
          'a',
        ),
        bands.flatMap((band) => {
          const middle = (on.x(band.from) + on.x(band.to)) / 2;
          return [
            rule([on.x(band.from), on.y(band.percent)], [on.x(band.to), on.y(band.percent)], 'ink', 2),
            rule([middle, on.y(band.low)], [middle, on.y(band.high)], 'ink', 2),
          ];
        }),
        axisBottom(on, roundTicks(across, width), (tick) => `${number(tick)} ${unit}`),
        heading(on, 'Primary over second', [
          { name: 'block', role: 'a', mark: 'dot' },
          { name: 'mean of a band', role: 'ink' },
        ]),
      ]);
    },
  };
}
