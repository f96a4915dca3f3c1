import type { Stretch } from '../../types.ts';
import { type Markup, svg } from '../markup.ts';
import { position } from '../words/number.ts';
import { area, line, palette, type Role } from './palette.ts';
import type { Setting } from './picture.ts';
import { dotPath, round } from './reduce.ts';
import { linear, roundedOut, type Scale, ticks } from './scale.ts';

/** Room for the labels of the axes, in pixels. */
export const gutter = { left: 46, right: 10, axis: 22, title: 18 };
/** Widest advance of a character in the labels' type, as a share of its size: enough to keep labels apart. */
const advance = 0.56;
const labelSize = 11;

/** A rectangle with its two scales. */
export interface Panel {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: Scale;
  readonly y: Scale;
  readonly ticksY: readonly number[];
}

/** The whole drawing: named for those who cannot see it. */
export function sheet(
  id: string,
  [width, height]: readonly [number, number],
  title: string,
  description: string,
  body: readonly (Markup | readonly Markup[] | null)[],
): Markup {
  return svg`<svg xmlns="http://www.w3.org/2000/svg" class="chart" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="${id}-t ${id}-d" font-family="system-ui, sans-serif" font-size="${labelSize}" stroke-linejoin="round"><title id="${id}-t">${title}</title><desc id="${id}-d">${description}</desc><rect width="${width}" height="${height}" class="f-paper" fill="${palette.paper[0]}"/>${body}</svg>`;
}

/** A domain of some width, also where the data has none. */
function wide([low, high]: readonly [number, number]): readonly [number, number] {
  return high > low ? [low, high] : [low - 1, low + 1];
}

/** A panel between two heights, over the given domains; the vertical one is rounded out to its ticks. */
export function panel(
  [left, right]: readonly [number, number],
  [top, bottom]: readonly [number, number],
  domainX: readonly [number, number],
  domainY: readonly [number, number],
  count = 4,
): Panel {
  const rounded = roundedOut(wide(domainY), count);
  return {
    left,
    right,
    top,
    bottom,
    x: linear(wide(domainX), [left, right]),
    y: linear(rounded.domain, [bottom, top]),
    ticksY: rounded.ticks,
  };
}

export function textWidth(text: string, size = labelSize): number {
  return [...text].length * size * advance;
}

export function label(
  text: string,
  [x, y]: readonly [number, number],
  role: Role = 'quiet',
  anchor: 'start' | 'middle' | 'end' = 'start',
): Markup {
  const { class: name, light } = area(role);
  return anchor === 'start'
    ? svg`<text x="${round(x)}" y="${round(y)}" class="${name}" fill="${light}">${text}</text>`
    : svg`<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" class="${name}" fill="${light}">${text}</text>`;
}

/** The numbers of an axis: what they have in common is said once. */
function labels(
  all: readonly (readonly [text: string, x: number, y: number])[],
  anchor: 'middle' | 'end',
): Markup | null {
  if (all.length === 0) return null;
  const { class: name, light } = area('quiet');
  return svg`<g text-anchor="${anchor}" class="${name}" fill="${light}">${all.map(
    ([text, x, y]) => svg`<text x="${round(x)}" y="${round(y)}">${text}</text>`,
  )}</g>`;
}

/** A line along a path; null when there is nothing to draw. */
export function path(d: string, role: Role, width: number, dash?: string): Markup | null {
  if (d === '') return null;
  const { class: name, light } = line(role);
  return dash === undefined
    ? svg`<path d="${d}" fill="none" class="${name}" stroke="${light}" stroke-width="${width}"/>`
    : svg`<path d="${d}" fill="none" class="${name}" stroke="${light}" stroke-width="${width}" stroke-dasharray="${dash}"/>`;
}

/** A filled area; null when there is nothing to draw. */
export function shape(d: string, role: Role): Markup | null {
  if (d === '') return null;
  const { class: name, light } = area(role);
  return svg`<path d="${d}" class="${name}" fill="${light}"/>`;
}

