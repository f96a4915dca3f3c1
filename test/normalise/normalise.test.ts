import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalise } from '../../src/normalise/index.ts';
import { type Recording, SecondState } from '../../src/types.ts';
import { recordingOf as recorded } from '../measure/series.ts';

/** A recording of power alone; NaN: invalid. */
const recordingOf = (time: readonly number[], power: readonly number[], more: Partial<Recording> = {}) =>
  recorded({ power }, { time: Float64Array.from(time), ...more });

const laid = (recording: Recording) => normalise(recording, 'primary');
const watts = (recording: Recording) => Array.from(laid(recording).series.channels.power!);
const stepIds = (recording: Recording) => laid(recording).steps.map(({ id }) => id);
const seconds = (n: number, from = 1000) => Array.from({ length: n }, (_, i) => from + i);

describe('normalise', () => {
  it('leaves a clean recording as it is, and logs only that it was read', () => {
    const recording = recordingOf(seconds(5), [1, 2, 3, 4, 5]);
    expect(watts(recording)).toEqual([1, 2, 3, 4, 5]);
    expect(stepIds(recording)).toEqual(['read']);
  });

  it('marks a missing second, and fills it with nothing', () => {
    const time = seconds(20).filter((t) => t !== 1012);
    const { series, steps } = laid(recordingOf(time, time));
    expect(series.channels.power![12]).toBeNaN();
    expect(series.channels.power![13]).toBe(1013);
    expect(series.state[12]).toBe(SecondState.missing);
    expect(steps.at(-1)).toMatchObject({ id: 'gaps', values: { missing: { value: 1 } } });
  });

  it('moves a doubled second into the empty second beside it, later or earlier', () => {
    expect(watts(recordingOf([10, 11, 11, 13], [1, 2, 3, 4]))).toEqual([1, 2, 3, 4]);
    expect(watts(recordingOf([10, 12, 12, 13], [1, 2, 3, 4]))).toEqual([1, 2, 3, 4]);
  });

  it('averages a doubled second where there is no room', () => {
    const recording = recordingOf([10, 11, 11, 12], [1, 2, 4, 5]);
    expect(watts(recording)).toEqual([1, 3, 5]);
    expect(stepIds(recording)).toContain('doubled-seconds');
  });

  it('puts records back in order of time and counts the backward steps', () => {
    const { series, steps } = laid(recordingOf([10, 12, 11, 13], [1, 3, 2, 4]));
    expect(Array.from(series.channels.power!)).toEqual([1, 2, 3, 4]);
    expect(steps).toContainEqual({
      subject: 'primary',
      id: 'backward-steps',
      values: { count: { value: 1, unit: 'count' } },
    });
  });

  it('does not allocate a century for a record in 2085', () => {
    const { series, steps } = laid(recordingOf([...seconds(20), 3_650_000_000], new Array(21).fill(200)));
    expect(series.length).toBe(20);
    expect(steps.map(({ id }) => id)).toContain('far-records-dropped');
  });

  it('carries values over between the records of an irregular recorder, and says so', () => {
    const recording = recordingOf([0, 4, 7, 8, 12], [1, 2, 3, 4, 5]);
    expect(watts(recording)).toEqual([1, 1, 1, 1, 2, 2, 2, 3, 4, 4, 4, 4, 5]);
    expect(stepIds(recording)).toEqual(['read', 'bridged']);
  });

  /** How the first second of a gap of so many seconds is told, after a record at this speed. */
  const gapAt = (seconds: number, speed: number, more: readonly number[] = []) => {
    const time = [...Array.from({ length: 20 }, (_, t) => t), 20 + seconds, ...more];
    const channels = {
      power: new Float64Array(time.length).fill(200),
      speed: new Float64Array(time.length).fill(speed),
    };
    return laid(recordingOf(time, [], { channels })).series.state[20];
  };

  it('takes gaps of up to 14 s for the rhythm of a recorder that leaves seconds out in one of ten', () => {
    const rhythm = Array.from({ length: 30 }, (_, k) => 100 + 3 * k);
    expect(gapAt(14, 8, rhythm)).toBe(SecondState.bridged);
    expect(gapAt(15, 8, rhythm)).toBe(SecondState.missing);
    // Twenty records without a gap and two steps that leave seconds out, one more than a tenth of all steps.
    expect(gapAt(10, 8)).toBe(SecondState.missing);
    expect(gapAt(10, 8, [35])).toBe(SecondState.missing);
    expect(gapAt(10, 8, [35, 40])).toBe(SecondState.bridged);
  });

  it('takes 5 s that begin slower than 1.5 m/s for a pause, and nothing shorter or faster', () => {
    expect(gapAt(5, 1.4)).toBe(SecondState.paused);
    expect(gapAt(4, 1.4)).toBe(SecondState.missing);
    expect(gapAt(5, 1.6)).toBe(SecondState.missing);
  });

  it('takes a record without power and cadence for a standstill where speed is unknown', () => {
    const stopped = (power: number, cadence: number) => {
      const time = [...seconds(20), 1100];
      const channels = {
        power: new Float64Array(21).fill(power),
        cadence: new Float64Array(21).fill(cadence),
      };
      return laid(recordingOf(time, [], { channels })).series.state[50];
    };
    expect(stopped(0, 0)).toBe(SecondState.paused);
    expect(stopped(0, Number.NaN)).toBe(SecondState.paused);
    expect(stopped(0, 70)).toBe(SecondState.missing);
    expect(stopped(150, 0)).toBe(SecondState.missing);
  });

  it('tells a stated pause, and one that began at a standstill, from a dropout', () => {
    const time = [...seconds(20), ...seconds(20, 1100), ...seconds(20, 1200), ...seconds(20, 1300)];
    const speed = time.map((t) => (t === 1119 ? 0.4 : 8));
    const recording = recordingOf(time, new Array(80).fill(200), {
      pauses: [[1020, 1100]],
      channels: { power: new Float64Array(80).fill(200), speed: Float64Array.from(speed) },
    });
    const { state } = laid(recording).series;
    expect(state[50]).toBe(SecondState.paused);
    expect(state[150]).toBe(SecondState.paused);
    expect(state[250]).toBe(SecondState.missing);
  });

  it('calls a gap a pause where stated pauses cover its greater part, overlapping ones counted each', () => {
    const stated = fc.array(fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: -5, max: 60 })), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(
        stated,
        fc.uniqueArray(fc.integer({ min: 1, max: 399 }), { minLength: 200, maxLength: 360 }),
        (given, left) => {
          const pauses = given.map(([from, length]) => [1000 + from, 1000 + from + length] as const);
          const time = [0, ...left.sort((a, b) => a - b), 400].map((t) => 1000 + t);
          const { state, start } = laid(recordingOf(time, time, { pauses })).series;
          for (let i = 1; i < time.length; i++) {
            const [from, to] = [time[i - 1]! + 1, time[i]!];
            if (to <= from) continue;
            const covered = pauses.reduce(
              (sum, [a, b]) => sum + Math.max(0, Math.min(b, to) - Math.max(a, from)),
              0,
            );
            expect(state[from - start] === SecondState.paused).toBe(covered * 2 > to - from);
          }
        },
      ),
    );
  });

  it('refuses a recording in which no record has a time', () => {
    expect(() => laid(recordingOf([Number.NaN], [1]))).toThrow(/no record/);
  });

  it('neither invents nor loses work, whatever the clock did within a minute', () => {
    const jitter = fc.array(
      fc.record({ step: fc.integer({ min: -2, max: 3 }), power: fc.integer({ min: 0, max: 900 }) }),
      {
        minLength: 2,
        maxLength: 60,
      },
    );
    fc.assert(
      fc.property(jitter, (records) => {
        let clock = 500;
        const time = records.map(({ step }) => {
          clock += step;
          return clock;
        });
        const power = records.map((record) => record.power);
        const before = JSON.stringify([time, power]);
        const { series } = laid(recordingOf(time, power));
        expect(JSON.stringify([time, power])).toBe(before);
        expect(series.length).toBe(series.state.length);
        const valid = Array.from(series.channels.power!).filter((value) => !Number.isNaN(value));
        expect(valid.length).toBeGreaterThan(0);
        expect(Math.max(...valid)).toBeLessThanOrEqual(Math.max(...power));
        expect(Math.min(...valid)).toBeGreaterThanOrEqual(Math.min(...power));
      }),
    );
  });
});
