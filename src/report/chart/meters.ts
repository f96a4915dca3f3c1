import type { MetersChart } from '../../types.ts';
import { number, quantity } from '../words/number.ts';
import { axisLeft, dot, gutter, heading, label, panel, rule, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent } from './reduce.ts';

const height = 190;
const percent = (value: number) => quantity(value, '%');

/** Three meters or more: where each lies against the mean of the others. */
export function meters(chart: MetersChart, setting: Setting): Picture {
  const title = 'The meters against one another';
  const description = `Each dot is one meter: its power over the race from the mean of the others, in per cent, with the place of each allowed for; ${chart.meters.length} meters. The bar is the scatter of its single blocks, where the data can tell it.`;
  const name = (subject: string) => setting.meter(subject);
  return {
    title,
    description,
    table: {
      head: ['meter', 'mean power', 'difference', 'scatter of single blocks'],
      rows: [
        ...chart.meters.map(({ subject, watts, percent: value, scatter }) => [
          `${name(subject)}, from the mean of the others`,
          quantity(watts, 'W'),
          percent(value),
          scatter === null ? 'cannot be told' : percent(scatter),
        ]),
        ...chart.pairs.map(({ a, b, percent: value }) => [
          `${name(a)} over ${name(b)}`,
          '',
          percent(value),
          '',
        ]),
      ],
    },
    strip: null,
    draw: (width) => {
      const reach = chart.meters.flatMap(({ percent: value, scatter }) => [
        value - (scatter ?? 0),
        value + (scatter ?? 0),
      ]);
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        [-0.5, chart.meters.length - 0.5],
        extent([0, ...reach]) ?? [-1, 1],
        5,
      );
      return sheet(setting.id, [width, height], title, description, [
        axisLeft(on, (value) => `${number(value)} %`),
        rule([on.left, on.y(0)], [on.right, on.y(0)], 'quiet'),
        chart.meters.flatMap(({ subject, percent: value, scatter }, i) => [
          rule([on.x(i), on.y(value - (scatter ?? 0))], [on.x(i), on.y(value + (scatter ?? 0))], 'ink', 2),
          dot([on.x(i), on.y(value)], 4, 'a'),
          label(name(subject), [on.x(i), height - 6], 'ink', 'middle'),
        ]),
        heading(on, 'From the mean of the others', []),
      ]);
    },
  };
}
