import type { CopiesChart } from '../../types.ts';
import type { Markup } from '../markup.ts';
import { number, position, quantity } from '../words/number.ts';
import { axisLeft, gutter, heading, panel, path, sheet, tiles, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, tracePath } from './reduce.ts';

const tileHeight = 150;
const leastTile = 300;

/** Stretches of samples that occur twice, side by side on one scale. */
export function copies(chart: CopiesChart, setting: Setting): Picture {
  const { copies: all } = chart;
  const description = `Power of stretches that occur twice, side by side: ${all.map(({ at, seconds }) => `${quantity(seconds, 's')} at ${position(at[0])} and again at ${position(at[1])}`).join('; ')}.`;
  return {
    title: 'The same samples twice',
    description,
    table: {
      head: ['first at', 'again at', 'lasts'],
      rows: all.map(({ at, seconds }) => [position(at[0]), position(at[1]), quantity(seconds, 's')]),
    },
    strip:
      all.length === 0
        ? null
        : {
            label: `power from ${position(all[0]!.at[0])}`,
            values: all[0]!.first,
            say: (value) => `${number(Math.round(value))} W`,
          },
    draw: (width) => {
      const halves = all.flatMap(({ at, first, second }) => [
        { from: at[0], power: first, of: [first, second], role: 'a' as const },
        { from: at[1], power: second, of: [first, second], role: 'b' as const },
      ]);
      const grid = tiles(2, width, leastTile, tileHeight);
      const drawn = halves.flatMap(({ from, power, of, role }, index): readonly (Markup | null)[] => {
        const place = grid.place(index % 2);
        const left = place.left;
        const top = Math.floor(index / 2) * grid.height + place.top;
        const reach = extent(...of) ?? [0, 1];
        const domain = [from, from + Math.max(1, power.length - 1)] as const;
        const on = panel(
          [left + gutter.left, place.right - gutter.right - 6],
          [top + gutter.title + 6, top + tileHeight - gutter.axis - 8],
          domain,
          [Math.min(0, reach[0]), reach[1]],
          3,
        );
        return [
          ...axisLeft(on, number),
          path(
            tracePath(power, (second) => on.x(from + second), on.y),
            role,
            1.5,
          ),
          ...timeAxis(on, domain),
          ...heading(on, index % 2 === 0 ? 'First, W' : 'Again, W'),
        ];
      });
      return sheet(
        setting.id,
        [width, grid.height * all.length],
        'The same samples twice',
        description,
        drawn,
      );
    },
  };
}
