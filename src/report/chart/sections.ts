import type { SectionsChart, Subject } from '../../types.ts';
import { number, quantity } from '../words/number.ts';
import { differenceSaid, kindSaid } from '../words/sections.ts';
import { axisBottom, dots, heading, label, panel, path, roundTicks, rule, sheet } from './frame.ts';
import { meterRole } from './palette.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, round } from './reduce.ts';

/** Free on either side of the scale. */
const edge = 12;
/** Above the rows: what is shown, and the meters' names under it where there are several. */
const head = { one: 26, several: 44 };
const foot = 24;
/** A row's name, and the line of each meter: under the name, and beside it where there is room for both. */
const name = { height: 17, width: 130, roomFrom: 560 };
const lineHeight = 12;
/** Between rows whose names stand beside them. */
const rowGap = 10;

/** How far the primary lies from each other meter in every kind of section, so that one sees where they agree. */
export function sections(chart: SectionsChart, setting: Setting): Picture {
  const { rows } = chart;
  const meters = [...new Set(rows.flatMap(({ differences }) => differences.map(({ subject }) => subject)))];
  const against = (subject: Subject) => `primary against ${setting.meter(subject)}`;
  const names = rows.map(({ section, count }) => kindSaid(section, count));
  const title =
    meters.length > 1 ? 'Where the meters agree and where not' : 'Where both meters agree and where not';
  const description =
    'Dots: power of the primary over that of the other, all sections of a kind together. Bars: 95 % intervals, where the sections are long enough.';
  return {
    title,
    description,
    table: {
      head: ['sections', 'mean power', ...meters.map(against)],
      rows: rows.map((row, index) => [
        names[index]!,
        row.watts === null ? '–' : quantity(row.watts, 'W'),
        ...meters.map((subject) => differenceSaid(row, subject)),
      ]),
    },
    strip: null,
    draw: (width) => {
      const top = meters.length > 1 ? head.several : head.one;
      const beside = width >= name.roomFrom;
      const before = beside ? rowGap : name.height;
      const rowHeight = before + meters.length * lineHeight;
      const height = top + rows.length * rowHeight + foot;
      const ends = rows.flatMap(({ differences }) =>
        differences.flatMap(({ percent, low, high }) => [low ?? percent, percent, high ?? percent]),
      );
      const [low, high] = extent([0, ...ends]) ?? [-1, 1];
      const margin = (high - low) * 0.05 || 1;
      const domain = [low - margin, high + margin] as const;
      const on = panel([beside ? name.width : edge, width - edge], [top, height - foot], domain, [0, 1]);
      const ticks = roundTicks(domain, on.right - on.left);
      const grid = ticks.map((tick) => `M${round(on.x(tick))} ${on.top}V${on.bottom}`).join('');
      const role = (subject: Subject) =>
        meters.length === 1 ? 'ink' : meterRole(meters.indexOf(subject) + 1);
      const start = (index: number) => on.top + index * rowHeight;
      const nameAt = (index: number): readonly [number, number] =>
        beside
          ? [0, start(index) + before + (meters.length * lineHeight) / 2]
          : [on.left + 4, start(index) + 11];
      const linesOf = (subject: Subject, line: number) => {
        const found = rows.flatMap(({ differences }, index) =>
          differences
            .filter((one) => one.subject === subject)
            .map((one) => ({ ...one, y: start(index) + before + line * lineHeight + 2 })),
        );
        const bars = found.map(({ low, high, y }) =>
          low === null || high === null ? '' : `M${round(on.x(low))} ${round(y)}H${round(on.x(high))}`,
        );
        const points = found.map(({ percent, y }) => [on.x(percent), y] as const);
        return [path(bars.join(''), role(subject), 2.5), dots(points, 4, role(subject))];
      };
      return sheet(setting.id, [width, height], title, description, [
        path(grid, 'rule', 1),
        rule([on.x(0), on.top], [on.x(0), on.bottom], 'quiet', 1.5),
        names.map((text, index) => label(text, nameAt(index), 'ink')),
        meters.flatMap((subject, line) => linesOf(subject, line)),
        axisBottom(on, ticks, (value) => `${number(value)} %`),
        heading(
          on,
          'Primary over the other, %',
          meters.length === 1
            ? []
            : meters.map((subject) => ({ name: setting.meter(subject), role: role(subject) })),
        ),
      ]);
    },
  };
}
