import type { AveragingChart } from '../../types.ts';
import { counted, figure, number, position, quantity } from '../words/number.ts';
import { axisBottom, axisLeft, box, gutter, heading, panel, path, rule, sheet, timeAxis } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, tracePath } from './reduce.ts';

const upper = 130;
const lower = 110;

/**
 * The mark that averaging leaves, and a typical minute: of a plain mean how far a change is undone some seconds
 * later, of any other how much less short means scatter than long ones.
 */
export function averaging(chart: AveragingChart, setting: Setting): Picture {
  const { correlation, scatter, seconds, power, from } = chart;
  const plain = correlation.length > 0;
  const mark = plain
    ? `How far a change of power is undone a given number of seconds later; a dip marks averaging over that many seconds, here ${quantity(seconds, 's')}.`
    : 'How far neighbouring means over a given number of seconds lie apart. As it comes from a meter, power scatters about alike over each; averaging takes the short scatter away.';
  const description = `${mark} Below it a typical minute as recorded, from ${position(from)}.`;
  return {
    title: 'The mark of averaging',
    description,
    table: plain
      ? {
          head: ['seconds later', 'agreement of changes'],
          rows: correlation.map((value, index) => [number(index + 1), figure(value, 'r')]),
        }
      : {
          head: ['means over', 'neighbours apart'],
          rows: scatter.map(({ span, watts }) => [quantity(span, 's'), quantity(watts, 'W')]),
        },
    strip: {
      label: `power from ${position(from)}`,
      values: power,
      say: (value) => `${number(Math.round(value))} W`,
    },
    draw: (width) => {
      const sides = [gutter.left, width - gutter.right] as const;
      const top = upper + gutter.axis + gutter.title + 10;
      const domain = [from, from + Math.max(1, power.length - 1)] as const;
      const under = panel(sides, [top, top + lower], domain, [0, extent(power)?.[1] ?? 1], 3);
      return sheet(setting.id, [width, under.bottom + gutter.axis], 'The mark of averaging', description, [
        plain ? undoing(sides, correlation, seconds) : scattering(sides, scatter),
        axisLeft(under, number),
        path(
          tracePath(power, (second) => under.x(from + second), under.y),
          'a',
          1.5,
        ),
        timeAxis(under, domain),
        heading(under, 'A typical minute as recorded, W'),
      ]);
    },
  };
}

/** Bars up and down from none. */
function undoing(sides: readonly [number, number], correlation: readonly number[], seconds: number) {
  const reach = extent([0, ...correlation]) ?? [0, 1];
  const over = panel(sides, [gutter.title + 6, upper], [0.5, correlation.length + 0.5], reach);
  return [
    axisLeft(over, (value) => figure(value, 'r').replace(/0+$/, '').replace(/\.$/, '')),
    correlation.map((value, index) => {
      const ends = [over.y(0), over.y(value)].sort((a, b) => a - b) as [number, number];
      return box(
        [over.x(index + 0.7), over.x(index + 1.3)],
        ends,
        index + 1 === Math.round(seconds) ? 'b' : 'a',
      );
    }),
    rule([over.left, over.y(0)], [over.right, over.y(0)], 'quiet'),
    axisBottom(over, fives(correlation.length, Math.round(seconds)), (value) => `${number(value)} s`),
    heading(over, 'Agreement of changes that many seconds apart', [
      { name: counted(Math.round(seconds), 'second'), role: 'b', mark: 'area' },
    ]),
  ];
}

/** Every fifth second, and the one that matters. */
function fives(most: number, one: number): number[] {
  const round = Array.from({ length: Math.floor(most / 5) }, (_, k) => 5 * (k + 1));
  return [...round.filter((tick) => Math.abs(tick - one) > 2), one].sort((a, b) => a - b);
}

/** A bar for each span, and the height of the longest across all. */
function scattering(sides: readonly [number, number], scatter: AveragingChart['scatter']) {
  const most = Math.max(...scatter.map(({ watts }) => watts), 1);
  const over = panel(sides, [gutter.title + 6, upper], [0.5, scatter.length + 0.5], [0, most]);
  const level = over.y(scatter[scatter.length - 1]?.watts ?? 0);
  return [
    axisLeft(over, number),
    scatter.map(({ watts }, index) =>
      box([over.x(index + 0.7), over.x(index + 1.3)], [over.y(watts), over.y(0)], 'a'),
    ),
    rule([over.left, level], [over.right, level], 'b'),
    axisBottom(
      over,
      scatter.map((_, index) => index + 1),
      (place) => `means over ${quantity(scatter[place - 1]!.span, 's')}`,
    ),
    heading(over, 'Neighbouring means lie apart, W', [
      { name: 'measured', role: 'a', mark: 'area' },
      { name: 'about, without averaging', role: 'b' },
    ]),
  ];
}
