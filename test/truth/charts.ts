import {
  axisBottom,
  axisLeft,
  dot,
  dots,
  heading,
  label,
  panel,
  path,
  sheet,
  rule as straight,
  textWidth,
  tiles,
} from '../../src/report/chart/frame.ts';
import { meterRole, type Role } from '../../src/report/chart/palette.ts';
import { polyline } from '../../src/report/chart/reduce.ts';
import { ticks } from '../../src/report/chart/scale.ts';
import type { Markup } from '../../src/report/markup.ts';
import type { Share } from './bounds.ts';
import { doseBands, doseCurve, type Trial } from './dose.ts';
import { percent, plainNumber } from './text.ts';

const width = 760;

/** One share with its one-sided bound, and the limit that it is held against. */
export interface SharePoint {
  readonly name: string;
  readonly share: Share;
  /** The side on which the bound counts. */
  readonly bound: 'lower' | 'upper';
  readonly limit?: number;
}

const rowHeight = 17;

/** Shares under one another: a dot each, a line to its bound, a tick at its limit. */
export function shareRows(
  id: string,
  title: string,
  rows: readonly SharePoint[],
  domain: readonly [number, number],
): Markup {
  const left = Math.min(width / 2, 12 + Math.max(...rows.map(({ name }) => textWidth(name))));
  const [top, bottom] = [24, 24 + rows.length * rowHeight];
  const on = panel([left, width - 70], [top, bottom], domain, [0, 1]);
  const x = (share: number) => on.x(Math.min(domain[1], Math.max(domain[0], share)));
  const grid = ticks(domain, 6);
  const body = rows.flatMap(({ name, share, bound, limit }, k) => {
    const y = top + (k + 0.5) * rowHeight;
    const good = limit === undefined || (bound === 'upper' ? share.upper <= limit : share.lower >= limit);
    const role: Role = good ? 'a' : 'b';
    return [
      label(name, [left - 8, y + 4], 'ink', 'end'),
      straight([x(share.share), y], [x(share[bound]), y], role, 2),
      dot([x(share.share), y], 3.5, role),
      ...(limit === undefined ? [] : [straight([x(limit), y - 6], [x(limit), y + 6], 'ink', 2)]),
      label(percent(share.share, domain[1] > 0.2 ? 1 : 2), [width - 62, y + 4]),
    ];
  });
  const said = rows.map(
    ({ name, share, bound }) => `${name}: ${percent(share.share, 2)}, bound ${percent(share[bound], 2)}`,
  );
  return sheet(id, [width, bottom + 24], title, said.join('; '), [
    grid.map((tick) => straight([on.x(tick), top], [on.x(tick), bottom], 'rule')),
    axisBottom(on, grid, (tick) => percent(tick, domain[1] < 0.05 ? 1 : 0)),
    body,
  ]);
}

/** Faults of one rule: each draw's strength as a multiple of the moderate one, and whether it was found. */
export interface DetectionPanel {
  readonly rule: string;
  readonly faults: readonly { readonly name: string; readonly trials: readonly Trial[] }[];
}

const tileHeight = 190;
const bandCount = 12;

/** Share found against strength, a panel a rule: bands of equal counts as dots, the fitted curve as a line. */
export function detectionCurves(id: string, title: string, panels: readonly DetectionPanel[]): Markup {
  const { height, place } = tiles(panels.length, width, 300, tileHeight);
  const body = panels.flatMap(({ rule, faults }, k) => {
    const { left, right, top } = place(k);
    const doses = faults.flatMap(({ trials }) => trials.map(({ dose }) => dose));
    const ends: [number, number] = [Math.log(Math.min(...doses)), Math.log(Math.max(...doses))];
    const bottom = top + tileHeight - 36 - 13 * faults.length;
    const on = panel([left + 40, right - 12], [top + 22, bottom], ends, [0, 100], 2);
    const places = [0.1, 0.25, 0.5, 1, 2, 4, 8].map(Math.log).filter((at) => at >= ends[0] && at <= ends[1]);
    return [
      axisLeft(on, (tick) => `${tick} %`),
      axisBottom(on, places, (at) => plainNumber(Math.exp(at))),
      straight([on.x(0), top + 22], [on.x(0), bottom], 'rule'),
      heading(on, rule),
      ...faults.flatMap(({ name, trials }, one) => {
        const role = meterRole(one);
        const y = bottom + 30 + 13 * one;
        return [
          path(polyline(curveOf(trials, ends).map(([at, share]) => [on.x(at), on.y(share)])), role, 1.75),
          dots(
            doseBands(trials, bandCount).map(({ dose, share }) => [on.x(Math.log(dose)), on.y(100 * share)]),
            2,
            role,
          ),
          path(`M${Math.round(left + 40)} ${y - 4}h12`, role, 2),
          label(shortened(name, right - left - 70), [left + 58, y]),
        ];
      }),
    ].flat();
  });
  const said = panels.map(({ rule }) => rule).join(', ');
  return sheet(id, [width, height], title, `Share found against strength for ${said}.`, body);
}

function curveOf(trials: readonly Trial[], [from, to]: readonly [number, number]): [number, number][] {
  const { a, b } = doseCurve(trials);
  return Array.from({ length: 41 }, (_, k) => {
    const at = from + ((to - from) * k) / 40;
    return [at, 100 / (1 + Math.exp(-(a + b * at)))];
  });
}

function shortened(text: string, room: number): string {
  let short = text;
  while (textWidth(short) > room && short.length > 4) short = `${short.slice(0, -2).trimEnd()}…`;
  return short;
}
