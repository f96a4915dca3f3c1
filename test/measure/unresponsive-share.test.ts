import { describe, expect, it } from 'vitest';
import { mean } from '../../src/math/mean.ts';
import { wilson } from '../../src/math/wilson.ts';
import { leastAnswer } from '../../src/measure/rider/heart-windows.ts';
import { unresponsiveShare } from '../../src/measure/unresponsive-share.ts';
import { measuredOf, outcomeOf } from './measure-of.ts';
import { heartRide } from './rider/heart.ts';
import { alone, seriesOf } from './series.ts';

const id = 'heart-rate-unresponsive';
const of = (columns: Parameters<typeof seriesOf>[0]) => alone(seriesOf(columns));
const own = heartRide('own', { driftPerHour: 8 });
const foreign = heartRide('somebody else').heartRate;

/** The ride with the heart rate of somebody else over this share of it. */
function mixed(share: number) {
  const heartRate = own.heartRate.slice();
  heartRate.set(foreign.subarray(0, Math.round(share * foreign.length)));
  return of({ ...own, heartRate });
}

describe('unresponsiveShare', () => {
  it('is nil for a heart that answers, drift and all', () => {
    const got = measuredOf(unresponsiveShare, id, of(own));
    expect(got.value).toBe(0);
    expect(got.interval[0]).toBe(0);
    expect(got.circumstances).toEqual([]);
  });
  it('grows with the share in which the heart is somebody else’s', () => {
    const [third, half, all] = [1 / 3, 1 / 2, 1].map((share) =>
      measuredOf(unresponsiveShare, id, mixed(share)),
    );
    expect(third!.value).toBeGreaterThan(0.05);
    expect(half!.value).toBeGreaterThan(third!.value);
    expect(all!.value).toBeGreaterThan(0.6);
    expect(all!.interval[0]).toBeGreaterThan(0.4);
    expect(half!.stretches.every(([from]) => from < 1800)).toBe(true);
  });
  it('counts windows: its interval is that of the silent ones among them', () => {
    const { interval, value, count, details } = measuredOf(unresponsiveShare, id, mixed(1));
    const silent = Math.round(value * count);
    expect(details).toMatchObject({ windows: count, silent, answering: count - silent });
    const [low, high] = wilson(silent, count);
    expect(interval[0]).toBeCloseTo(low, 3);
    expect(interval[1]).toBeCloseTo(high, 3);
  });
  it('tells faults of sensors from a heart that does not answer', () => {
    const heartRate = own.heartRate.slice();
    heartRate.fill(Number.NaN, 200, 500);
    heartRate.fill(150, 1000, 1300);
    for (let i = 2000; i < 2400; i++) heartRate[i] = Math.round(own.cadence[i]!);
    const got = measuredOf(unresponsiveShare, id, of({ ...own, heartRate }));
    expect(got.value).toBe(0);
    expect([...got.circumstances].sort()).toEqual([
      'cadence counted',
      'heart rate stuck',
      'strap dropped out',
    ]);
    expect(got.details.missing).toEqual({ value: 300, unit: 's' });
  });
  it('holds a sensor that counts the cadence all along for silent, and one that fails for a while for failing', () => {
    const counting = (to: number) => {
      const heartRate = own.heartRate.slice();
      for (let i = 0; i < to; i++) heartRate[i] = Math.round(own.cadence[i]! * 1.02);
      return measuredOf(unresponsiveShare, id, of({ ...own, heartRate }));
    };
    for (const seconds of [1800, 3600]) {
      const got = counting(seconds);
      expect(got.value).toBeCloseTo(seconds / 3600, 1);
      expect(got.interval[0]).toBeGreaterThan(0.151);
      expect(got.circumstances).toEqual(['cadence counted']);
    }
    expect(counting(900)).toMatchObject({ value: 0, circumstances: ['cadence counted'] });
  });
  it('asks for less of an answer where power changes little', () => {
    const at = (variation: number) =>
      leastAnswer(variation, { ownVariation: 0.03, openZ: 0.7, leastCorrelation: 0.6 });
    // A variation like the heart's own leaves a correlation of √½: tanh(atanh(0.7071) - 0.7) = 0.179 (computed).
    expect(at(0.03)).toBeCloseTo(0.179, 3);
    expect(at(0.015)).toBeLessThan(at(0.03));
    expect(at(1)).toBe(0.6);
  });
  it('shows the channel beside what a usual heart would have shown', () => {
    const { charts } = measuredOf(unresponsiveShare, id, mixed(0.5));
    const chart = charts[0];
    if (chart?.kind !== 'response') throw new Error('no response chart');
    const apart = chart.blocks.map(({ heartRate, predicted }) => Math.abs(heartRate - predicted));
    const half = apart.length / 2;
    expect(mean(apart.slice(0, half))).toBeGreaterThan(2 * mean(apart.slice(half)));
  });
  it('says so where a sensor told nothing of the heart for most of the race', () => {
    const heartRate = own.heartRate.slice();
    heartRate.fill(150, 300);
    expect(outcomeOf(unresponsiveShare, id, of({ ...own, heartRate }))).toMatchObject({
      reason: 'mostly-invalid',
      values: { channel: 'heartRate', share: { value: 3300 / 3600 } },
    });
  });
  it('says nothing where power hardly changes, or without a channel', () => {
    const even = heartRide('even', { watts: () => 220 });
    expect(outcomeOf(unresponsiveShare, id, of(even))).toMatchObject({ reason: 'too-few-blocks' });
    expect(outcomeOf(unresponsiveShare, id, of({ power: own.power }))).toMatchObject({
      reason: 'no-channel',
    });
    expect(outcomeOf(unresponsiveShare, id, of({ heartRate: foreign }))).toMatchObject({
      reason: 'no-channel',
    });
  });
});
