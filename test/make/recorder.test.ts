import { describe, expect, it } from 'vitest';
import { perfectMeter, read } from './meter.ts';
import { Random } from './random.ts';
import { plainRecorder, type RecorderSpec, record } from './recorder.ts';
import { ride } from './ride.ts';
import { drawRider } from './rider.ts';
import { drawDemand } from './rides/index.ts';

const truth = (() => {
  const random = new Random('recorder with lights');
  const rider = drawRider(random.fork('rider'));
  const demand = drawDemand('outdoor ride', rider, random.fork('demand'), random.fork('race'), 50);
  return ride(rider, demand, random.fork('ride'));
})();
const signal = read(truth, perfectMeter, new Random('signal'));
const start = 1_750_000_000;
const written = (spec: Partial<RecorderSpec>) =>
  record(truth, signal, { ...plainRecorder, ...spec }, start, new Random('writing'));
const standing = truth.demand.stops.reduce((sum, [from, to]) => sum + to - from - 3, 0);

describe('a recorder', () => {
  it('writes whole numbers once a second', () => {
    const { time, channels } = written({ pauses: 'recorded' });
    expect(time.every((t, k) => k === 0 || t - time[k - 1]! === 1)).toBe(true);
    for (const name of ['power', 'cadence', 'heartRate', 'temperature'] as const) {
      expect(channels[name]!.every(Number.isInteger)).toBe(true);
    }
    expect(time.length).toBe(truth.seconds - 1);
  });

  it('shifts its clock by whole seconds and its sampling by the rest', () => {
    const plain = written({ pauses: 'recorded' });
    const ahead = written({ pauses: 'recorded', offset: 3600 });
    expect(ahead.time[0]! - plain.time[0]!).toBe(3600);
    expect(ahead.channels.power).toEqual(plain.channels.power);
    const between = written({ pauses: 'recorded', offset: 0.5 });
    expect(between.time[0]).toBe(plain.time[0]);
    expect(between.channels.power).not.toEqual(plain.channels.power);
  });

  it('runs fast by its parts per million', () => {
    const fast = written({ pauses: 'recorded', driftPpm: 1000 });
    // 50 min at 1000 ppm: nearly 3 s more on the clock.
    expect(fast.time.length - written({ pauses: 'recorded' }).time.length).toBe(2);
  });

  it('leaves pauses out, and says so; or stops its clock with them', () => {
    expect(standing).toBeGreaterThan(20);
    const skipping = written({ pauses: 'skipped' });
    expect(skipping.time.length).toBe(truth.seconds - 1 - standing);
    expect(skipping.pauses.length).toBe(truth.demand.stops.length);
    expect(skipping.pauses.reduce((sum, [from, to]) => sum + to - from, 0)).toBe(standing);
    expect(skipping.totals.elapsedS! - skipping.totals.timerS!).toBe(standing);
    const stopping = written({ pauses: 'clock stops' });
    expect(stopping.time.at(-1)! - stopping.time[0]!).toBe(
      skipping.time.at(-1)! - skipping.time[0]! - standing,
    );
    expect(stopping.channels.power).toEqual(skipping.channels.power);
  });

  it('writes seldom when told to be smart, twice a second when muddled', () => {
    const smart = written({ smart: 6 });
    expect(smart.time.length).toBeLessThan(truth.seconds * 0.75);
    for (let k = 1; k < smart.time.length; k++)
      expect(smart.time[k]! - smart.time[k - 1]!).toBeGreaterThan(0);
    const { time } = written({ pauses: 'recorded', doubled: 0.03 });
    const steps = Array.from(time, (t, k) => t - (time[k - 1] ?? t - 1));
    const doubles = steps.filter((step) => step === 0).length;
    expect(doubles).toBeGreaterThan(40);
    expect(steps.filter((step) => step === 2).length).toBe(doubles);
    expect(steps.every((step) => step >= 0 && step <= 2)).toBe(true);
  });

  it('loses seconds in each of the ways radios lose them', () => {
    const at = (as: 'missing' | 'zero' | 'held' | 'no record') =>
      written({ pauses: 'recorded', dropouts: [{ from: 600, to: 605, as }] });
    const plain = written({ pauses: 'recorded' });
    const lost = (r: typeof plain) => r.channels.power!.subarray(599, 604);
    expect([...lost(at('missing'))].every(Number.isNaN)).toBe(true);
    expect([...lost(at('zero'))]).toEqual([0, 0, 0, 0, 0]);
    expect(new Set(lost(at('held'))).size).toBe(1);
    expect(at('no record').time.length).toBe(plain.time.length - 5);
  });

  it('has straps that fail', () => {
    const heart = (as: 'missing' | 'stuck' | 'low') =>
      written({ strap: [{ from: 700, to: 900, as }] }).channels.heartRate!.subarray(700, 790);
    expect(Number.isNaN(heart('missing')[50])).toBe(true);
    expect(new Set(heart('stuck')).size).toBe(1);
    expect(heart('low')[50]).toBeLessThan(written({}).channels.heartRate![750]! * 0.7);
  });

  it('states totals that its own records bear out', () => {
    const { totals, channels, time, laps } = written({});
    const power = [...channels.power!];
    expect(totals.meanPower).toBe(Math.round(power.reduce((a, b) => a + b) / power.length));
    expect(totals.maxPower).toBe(Math.max(...power));
    expect(totals.workJ).toBe(power.reduce((a, b) => a + b));
    expect(laps[0]!.from).toBe(time[0]);
    expect(laps.at(-1)!.to).toBe(time.at(-1)! + 1);
    const pedalled = power.filter((watts) => watts > 0);
    expect(written({ meanCountsZeros: false }).totals.meanPower).toBe(
      Math.round(pedalled.reduce((a, b) => a + b) / pedalled.length),
    );
  });
});
