import type { CloseUpsChart } from '../../types.ts';
import type { Markup } from '../markup.ts';
import { number, position, span } from '../words/number.ts';
import { axisLeft, gutter, heading, marks, panel, path, sheet, tiles, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, tracePath } from './reduce.ts';

const tileHeight = 190;
const leastTile = 300;
const powerHeight = 90;
const cadenceHeight = 34;

/** Single stretches from close by: power, and cadence beneath it, with the seconds meant marked. */
export function closeUps(chart: CloseUpsChart, setting: Setting): Picture {
  const { closeUps: all } = chart;
  const description = `Power second by second, with cadence beneath where it was recorded, around ${all.map((one) => span(one.marked)).join(', ')}; the seconds meant are marked.`;
  return {
    title: 'The seconds meant, from close by',
    description,
    table: {
      head: ['marked', 'power: lowest to highest', 'cadence: lowest to highest'],
      rows: all.map(({ from, power, cadence, marked }) => {
        const within = (values: typeof power | null) => {
          const shown = extent((values ?? []).slice(Math.max(0, marked[0] - from), marked[1] - from));
          return shown === null ? '–' : `${number(shown[0])} to ${number(shown[1])}`;
        };
        return [span(marked), `${within(power)} W`, `${within(cadence)} rpm`];
      }),
    },
    strip:
      all.length === 0
        ? null
        : {
            label: `power around ${position(all[0]!.from)}`,
            values: all[0]!.power,
            say: (value) => `${number(Math.round(value))} W`,
          },
    draw: (width) => {
      const grid = tiles(all.length, width, leastTile, tileHeight);
      const drawn = all.flatMap(({ from, power, cadence, marked }, index): readonly (Markup | null)[] => {
        const { left, right, top } = grid.place(index);
        const sides = [left + gutter.left, right - gutter.right - 6] as const;
        const domain = [from, from + Math.max(1, power.length - 1)] as const;
        const high = extent(power)?.[1] ?? 1;
        const over = panel(
          sides,
          [top + gutter.title + 6, top + gutter.title + powerHeight],
          domain,
          [0, high],
          3,
        );
        const turning = cadence === null ? null : extent(cadence);
        const under =
          turning === null
            ? null
            : panel(
                sides,
                [over.bottom + gutter.title + 4, over.bottom + gutter.title + cadenceHeight],
                domain,
                [0, Math.max(1, turning[1])],
                2,
              );
        return [
          // Even where little else is in sight: the caption says that they are marked.
          ...marks(over, [marked], 1),
          ...axisLeft(over, number),
          path(
            tracePath(power, (second) => over.x(from + second), over.y),
            'a',
            1.5,
          ),
          ...heading(over, 'Power, W'),
          ...(under === null
            ? []
            : [
                ...axisLeft(under, number),
                path(
                  tracePath(cadence!, (second) => under.x(from + second), under.y),
                  'quiet',
                  1.25,
                ),
                ...heading(under, 'Cadence, rpm'),
              ]),
          ...timeAxis(under ?? over, domain),
        ];
      });
      return sheet(setting.id, [width, grid.height], 'The seconds meant, from close by', description, drawn);
    },
  };
}
