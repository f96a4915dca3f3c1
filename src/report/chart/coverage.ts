import type { CoverageChart, Stretch } from '../../types.ts';
import { duration, span, spans } from '../words/number.ts';
import { box, gutter, heading, label, panel, sheet, textWidth, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';

const rowHeight = 22;

/** What became of each second around the race: recorded, missing, paused. */
export function coverage(chart: CoverageChart, setting: Setting): Picture {
  const { recording, window, lost, paused } = chart;
  const named: readonly (readonly [string, readonly Stretch[]])[] = [
    ['race', [window]],
    ['recorded', [recording]],
    ['missing', lost],
    ['paused', paused],
  ];
  const description = `Recorded ${span(recording)}, race ${span(window)}; missing: ${lost.length === 0 ? 'nothing' : spans(lost, 6)}; paused: ${paused.length === 0 ? 'never' : spans(paused, 6)}.`;
  return {
    title: 'What was recorded, and what is missing',
    description,
    table: {
      head: ['what', 'from–to', 'lasts'],
      rows: named.flatMap(([what, stretches]) =>
        stretches.map((stretch) => [what, span(stretch), duration(stretch[1] - stretch[0])]),
      ),
    },
    strip: null,
    draw: (width) => {
      const domain = [Math.min(recording[0], window[0]), Math.max(recording[1], window[1])] as const;
      const left = gutter.left + textWidth('recorded');
      const top = gutter.title + 6;
      const on = panel([left, width - gutter.right], [top, top + 3 * rowHeight], domain, [0, 3]);
      const row = (index: number) =>
        [top + index * rowHeight + 4, top + (index + 1) * rowHeight - 4] as const;
      const at = ([from, to]: Stretch) => [on.x(from), Math.max(on.x(to), on.x(from) + 1.5)] as const;
      return sheet(
        setting.id,
        [width, on.bottom + gutter.axis],
        'What was recorded, and what is missing',
        description,
        [
          ['race', 'recorded', 'missing'].map((name, index) =>
            label(name, [left - 8, row(index)[1] - 3], 'ink', 'end'),
          ),
          box(at(window), row(0), 'band'),
          box(at(recording), row(1), 'a'),
          paused.map((stretch) => box(at(stretch), row(2), 'band')),
          lost.map((stretch) => box(at(stretch), row(2), 'b')),
          timeAxis(on, domain),
          heading(on, '', [
            { name: 'missing', role: 'b', mark: 'area' },
            { name: 'paused', role: 'band', mark: 'area' },
          ]),
        ],
      );
    },
  };
}
