import { expect, test } from 'vitest';
import { misplacedShare } from '../../src/measure/misplaced-share.ts';
import { normalise } from '../../src/normalise/index.ts';
import { measuredOf } from './measure-of.ts';
import { alone, recordingOf, ride, start } from './series.ts';

const power = ride(1000);
const share = (time: readonly number[]) => {
  const recording = recordingOf({ power }, { time: Float64Array.from(time) });
  return measuredOf(misplacedShare, 'clock-fault', alone(normalise(recording, 'primary').series));
};
const even = power.map((_, i) => start + i);

test('an even clock has none; gaps and pauses are no fault of the clock', () => {
  expect(share(even).value).toBe(0);
  expect(share(even.map((t, i) => (i < 500 ? t : t + 300))).value).toBe(0);
});

test('records behind a time already reached', () => {
  const outcome = share(even.map((t, i) => (i < 500 ? t : t - 200)));
  expect(outcome.details).toMatchObject({
    backward: 1,
    behind: 199,
    furthest: { value: 200 - 1, unit: 's' },
  });
  expect(outcome.value).toBe(0.2);
  // Where: the seconds that the clock went back over, with the one that it had reached, which holds two as well.
  expect(outcome.stretches).toEqual([[300, 500]]);
  expect(share(even).stretches).toEqual([]);
});

test('a doubled second that a skipped one makes up for is none; a stuck clock is', () => {
  expect(share(even.map((t, i) => (i % 10 === 0 && i > 0 ? t - 1 : t))).value).toBe(0);
  const stuck = share(even.map((t, i) => (i >= 100 && i < 200 ? start + 100 : t)));
  expect(stuck.details).toMatchObject({ doubled: 98 });
  // Where: the second that still holds them.
  expect(stuck.stretches).toEqual([[100, 101]]);
});

test('seconds that hold two records are shown, not those that had a free neighbour', () => {
  // Record 301 bears the time of 300, and 301 is free; 500 to 502 are written twice, and 503 is free for one.
  const time = even.map((t, i) => (i === 301 ? t - 1 : t));
  time.splice(503, 1, start + 500, start + 501, start + 502);
  const recording = recordingOf({ power: [...power, 200, 200] }, { time: Float64Array.from(time) });
  const outcome = measuredOf(misplacedShare, 'clock-fault', alone(normalise(recording, 'primary').series));
  expect(outcome.details).toMatchObject({ doubled: 2 });
  expect(outcome.stretches).toEqual([[500, 502]]);
});

test('several records a second are no fault where the clock tells them apart', () => {
  expect(share(even.map((_, i) => start + i / 4)).value).toBe(0);
});

test('far and timeless records', () => {
  const time = even.map((t, i) => (i === 999 ? t + 3e9 : i === 998 ? Number.NaN : t));
  expect(share(time).details).toMatchObject({ far: 1, timeless: 1, misplaced: 2 });
});