export function box(
  [left, right]: readonly [number, number],
  [top, bottom]: readonly [number, number],
  role: Role,
): Markup {
  const { class: name, light } = area(role);
  return svg`<rect x="${round(left)}" y="${round(top)}" width="${round(Math.max(0, right - left))}" height="${round(Math.max(0, bottom - top))}" class="${name}" fill="${light}"/>`;
}

export function rule(
  from: readonly [number, number],
  to: readonly [number, number],
  role: Role,
  width = 1,
): Markup {
  const { class: name, light } = line(role);
  return svg`<line x1="${round(from[0])}" y1="${round(from[1])}" x2="${round(to[0])}" y2="${round(to[1])}" class="${name}" stroke="${light}" stroke-width="${width}"/>`;
}

export function dot([x, y]: readonly [number, number], radius: number, role: Role): Markup {
  const { class: name, light } = area(role);
  return svg`<circle cx="${round(x)}" cy="${round(y)}" r="${radius}" class="${name}" fill="${light}"/>`;
}

/** Many dots in one path: round ends of strokes without length. */
export function dots(
  points: readonly (readonly [x: number, y: number])[],
  radius: number,
  role: Role,
): Markup | null {
  if (points.length === 0) return null;
  const { class: name, light } = line(role);
  return svg`<path d="${dotPath(points)}" class="${name}" stroke="${light}" stroke-width="${2 * radius}" stroke-linecap="round"/>`;
}

/** Many bars that stand on `bottom` in one path: each from, to and top. */
export function bars(
  all: readonly (readonly [left: number, right: number, top: number])[],
  bottom: number,
  role: Role,
): Markup | null {
  const d = all.map(
    ([left, right, top]) => `M${round(left)} ${round(bottom)}V${round(top)}H${round(right)}V${round(bottom)}`,
  );
  return shape(d.join(''), role);
}

/** Round places on an axis of numbers, one to every 70 pixels or so. */
export function roundTicks(domain: readonly [number, number], pixels: number): readonly number[] {
  return ticks(wide(domain), Math.max(2, Math.floor(pixels / 70)));
}

/** Horizontal grid lines with their numbers at the left. */
export function axisLeft(
  { left, right, y, ticksY }: Panel,
  say: (value: number) => string,
): readonly (Markup | null)[] {
  const lines = ticksY.map((tick) => `M${round(left)} ${round(y(tick))}H${round(right)}`);
  return [
    path(lines.join(''), 'rule', 1),
    labels(
      ticksY.map((tick) => [say(tick), left - 6, y(tick) + 4]),
      'end',
    ),
  ];
}

/** Numbers along the bottom: those that fit, from the left. */
export function axisBottom(
  { bottom, x, left, right }: Panel,
  ticks: readonly number[],
  say: (value: number) => string,
): readonly (Markup | null)[] {
  let free = -Infinity;
  const middle: [string, number, number][] = [];
  const last: [string, number, number][] = [];
  for (const tick of ticks) {
    const text = say(tick);
    const half = textWidth(text) / 2;
    const at = Math.min(Math.max(x(tick), left), right);
    if (at - half < free) continue;
    free = at + half + 8;
    // The last label leans inwards, so that it is not cut off by the edge of the drawing.
    if (at + half > right + gutter.right) last.push([text, right + gutter.right, bottom + 16]);
    else middle.push([text, at, bottom + 16]);
  }
  const lines = ticks.map((tick) => `M${round(Math.min(Math.max(x(tick), left), right))} ${round(bottom)}v4`);
  return [path(lines.join(''), 'quiet', 1), labels(middle, 'middle'), labels(last, 'end')];
}

const steps = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 86_400];

/** Round places on an axis of time, at most `most` of them. */
function timeTicks([from, to]: readonly [number, number], most: number): readonly number[] {
  const step = steps.find((one) => (to - from) / one <= most) ?? Math.ceil((to - from) / most);
  const ticks: number[] = [];
  for (let at = Math.ceil(from / step) * step; at <= to; at += step) ticks.push(at);
  return ticks;
}

