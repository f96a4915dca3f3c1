import type { CombChart } from '../../types.ts';
import { counted, number, span } from '../words/number.ts';
import { axisBottom, axisLeft, bars, gutter, heading, panel, path, roundTicks, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { polyline, round } from './reduce.ts';

const height = 220;
/** Pixels a watt needs for its bar to be told from its neighbour's. */
const leastBar = 3;

/** How often each whole watt occurs, with the watts that a factor leaves empty or fills twice. */
export function comb(chart: CombChart, setting: Setting): Picture {
  const { factor, stretch, marked } = chart;
  const which = factor > 1 ? 'never reach' : 'reach twice';
  const description = `How often each whole watt occurs over ${span(stretch)}, in the busiest part of the scale, and what neighbouring watts lead to expect. Whole numbers times ${number(factor)} ${which} the ${counted(marked.length, 'watt')} marked below.`;
  return {
    title: 'How often each whole watt occurs',
    description,
    table: {
      head: ['watts', 'seconds', 'expected', 'marked'],
      rows: busiest(chart, 40).map((at) => [
        number(chart.from + at),
        number(chart.counts[at]!),
        number(Math.round((chart.expected[at] ?? 0) * 10) / 10),
        marked.includes(chart.from + at) ? 'yes' : '',
      ]),
    },
    strip: {
      label: 'seconds at each whole watt',
      values: busiest(chart, 60).map((at) => chart.counts[at]!),
      say: number,
    },
    draw: (width) => {
      const sides = [gutter.left, width - gutter.right] as const;
      const shown = busiest(chart, Math.floor((sides[1] - sides[0]) / leastBar));
      const first = chart.from + (shown[0] ?? 0);
      const last = first + Math.max(1, shown.length);
      const highest = Math.max(1, ...shown.map((at) => Math.max(chart.counts[at]!, chart.expected[at] ?? 0)));
      const on = panel(sides, [gutter.title + 6, height - gutter.axis - 8], [first, last], [0, highest]);
      const among = new Set(marked);
      return sheet(setting.id, [width, height], 'How often each whole watt occurs', description, [
        axisLeft(on, number),
        bars(
          shown.map((at) => {
            const left = on.x(chart.from + at);
            return [left + 0.4, on.x(chart.from + at + 1) - 0.4, on.y(chart.counts[at]!)] as const;
          }),
          on.bottom,
          'a',
        ),
        path(
          shown
            .filter((at) => among.has(chart.from + at))
            .map((at) => `M${round(on.x(chart.from + at + 0.5))} ${on.bottom + 2}v5`)
            .join(''),
          'b',
          2,
        ),
        path(
          polyline(shown.map((at) => [on.x(chart.from + at + 0.5), on.y(chart.expected[at] ?? 0)] as const)),
          'ink',
          1.25,
        ),
        axisBottom(
          { ...on, bottom: on.bottom + 8 },
          roundTicks([first, last], width),
          (watts) => `${number(watts)} W`,
        ),
        heading(on, 'Seconds', [
          { name: 'counted', role: 'a', mark: 'area' },
          { name: 'expected', role: 'ink' },
          { name: factor > 1 ? 'never reached' : 'reached twice', role: 'b', mark: 'area' },
        ]),
      ]);
    },
  };
}

/** Indices of the `most` neighbouring watts that hold the most seconds. */
function busiest({ counts }: CombChart, most: number): readonly number[] {
  const size = Math.min(most, counts.length);
  let sum = 0;
  let best = -1;
  let start = 0;
  for (let at = 0; at < counts.length; at++) {
    sum += counts[at]! - (at >= size ? counts[at - size]! : 0);
    if (at >= size - 1 && sum > best) {
      best = sum;
      start = at - size + 1;
    }
  }
  return Array.from({ length: size }, (_, offset) => start + offset);
}
