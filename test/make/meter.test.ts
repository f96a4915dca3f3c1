import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MeterSpec, perfectMeter, read, workingCadence } from './meter.ts';
import { Random } from './random.ts';
import { ride, type Truth } from './ride.ts';
import { drawRider } from './rider.ts';
import { drawDemand } from './rides/index.ts';

const truth = (() => {
  const random = new Random('meter');
  const rider = drawRider(random.fork('rider'), { recordClass: 'open', standard: 'racer' });
  const demand = drawDemand('bunch race', rider, random.fork('demand'), random.fork('race'), 40);
  return ride(rider, demand, random.fork('ride'));
})();
const told = (spec: Partial<MeterSpec>, of: Truth = truth) =>
  read(of, { ...perfectMeter, ...spec }, new Random('reading'));
const sum = (values: Float64Array, from = 0, to = values.length) => {
  let total = 0;
  for (let i = from; i < to; i++) total += values[i]!;
  return total;
};
const ratio = (spec: Partial<MeterSpec>, from?: number, to?: number) =>
  sum(told(spec).power, from, to) / sum(told({}).power, from, to);

describe('a meter', () => {
  it('without errors tells the truth', () => {
    expect(sum(told({}).power) / sum(truth.power)).toBeCloseTo(1, 3);
    const signal = told({
      kernel: { shape: 'box', seconds: 0.25 },
      cadence: { ...workingCadence, state: 'absent' },
    });
    expect(signal.power).toEqual(truth.power);
    expect(signal.cadence()).toBeNull();
  });

  it('leaves the truth untouched', () => {
    const before = truth.power.slice();
    told({ gain: 1.1, kernel: { shape: 'box', seconds: 0.25 }, stepWatts: 5, torqueOffset: 2 });
    expect(truth.power).toEqual(before);
  });

  it('shows its gain, whatever the noise', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.85, max: 1.2, noNaN: true }),
        fc.double({ min: 0, max: 0.04, noNaN: true }),
        (gain, noise) => {
          expect(ratio({ gain, noise, jitter: 0.6, lag: 0.7 })).toBeCloseTo(gain, 2);
        },
      ),
      { numRuns: 20 },
    );
  });

  it('adds torque as torque: watts grow with cadence', () => {
    const plain = told({}).power;
    const offset = told({ torqueOffset: 1.5 }).power;
    let watts = 0;
    let turns = 0;
    for (let i = 0; i < plain.length; i++) {
      if (truth.cadence[i] === 0) continue;
      watts += offset[i]! - plain[i]!;
      turns += truth.cadence[i]!;
    }
    expect(watts / turns).toBeCloseTo((1.5 * 2 * Math.PI) / 60, 2);
  });

  it('sits before or behind the chain', () => {
    const loss = 1 - ratio({ place: 'trainer', drivetrainLoss: 0.021 });
    expect(loss).toBeGreaterThan(0.018);
    expect(loss).toBeLessThan(0.024);
    expect(ratio({ place: 'pedal', drivetrainLoss: 0.021 })).toBeCloseTo(1, 6);
  });

  it('doubles one leg: a left share of 0.47 reads -6 %', () => {
    const easy = { ...truth, rider: { ...truth.rider, asymmetry: -0.03 } };
    const power = told({ sides: 1 }, { ...easy, power: truth.power.map(() => 1) }).power;
    expect(sum(power) / power.length).toBeCloseTo(0.94, 2);
  });

  it('drifts, warms, and steps when it says so', () => {
    const quarter = truth.power.length >> 2;
    const end = truth.power.length;
    const hours = truth.seconds / 3600;
    expect(
      ratio({ driftPerHour: 0.1 }, end - quarter, end) - ratio({ driftPerHour: 0.1 }, 0, quarter),
    ).toBeCloseTo(0.075 * hours, 2);
    const warm = { temperature: { perDegree: 0.005, warming: 8, tau: 600 } };
    expect(ratio(warm, end - quarter, end)).toBeGreaterThan(1.035);
    expect(ratio(warm, 0, 4 * 60)).toBeLessThan(1.01);
    const step = { offsetStep: { at: truth.seconds / 2, torque: 2 } };
    expect(ratio(step, 0, end >> 1)).toBeCloseTo(1, 3);
    expect(ratio(step, end >> 1, end)).toBeGreaterThan(1.03);
  });

  it('errs in sprints alone when it says so', () => {
    const { cp } = truth.rider.ability;
    const plain = told({}).power;
    const happy = told({ sprint: { error: 0.2, from: cp * 1.4, full: cp * 1.6 } }).power;
    for (let i = 0; i < plain.length; i += 7) {
      if (plain[i]! < cp) expect(happy[i]! / Math.max(1, plain[i]!)).toBeLessThan(1.2);
    }
    const top = plain.indexOf(Math.max(...plain));
    expect(happy[top]! / plain[top]!).toBeCloseTo(1.2, 1);
    expect(sum(happy) / sum(plain)).toBeLessThan(1.06);
  });

  it('comes late by its lag and half its kernel', () => {
    const shift = (spec: Partial<MeterSpec>) => {
      const power = told(spec).power;
      let best = [0, Number.POSITIVE_INFINITY];
      for (let lag = 0; lag < 20; lag++) {
        let error = 0;
        for (let i = 20; i < power.length; i++) error += Math.abs(power[i]! - truth.power[i - lag]!);
        if (error < best[1]!) best = [lag, error];
      }
      return best[0]! * truth.step;
    };
    expect(shift({ kernel: { shape: 'box', seconds: 0.25 }, lag: 1.25 })).toBeCloseTo(1.25, 1);
    expect(Math.abs(shift({ kernel: { shape: 'box', seconds: 3 } }) - 1.4)).toBeLessThan(0.5);
  });

  it.each(['box', 'triangle', 'exponential'] as const)('a %s kernel keeps the work', (shape) => {
    expect(ratio({ kernel: { shape, seconds: 3 } })).toBeCloseTo(1, 2);
  });

  it('reports a target where told to, and measures elsewhere', () => {
    const half = Math.floor(truth.seconds / 2);
    const { power } = told({ reportsTarget: { stretches: [[0, half]], noise: 0, hold: 120 } });
    const values = new Set(power.subarray(0, half * 4));
    expect(values.size).toBeLessThan(30);
    expect(new Set(power.subarray(half * 4)).size).toBeGreaterThan(1000);
  });

  it('rounds to coarse steps', () => {
    expect(told({ stepWatts: 5 }).power.every((watts) => watts % 5 === 0)).toBe(true);
  });

  it('holds a cadence for a moment after a stop, and never tells a slow turn instead', () => {
    const cadence = told({ cadence: { ...workingCadence, hold: 2, noise: 0, sticky: 0 } }).cadence();
    let held = 0;
    for (let i = 0; i < cadence!.length; i++) {
      if (truth.cadence[i] === 0 && cadence![i]! > 0) held++;
      if (cadence![i]! > 0) expect(cadence![i]!).toBeGreaterThan(15);
    }
    expect(held).toBeGreaterThan(10);
  });
});