export function timeAxis(on: Panel, domain: readonly [number, number]): readonly (Markup | null)[] {
  const most = Math.max(2, Math.floor((on.right - on.left) / 70));
  return axisBottom(on, timeTicks(domain, most), position);
}

/** What a panel shows, above its top edge: the title, then a sample of each line with its name, beneath it if need be. */
export function heading(
  { left, right, top }: Panel,
  title: string,
  keys: readonly {
    readonly name: string;
    readonly role: Role;
    readonly mark?: 'line' | 'dashes' | 'area' | 'dot';
  }[] = [],
): readonly Markup[] {
  const beside = left + textWidth(title) + 14;
  const long = keys.reduce((sum, { name }) => sum + keyWidth(name), -keyGap);
  const fits = keys.length === 0 || beside + long <= right;
  const y0 = fits ? top - 7 : top - 4;
  const places = fits ? inRows(keys, beside, Number.POSITIVE_INFINITY) : inRows(keys, left, right);
  return [
    label(title, [left, fits ? y0 : y0 - labelSize], 'ink'),
    ...keys.flatMap(({ name, role, mark = 'line' }, k) => {
      const { at, row } = places[k]!;
      const y = y0 + row * keyRow;
      const sample =
        mark === 'area'
          ? box([at, at + 14], [y - 9, y + 1], role)
          : mark === 'dot'
            ? dot([at + 7, y - 4], 3, role)
            : path(`M${round(at)} ${y - 4}h14`, role, 2, mark === 'dashes' ? '4 3' : undefined);
      return sample === null ? [] : [sample, label(name, [at + 18, y])];
    }),
  ];
}

const keyGap = 12;
/** A sample of the line, its name, and what parts it from the next. */
const keyWidth = (name: string) => 18 + textWidth(name) + keyGap;
/** From one row of the key to the next; the second and further rows lie inside the panel. */
const keyRow = 13;

/** Where each name of the key begins, and in which row: on a telephone they do not fit beside each other. */
function inRows(
  keys: readonly { readonly name: string }[],
  left: number,
  end: number,
): readonly { readonly at: number; readonly row: number }[] {
  let x = left;
  let row = 0;
  return keys.map(({ name }) => {
    if (x > left && x + keyWidth(name) - keyGap > end) {
      x = left;
      row++;
    }
    const at = x;
    x += keyWidth(name);
    return { at, row };
  });
}

/** A mark over more than this share of an axis would single nothing out. */
const widestMark = 0.5;

/** Stretches that a finding argues from, behind the lines; never thinner than the eye sees. */
export function marks(
  { x, left, right, top, bottom }: Panel,
  stretches: readonly Stretch[],
  widest = widestMark,
): readonly Markup[] {
  return stretches.flatMap(([from, to]) => {
    const start = Math.max(left, x(from));
    const end = Math.min(right, Math.max(x(to), start + 1.5));
    if (end <= left || start >= right || end - start > widest * (right - left)) return [];
    return [box([start, end], [top, bottom], 'mark'), box([start, end], [top - 3, top], 'flag')];
  });
}

/** In a part of the ride, what lies outside the panel is cut off. */
export function clipped(
  { id, view }: Setting,
  name: string,
  { left, right, top, bottom }: Panel,
  body: readonly (Markup | null)[],
): Markup {
  if (view === undefined) return svg`${body}`;
  return svg`<clipPath id="${id}-${name}"><rect x="${left}" y="${top}" width="${right - left}" height="${bottom - top}"/></clipPath><g clip-path="url(#${id}-${name})">${body}</g>`;
}

/** Equal tiles in as few rows as fit, the rows as even as can be. */
export function tiles(count: number, width: number, least: number, height: number) {
  const most = Math.max(1, Math.min(count, Math.floor(width / least)));
  const columns = Math.ceil(count / Math.ceil(count / most)) || 1;
  const each = width / columns;
  return {
    height: Math.ceil(count / columns) * height,
    place: (index: number) => ({
      left: (index % columns) * each,
      right: ((index % columns) + 1) * each,
      top: Math.floor(index / columns) * height,
    }),
  };
}
