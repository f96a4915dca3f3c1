import type { ResponseChart } from '../../types.ts';
import { number, position, quantity } from '../words/number.ts';
import {
  axisLeft,
  clipped,
  dots,
  gutter,
  heading,
  marks,
  panel,
  path,
  rule,
  sheet,
  timeAxis,
} from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, polyline } from './reduce.ts';

const upper = 150;
const lower = 90;

/** Heart rate as measured and as power predicts it, and how far they are apart. */
export function response(chart: ResponseChart, setting: Setting): Picture {
  const { blocks } = chart;
  const apart = blocks.map((block) => block.heartRate - block.predicted);
  const description = `Heart rate as measured (dots) and as power predicts it (line), and below it the difference of the two, against time; ${blocks.length} blocks.`;
  return {
    title: 'Heart rate, predicted and measured',
    description,
    table: {
      head: ['time', 'mean power', 'heart rate', 'predicted'],
      rows: blocks.map((block) => [
        position(block.at),
        quantity(block.watts, 'W'),
        quantity(block.heartRate, 'bpm'),
        quantity(block.predicted, 'bpm'),
      ]),
    },
    strip: {
      label: 'heart rate, measured minus predicted',
      values: apart,
      say: (value) => quantity(value, 'bpm'),
    },
    draw: (width) => {
      const times = blocks.map((block) => block.at);
      const domain = setting.view?.within ?? [Math.min(0, ...times), Math.max(1, ...times)];
      const sides = [gutter.left, width - gutter.right] as const;
      const rates = extent(blocks.flatMap((block) => [block.heartRate, block.predicted])) ?? [0, 1];
      const gaps = extent([0, ...apart]) ?? [0, 1];
      const over = panel(sides, [gutter.title + 6, upper], domain, rates);
      const under = panel(
        sides,
        [upper + gutter.title + 16, upper + gutter.title + 16 + lower],
        domain,
        gaps,
        3,
      );
      return sheet(
        setting.id,
        [width, under.bottom + gutter.axis],
        'Heart rate, predicted and measured',
        description,
        [
          marks(over, setting.marked),
          marks(under, setting.marked),
          axisLeft(over, number),
          clipped(setting, 'over', over, [
            path(
              polyline(blocks.map((block) => [over.x(block.at), over.y(block.predicted)] as const)),
              'b',
              1.75,
            ),
            dots(
              blocks.map((block) => [over.x(block.at), over.y(block.heartRate)] as const),
              2.5,
              'a',
            ),
          ]),
          heading(over, 'bpm', [
            { name: 'measured', role: 'a', mark: 'dot' },
            { name: 'predicted from power', role: 'b' },
          ]),
          axisLeft(under, number),
          rule([under.left, under.y(0)], [under.right, under.y(0)], 'quiet'),
          clipped(setting, 'under', under, [
            path(
              polyline(blocks.map((block, index) => [under.x(block.at), under.y(apart[index]!)] as const)),
              'a',
              1.5,
            ),
          ]),
          heading(under, 'Measured minus predicted, bpm'),
          timeAxis(under, domain),
        ],
      );
    },
  };
}
