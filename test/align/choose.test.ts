import { describe, expect, it } from 'vitest';
import { type Answers, choose } from '../../src/align/choose.ts';

/** A second whose power agrees at these lags, an hour long; one clock, unless said otherwise. */
const chosen = (answers: Answers['answers'], more: Partial<Answers> = {}) =>
  choose({
    answers,
    surrogateGain: 10,
    clockLag: 1000,
    length: 3600,
    segmentsAmong: ([lag]) => (lag === undefined ? [] : [{ stretch: [0, 3600], lag }]),
    gainWithin: () => 0,
    agreement: () => null,
    ...more,
  });
const at = (lag: number, gain: number) => ({ lag, gain });

describe('the lag chosen', () => {
  it('is that of power where it beats chance half as much again, and every other answer by the margin', () => {
    expect(chosen([at(5, 100), at(60, 93)])).toMatchObject({ lag: 5, secure: true, reason: 'power-agrees' });
    expect(chosen([at(5, 100), at(60, 93.1)])).toMatchObject({ secure: false, reason: 'several-lags-fit' });
    expect(chosen([at(5, 15.1)])).toMatchObject({ secure: true, reason: 'power-agrees' });
    expect(chosen([at(5, 15)])).toMatchObject({ secure: false, reason: 'nothing-fits' });
    expect(chosen([at(5, 6.9)], { surrogateGain: 1 })).toMatchObject({
      secure: false,
      reason: 'nothing-fits',
    });
  });

  it('is that of the clocks where nothing fits at all', () => {
    expect(chosen([])).toMatchObject({ lag: 1000, secure: false, reason: 'nothing-fits', margin: 0 });
  });

  it('among equals is the only one within twelve seconds of the clocks', () => {
    const equals = [at(5, 100), at(60, 98)];
    expect(chosen(equals, { clockLag: 72 })).toMatchObject({ lag: 60, secure: true, reason: 'clock-chose' });
    expect(chosen(equals, { clockLag: 73 }).secure).toBe(false);
    // Both are near, or one is near that power speaks against.
    expect(chosen([at(55, 100), at(60, 98)], { clockLag: 58 }).secure).toBe(false);
    expect(chosen([at(5, 100), at(60, 94), at(200, 92)], { clockLag: 200 }).secure).toBe(false);
  });

  it('among equals is else that of cadence or heart rate, where these beat the margin', () => {
    const equals = [at(5, 100), at(60, 98)];
    const agreement = (correlation: number) => (lag: number) =>
      lag === 60 ? { correlation, seconds: 3600 } : { correlation: 0, seconds: 3600 };
    expect(chosen(equals, { agreement: agreement(0.5) })).toMatchObject({
      lag: 60,
      secure: true,
      reason: 'channel-chose',
    });
    // 180 samples of twenty seconds: a correlation of 0.25 is worth 5.8, one of 0.3 8.5.
    expect(chosen(equals, { agreement: agreement(0.25) }).secure).toBe(false);
    expect(chosen(equals, { agreement: agreement(0.3) }).secure).toBe(true);
  });

  it('is none where what a clock chose does not hold in the stretches, or the best answer does not', () => {
    const elsewhere = () => [{ stretch: [0, 3600], lag: 1756 } as const];
    expect(chosen([at(1003, 100), at(60, 99)], { segmentsAmong: elsewhere })).toMatchObject({
      secure: false,
    });
    expect(chosen([at(60, 100)], { segmentsAmong: elsewhere })).toMatchObject({ secure: false });
  });

  it('of a clock that jumps holds for the stretches that stand on their own, if they are half of all', () => {
    const segments = [
      { stretch: [0, 2000], lag: 5 },
      { stretch: [2000, 3600], lag: 90 },
    ] as const;
    const told = (second: number) =>
      chosen([at(5, 100), at(90, 95)], {
        segmentsAmong: () => segments,
        gainWithin: ([from], lag) => (lag === (from === 0 ? 5 : 90) ? (from === 0 ? 40 : second) : 0),
      });
    expect(told(30)).toMatchObject({ lag: 5, secure: true, segments: { length: 2 }, margin: 30 });
    expect(told(6)).toMatchObject({ lag: 5, secure: true, segments: [segments[0]], margin: 40 });
  });
});
