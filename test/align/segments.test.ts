import { describe, expect, it } from 'vitest';
import { gainWithin } from '../../src/align/lags.ts';
import { borneOut, type Evidence, segments } from '../../src/align/segments.ts';
import { Random } from '../make/random.ts';

/** Residuals of two meters that share most of their detail; null where the second's clock stands still. */
function residuals(seed: string, length: number, lagAt: (t: number) => number | null) {
  const random = new Random(seed);
  const primary = Float64Array.from({ length }, () => random.normal());
  const second = Float64Array.from({ length }, () => random.normal());
  for (let t = 0; t < length; t++) {
    const lag = lagAt(t);
    const at = t - (lag ?? 0);
    if (lag !== null && at >= 0) second[at] = 0.8 * primary[t]! + 0.6 * random.normal();
  }
  return { primary, second };
}

const stoppedAt1800 = (t: number) => (t < 1800 ? 10 : t < 1850 ? null : 60);

const lagsOf = (found: ReturnType<typeof segments>) => found.map(({ lag }) => lag);
function evidenceOf(primary: Float64Array, second: Float64Array, surrogateGain: number): Evidence {
  const writtenGain: Evidence['writtenGain'] = ([from, to], lag) =>
    gainWithin(primary, second, from, to, lag);
  return { surrogateGain, writtenGain, belongs: () => true, bearsOut: () => true };
}
/** What unrelated rides reach by chance. */
const chance = 8;

describe('the lags of stretches', () => {
  it('follow a clock that stands still', () => {
    const { primary, second } = residuals('jump', 3600, stoppedAt1800);
    const found = segments(primary, second, [10, 60], evidenceOf(primary, second, chance));
    expect(lagsOf(found)).toEqual([10, 60]);
    expect(Math.abs(found[0]!.stretch[1] - 1800)).toBeLessThan(10);
  });

  it('let go of minutes at an end that nothing bears out', () => {
    const { primary, second } = residuals('ends', 3600, (t) => (t < 1000 ? null : 60));
    const evidence = evidenceOf(primary, second, chance);
    const segment = { stretch: [0, 3600], lag: 60 } as const;
    expect(borneOut(segment, 3600, evidence)).toEqual([segment]);
    // Windows of four minutes from the second's first second on.
    expect(borneOut(segment, 3600, { ...evidence, bearsOut: () => false })).toEqual([
      { stretch: [60 + 4 * 240, 3600], lag: 60 },
    ]);
  });

  it('jump only for what both recorders wrote', () => {
    const { primary, second } = residuals('jump', 3600, stoppedAt1800);
    const evidence = evidenceOf(primary, second, chance);
    const carriedOn: Evidence['writtenGain'] = (stretch, lag) =>
      lag === 60 ? 15 : evidence.writtenGain(stretch, lag);
    // A lag of its own must be worth 7 and the logarithm of 3,600 lags tried: 15.19.
    expect(lagsOf(segments(primary, second, [10, 60], { ...evidence, writtenGain: carriedOn }))).toEqual([
      10,
    ]);
  });

  // Far from where the clock stops, or just before: the lag that follows claims nothing there.
  it.each([900, 1710])('do not jump to and fro for a few spikes that happen to meet at %d s', (at) => {
    const { primary, second } = residuals('spikes', 3600, stoppedAt1800);
    // A dropout: the detail of both is there, four times as large, where another stretch's lag would have it.
    for (let t = at; t < at + 6; t++) {
      primary[t] = t % 2 === 0 ? 4 : -4;
      second[t - 60] = primary[t]!;
      second[t - 10] = -primary[t]!;
    }
    expect(lagsOf(segments(primary, second, [10, 60], evidenceOf(primary, second, chance)))).toEqual([
      10, 60,
    ]);
  });

  it('do not jump for a stretch that some lag of all those tried would fit as well by chance', () => {
    const length = 1200;
    const random = new Random('c');
    const primary = Float64Array.from({ length }, () => random.normal());
    const second = Float64Array.from({ length }, () => random.normal());
    const shares = (t: number, share: number) =>
      share * primary[t]! + Math.sqrt(1 - share ** 2) * random.normal();
    // The second began after four minutes: what the primary holds before, it can put anywhere.
    for (let t = 300; t < length; t++) second[t - 230] = shares(t, 0.2);
    for (let t = 0; t < 290; t++) second[t + 40] = shares(t, 0.35);
    expect(Math.round(gainWithin(primary, second, 0, 290, -40))).toBe(13);
    expect(segments(primary, second, [230, -40], evidenceOf(primary, second, 4.3))).toEqual([
      { stretch: [0, length], lag: 230 },
    ]);
  });

  it('do not jump for a set of efforts that is no more like another than chance makes them', () => {
    const { primary, second } = residuals('efforts', 3600, (t) => (t < 1200 || t >= 2220 ? 10 : null));
    const random = new Random('like');
    for (let t = 1200; t < 1500; t++) {
      second[t + 710] = 0.6 * primary[t]! + 0.8 * random.normal();
    }
    const found = (surrogateGain: number) =>
      lagsOf(segments(primary, second, [10, -710], evidenceOf(primary, second, surrogateGain)));
    expect(found(chance)).toContain(-710);
    expect(found(60)).toEqual([10]);
  });
});
