import type { PlateausChart } from '../../types.ts';
import { duration, number, quantity, span } from '../words/number.ts';
import { axisLeft, gutter, heading, panel, path, sheet, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, round, tracePath } from './reduce.ts';

const height = 200;

/** The levels that power keeps to, drawn over the ride around them. */
export function plateaus(chart: PlateausChart, setting: Setting): Picture {
  const { power, plateaus: levels } = chart;
  const description = `Power through the ride with the ${levels.length} levels that it keeps to drawn as thick lines.`;
  return {
    title: 'The levels that power keeps to',
    description,
    table: {
      head: ['from–to', 'lasts', 'level'],
      rows: levels.map(({ stretch, watts }) => [
        span(stretch),
        duration(stretch[1] - stretch[0]),
        quantity(watts, 'W'),
      ]),
    },
    strip: { label: 'power', values: power, say: (value) => `${number(Math.round(value))} W` },
    draw: (width) => {
      const domain = [0, Math.max(1, power.length)] as const;
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        domain,
        [0, extent(power)?.[1] ?? 1],
      );
      const held = levels.map(
        ({ stretch: [from, to], watts }) =>
          `M${round(on.x(from))} ${round(on.y(watts))}H${round(Math.max(on.x(to), on.x(from) + 2))}`,
      );
      return sheet(setting.id, [width, height], 'The levels that power keeps to', description, [
        axisLeft(on, number),
        path(tracePath(power, on.x, on.y), 'a', 1),
        path(held.join(''), 'b', 4),
        timeAxis(on, domain),
        heading(on, 'W', [
          { name: 'power', role: 'a' },
          { name: 'level kept to', role: 'b' },
        ]),
      ]);
    },
  };
}
