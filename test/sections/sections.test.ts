import { describe, expect, it } from 'vitest';
import { findSections } from '../../src/sections/index.ts';
import type { SectionKind, Stretch } from '../../src/types.ts';
import { seriesOf } from '../measure/series.ts';

type Piece = readonly [watts: number, seconds: number];
const laid = (...pieces: readonly Piece[]) =>
  pieces.flatMap(([watts, seconds]) => new Array<number>(seconds).fill(watts));

/** Stretches of one kind in a ride of one recording, the whole of it the race. */
function found(kind: SectionKind, columns: Parameters<typeof seriesOf>[0]): Stretch[] {
  const primary = seriesOf(columns);
  return findSections({ primary, seconds: [] }, [0, primary.length])
    .filter((section) => section.kind === kind)
    .map(({ stretch }) => stretch);
}

describe('sprints', () => {
  // An effort of so many seconds at three times what the rest of ten minutes is ridden at, on flanks of so many watts.
  const ride = (seconds: number, flank = 200) =>
    found('sprint', { power: laid([200, 300], [flank, 5], [600, seconds], [flank, 5], [200, 290]) });

  it('run from edge to edge: to where power falls under 1.4 times the mean', () => {
    expect(ride(10)).toEqual([[305, 315]]);
    // The mean is a good 207 W: 260 W lie under the edge of 290 W, 310 W above it.
    expect(ride(10, 260)).toEqual([[305, 315]]);
    expect(ride(10, 310)).toEqual([[300, 320]]);
  });

  it('are 4 to 40 s long', () => {
    expect([3, 4, 40, 41].map((seconds) => ride(seconds).length)).toEqual([0, 1, 1, 0]);
  });

  it('reach twice the mean over three seconds', () => {
    const peak = (watts: number) =>
      found('sprint', { power: laid([200, 600], [watts, 10], [200, 600]) }).length;
    expect(peak(395)).toBe(0);
    expect(peak(410)).toBe(1);
  });

  it('hold no gap', () => {
    const power = laid([200, 300], [600, 10], [200, 300]);
    power[305] = Number.NaN;
    expect(found('sprint', { power }).every(([from, to]) => to <= 305 || from > 305)).toBe(true);
  });
});

describe('coasting', () => {
  it('is ten seconds without power or more', () => {
    const ride = (seconds: number) =>
      found('coasting', { power: laid([200, 100], [0, seconds], [200, 100]) });
    expect(ride(9)).toEqual([]);
    expect(ride(10)).toEqual([[100, 110]]);
  });
});

describe('steady', () => {
  const ride = (share: number, minutes: number) =>
    found('steady', {
      power: laid(
        [400, 300],
        ...Array.from({ length: 2 * minutes }, (_, k): Piece => [200 * (1 + (k % 2) * share), 30]),
        [400, 300],
      ),
    }).filter(([from]) => from === 300);

  it('keeps its half-minute means within 8 % of their level', () => {
    expect(ride(0.07, 6)).toEqual([[300, 660]]);
    expect(ride(0.1, 6)).toEqual([]);
  });

  it('lasts three minutes or more', () => {
    expect(ride(0, 2.5)).toEqual([]);
    expect(ride(0, 3)).toEqual([[300, 480]]);
  });
});

describe('over-unders', () => {
  const ride = (levels: number, seconds: number, step: number) =>
    found('over-under', {
      power: laid(
        [120, 300],
        ...Array.from({ length: levels }, (_, k): Piece => [k % 2 === 0 ? 250 : 250 * (1 + step), seconds]),
        [120, 300],
      ),
    });

  it('are five levels in turn or more', () => {
    expect(ride(4, 60, 0.15)).toEqual([]);
    expect(ride(5, 60, 0.15)).toEqual([[300, 600]]);
    expect(ride(8, 60, 0.15)).toEqual([[300, 780]]);
  });

  it('last 20 s to three minutes each, at least 6 % apart', () => {
    expect([15, 20, 180, 190].map((seconds) => ride(6, seconds, 0.15).length)).toEqual([0, 1, 1, 0]);
    expect([0.05, 0.07].map((step) => ride(6, 60, step).length)).toEqual([0, 1]);
  });
});

describe('climbs', () => {
  /** Ten minutes at 6 m/s, of which so many seconds go up at a grade. */
  const ride = (grade: number, seconds: number) => {
    const altitude = [100];
    for (let t = 1; t < 600; t++)
      altitude.push(altitude[t - 1]! + (t > 200 && t <= 200 + seconds ? 6 * grade : 0));
    return { power: laid([200, 600]), speed: laid([6, 600]), altitude };
  };

  it('go up by 3 % or more, over windows of a minute', () => {
    expect(found('climb', ride(0.028, 300))).toEqual([]);
    const [[from, to] = [0, 0]] = found('climb', ride(0.05, 300));
    expect(Math.abs(from - 200)).toBeLessThanOrEqual(30);
    expect(Math.abs(to - 500)).toBeLessThanOrEqual(30);
  });

  it('last three minutes or more', () => {
    expect(found('climb', ride(0.05, 150))).toEqual([]);
    expect(found('climb', ride(0.05, 200))).toHaveLength(1);
  });

  it('are told by distance where it was recorded, and by nothing without altitude', () => {
    const { power, speed, altitude } = ride(0.05, 300);
    const distance = speed.map((_, t) => 6 * t);
    expect(found('climb', { power, altitude, distance })).toEqual(found('climb', { power, altitude, speed }));
    expect(found('climb', { power, speed, distance })).toEqual([]);
    expect(found('climb', { power, altitude })).toEqual([]);
  });
});

describe('thirds', () => {
  it('are the first and the last of the race, whatever was recorded', () => {
    expect(found('first third', { cadence: laid([90, 900]) })).toEqual([[0, 300]]);
    expect(found('last third', { cadence: laid([90, 900]) })).toEqual([[600, 900]]);
  });
});
