import type { EffortsChart } from '../../types.ts';
import type { Markup } from '../markup.ts';
import { number, position, quantity } from '../words/number.ts';
import { axisLeft, gutter, heading, panel, path, sheet, tiles, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, tracePath } from './reduce.ts';

const tileHeight = 150;
const leastTile = 230;
const legendHeight = 18;

/** Each sprint on a panel of its own, both meters, all on one scale of watts. */
export function efforts(chart: EffortsChart, setting: Setting): Picture {
  const { efforts: all } = chart;
  const description = `Sprints second by second on both meters, on one scale of watts; ${all.length} are shown. Beyond the steady difference the primary reads above by ${all.map((one) => quantity(one.excess, '%')).join(', ')}.`;
  const second = setting.meter(chart.subject);
  return {
    title: 'Sprints, second by second',
    description,
    table: {
      head: [
        'starts at',
        'lasts',
        'primary, best 5 s',
        `${second}, best 5 s`,
        'beyond the steady difference',
      ],
      rows: all.map((one) => [
        position(one.from),
        quantity(one.seconds, 's'),
        quantity(one.peakPrimary, 'W'),
        quantity(one.peakSecond, 'W'),
        quantity(one.excess, '%'),
      ]),
    },
    strip: {
      label: 'sprints beyond the steady difference',
      values: all.map((one) => one.excess),
      say: (value) => quantity(value, '%'),
    },
    draw: (width) => {
      const grid = tiles(all.length, width, leastTile, tileHeight);
      const reach = extent(...all.flatMap((one) => [one.primary, one.second])) ?? [0, 1];
      const keys = panel([gutter.left, width], [legendHeight, legendHeight + 1], [0, 1], [0, 1]);
      const drawn = all.flatMap((one, index): readonly (Markup | null)[] => {
        const { left, right, top } = grid.place(index);
        const length = Math.max(one.primary.length, one.second.length);
        const domain = [one.from, one.from + length - 1] as const;
        const on = panel(
          [left + gutter.left, right - gutter.right - 8],
          [top + legendHeight + gutter.title + 6, top + legendHeight + tileHeight - gutter.axis - 6],
          domain,
          [Math.min(0, reach[0]), reach[1]],
          3,
        );
        const at = (second: number) => on.x(one.from + second);
        return [
          ...axisLeft(on, number),
          path(tracePath(one.second, at, on.y), 'b', 1.75),
          path(tracePath(one.primary, at, on.y), 'a', 1.75),
          ...timeAxis(on, domain),
          ...heading(on, `${quantity(one.excess, '%')} beyond`),
        ];
      });
      return sheet(
        setting.id,
        [width, legendHeight + grid.height],
        'Sprints, second by second',
        description,
        [
          heading(keys, 'W', [
            { name: setting.meter('primary'), role: 'a' },
            { name: second, role: 'b' },
          ]),
          drawn,
        ],
      );
    },
  };
}
