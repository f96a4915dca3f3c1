import type { ClimbsChart } from '../../types.ts';
import { position, quantity, range } from '../words/number.ts';
import { axisLeft, box, dots, gutter, heading, marks, panel, rule, sheet, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent } from './reduce.ts';

const height = 210;
/** Seconds of the ride shown before the first climb and after the last. */
const room = 60;
const kg = (value: number) => quantity(value, 'kg');

/** The mass that speed on each steep stretch implies, beside the declared one. */
export function climbs(chart: ClimbsChart, setting: Setting): Picture {
  const { declared, implied, climbs: all } = chart;
  const title = 'The mass that the climbs imply';
  const description = `Each dot is one steep stretch: the body mass with which the power measured there gives the speed ridden there; ${all.length} stretches. The middle of them is ${kg(implied.kg)} (${range([implied.low, implied.high], 'kg')}); ${kg(declared)} is declared.`;
  return {
    title,
    description,
    table: {
      head: ['time', 'mean power', 'mass implied'],
      rows: all.map((one) => [position(one.at), quantity(one.watts, 'W'), kg(one.kg)]),
    },
    strip: { label: 'mass that each climb implies', values: all.map((one) => one.kg), say: kg },
    draw: (width) => {
      const [first, last] = extent(all.map(({ at }) => at)) ?? [0, 0];
      const domain = [Math.max(0, first - room), last + room] as const;
      const reach = extent(
        [declared, implied.low, implied.high],
        all.map((one) => one.kg),
      ) ?? [0, 1];
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        domain,
        reach,
        5,
      );
      return sheet(setting.id, [width, height], title, description, [
        marks(on, setting.marked),
        box([on.left, on.right], [on.y(implied.high), on.y(implied.low)], 'band'),
        axisLeft(on, String),
        rule([on.left, on.y(implied.kg)], [on.right, on.y(implied.kg)], 'a', 2),
        rule([on.left, on.y(declared)], [on.right, on.y(declared)], 'b', 2),
        dots(
          all.map((one) => [on.x(one.at), on.y(one.kg)] as const),
          2.5,
          'a',
        ),
        timeAxis(on, domain),
        heading(on, 'Body mass, kg', [
          { name: 'a climb', role: 'a', mark: 'dot' },
          { name: 'their middle', role: 'a' },
          { name: '95 % interval', role: 'band', mark: 'area' },
          { name: 'declared', role: 'b' },
        ]),
      ]);
    },
  };
}
