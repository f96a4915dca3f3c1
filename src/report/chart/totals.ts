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
      head: ['total', 'the file states', 'its samples give', 'worked out over'],
      rows: rows.flatMap(({ total, unit, stated, fromSamples }) =>
        fromSamples.map(({ definition, value }) => [
          foreignText(total),
          quantity(stated, unit),
          quantity(value, unit),
          foreignText(definition),
        ]),
      ),
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
          rows.map((row, index) => {
            const y = top + index * rowHeight + 22;
            return [
              label(
                `${foreignText(row.total)}: ${quantity(row.stated, row.unit)} stated`,
                [left, y - 9],
                'ink',
              ),
              rule([on.left, y + 1], [on.right, y + 1], 'rule'),
              // No line through all rows: it would cross their names.
              rule([on.x(0), y - 5], [on.x(0), y + 7], 'ink'),
              ...apart[index]!.map((percent) => dot([on.x(percent), y + 1], 4, 'b')),
            ];
          }),
          axisBottom(on, ticksAround(all), (value) => (value === 0 ? 'as stated' : quantity(value, '%'))),
          heading(on, 'Samples against the total stated', [
            { name: 'one definition', role: 'b', mark: 'dot' },
          ]),
        ],
      );
    },
  };
}

/** What is stated, and the furthest on either side of it. */
function ticksAround(values: readonly number[]): readonly number[] {
  const ends = [Math.min(...values), Math.max(...values)];
  return [...new Set([...ends.filter((end) => Math.abs(end) > 1), 0])].sort((a, b) => a - b);
}
