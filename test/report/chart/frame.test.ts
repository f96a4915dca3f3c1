import { expect, it } from 'vitest';
import { heading, panel, textWidth } from '../../../src/report/chart/frame.ts';

const keys = ['declared 95 % interval', 'stated by the file', 'as measured', 'by the second meter'].map(
  (name) => ({ name, role: 'a' as const }),
);

/** Every text of a heading with its place. */
function texts(width: number) {
  const drawn = heading(panel([46, width - 10], [40, 200], [0, 1], [0, 1]), 'Primary over second', keys);
  return [...drawn.join('').matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]*)/g)].map(
    ([, x, y, name]) => ({
      right: Number(x) + textWidth(name!),
      y: Number(y),
      name: name!,
    }),
  );
}

it('keeps every name of a key on the drawing, in as many rows as it takes', () => {
  const narrow = texts(328);
  expect(narrow.map(({ name }) => name)).toEqual(['Primary over second', ...keys.map(({ name }) => name)]);
  expect(Math.max(...narrow.map(({ right }) => right))).toBeLessThanOrEqual(328);
  expect(new Set(narrow.map(({ y }) => y)).size).toBeGreaterThan(2);
});

it('stays in one row where there is room', () => {
  expect(new Set(texts(760).map(({ y }) => y)).size).toBe(1);
});
