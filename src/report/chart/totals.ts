import type { TotalsChart } from '../../types.ts';
import { quantity } from '../words/number.ts';
import { foreignText } from '../words/sentence.ts';
import { axisBottom, dot, gutter, heading, label, panel, rule, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';

const rowHeight = 34;

/** The file's own totals against what its samples give under each usual definition. */
export function totals(chart: TotalsChart, setting: Setting): Picture {
  const { rows } = chart;
  const description = `How far what the samples give under each usual definition lies from the total that the file states, in per cent: ${rows.map((row) => `${foreignText(row.total)} ${quantity(row.off, '%')} off`).join(', ')}.`;
  return {
    title: 'The file’s own totals against its samples',
    description,
    table: {
      head: ['total', 'the file states', 'its samples give', 'nearest is off by'],
      rows: rows.map((row) => [
        foreignText(row.total),
        quantity(row.stated, row.unit),
        row.fromSamples
          .map(({ definition, value }) => `${foreignText(definition)}: ${quantity(value, row.unit)}`)
          .join('; '),
        quantity(row.off, '%'),
      ]),
    },
    strip: null,
    draw: (width) => {
      const apart = rows.map((row) =>
        row.stated === 0 ? [] : row.fromSamples.map(({ value }) => (value / row.stated - 1) * 100),
      );
      const all = [0, ...apart.flat()];
      const top = gutter.title + 6;
      const left = 12;
      const on = panel(
        [left + 10, width - gutter.right - 10],
        [top, top + rows.length * rowHeight],
        [Math.min(-1, ...all), Math.max(1, ...all)],
        [0, 1],
      );
      return sheet(
        setting.id,
        [width, on.bottom + gutter.axis],
        'The file’s own totals against its samples',
        description,
        [
          rule([on.x(0), on.top], [on.x(0), on.bottom], 'ink'),
          rows.map((row, index) => {
            const y = top + index * rowHeight + 22;
            return [
              label(
                `${foreignText(row.total)}: ${quantity(row.stated, row.unit)} stated`,
                [left, y - 9],
                'ink',
              ),
              rule([on.left, y + 1], [on.right, y + 1], 'rule'),
              ...apart[index]!.map((percent) => dot([on.x(percent), y + 1], 4, 'b')),
            ];
          }),
          axisBottom(on, ticksAround(on.x, on.left, on.right, all), (value) => quantity(value, '%')),
          heading(on, 'Samples against the total stated', [
            { name: 'one definition', role: 'b', mark: 'dot' },
          ]),
        ],
      );
    },
  };
}

/** Nought and the two ends. */
function ticksAround(
  x: (value: number) => number,
  left: number,
  right: number,
  values: readonly number[],
): readonly number[] {
  return [Math.min(-1, ...values), 0, Math.max(1, ...values)].filter(
    (tick) => x(tick) >= left && x(tick) <= right,
  );
}
