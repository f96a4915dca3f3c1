import { expect, it } from 'vitest';
import { curve } from '../../../src/report/chart/curve.ts';
import type { CurveChart } from '../../../src/types.ts';

const setting = { id: 'c', marked: [], meter: (subject: string) => subject };

/** A curve that was compared at some durations alone, as the measure compares. */
const compared = (...at: readonly number[]): CurveChart => ({
  kind: 'curve',
  id: 'curve:rider',
  points: [60, 180, 240, 300, 420, 480].map((duration) => ({
    duration,
    race: 500,
    best: 300,
    allowed: at.includes(duration) ? 350 : null,
  })),
});

const bands = (chart: CurveChart) =>
  [
    ...curve(chart, setting)
      .draw(760)
      .toString()
      .matchAll(/<path d="([^"]*Z)" class="f-band"/g),
  ].map(([, d]) => d!);

it('shades what the history allows from the first duration compared to the last, across those that are not', () => {
  const [area, ...others] = bands(compared(180, 300, 480));
  expect(others).toEqual([]);
  const corners = area!.match(/[MLHVlhv]|-?[\d.]+/g)!;
  expect(corners.length).toBeGreaterThan(8);
  const [left, right] = [180, 480].map((duration) => Math.log(duration / 60) / Math.log(8));
  const [from, to] = [46, 750];
  expect(Number(/^M(-?[\d.]+)/.exec(area!)![1])).toBeCloseTo(from + left! * (to - from), -1);
  expect(right).toBe(1);
});

it('shows a single duration compared, and nothing where none was', () => {
  expect(bands(compared(300))).toHaveLength(0);
  expect(curve(compared(300), setting).draw(760).toString()).toContain('width="6"');
  expect(curve(compared(), setting).draw(760).toString()).not.toContain('width="6"');
});

it('condenses to the durations that were compared', () => {
  expect(curve(compared(180, 300), setting).strip!.values).toHaveLength(2);
});
