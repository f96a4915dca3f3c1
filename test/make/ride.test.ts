import { describe, expect, it } from 'vitest';
import { type Ability, nextBalance, powerFor, sprintCeiling } from './ability.ts';
import { Random } from './random.ts';
import { fractalDimension } from './realism.ts';
import { type RideKind, ride, rideKinds, type Truth } from './ride.ts';
import { drawRider, onTheDay } from './rider.ts';
import { drawDemand } from './rides/index.ts';
import { torqueAt, torqueOf } from './torque.ts';

function drawTruth(seed: string, kind: RideKind, race = seed): Truth {
  const random = new Random(seed);
  const today = onTheDay(drawRider(random.fork('rider')), random.fork('day'));
  const demand = drawDemand(kind, today, random.fork('demand'), new Random(race));
  return ride(today, demand, random.fork('ride'));
}

/** Highest mean of `width` samples in a row. */
function best(values: Float64Array, width: number): number {
  let sum = 0;
  let most = 0;
  for (let i = 0; i < values.length; i++) {
    sum += values[i]! - (i >= width ? values[i - width]! : 0);
    if (i >= width - 1 && sum > most) most = sum;
  }
  return most / width;
}

/** Mean power (W) of the first seconds of a sprint from rest. */
function allOutMean(ability: Ability, seconds: number): number {
  let left = ability.wPrime;
  let sum = 0;
  for (let t = 0; t < seconds; t += 0.05) {
    const power = sprintCeiling(ability, left);
    sum += power * 0.05;
    left = nextBalance(ability, left, power, 0.05);
  }
  return sum / seconds;
}

function correlation(a: Float64Array, b: Float64Array): number {
  const n = Math.min(a.length, b.length);
  let [sa, sb, saa, sbb, sab] = [0, 0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    sa += a[i]!;
    sb += b[i]!;
    saa += a[i]! * a[i]!;
    sbb += b[i]! * b[i]!;
    sab += a[i]! * b[i]!;
  }
  return (sab / n - (sa * sb) / n / n) / Math.sqrt((saa / n - (sa / n) ** 2) * (sbb / n - (sb / n) ** 2));
}

describe.each(rideKinds)('%s', (kind) => {
  const truths = [1, 2, 3, 4].map((seed) => drawTruth(`ride ${seed}`, kind));

  it('never shows more than the rider can do', () => {
    for (const { rider, secondPower } of truths) {
      for (const seconds of [5, 15, 30]) {
        expect(best(secondPower, seconds)).toBeLessThan(allOutMean(rider.ability, seconds) * 1.01);
      }
      for (const seconds of [60, 300, 720, 1200, 3600]) {
        if (secondPower.length < seconds) continue;
        expect(best(secondPower, seconds)).toBeLessThan(powerFor(rider.ability, seconds) * 1.01);
      }
    }
  });

  it('never asks more of the crank than the torque line allows', () => {
    for (const { rider, power, cadence } of truths) {
      for (let i = 0; i < power.length; i += 4) {
        if (cadence[i]! < 25) continue;
        // Power and cadence are shaped apart between the seconds: a tenth of room.
        expect(torqueOf(power[i]!, cadence[i]!)).toBeLessThan(torqueAt(rider.torque, cadence[i]!) * 1.15 + 5);
      }
    }
  });

  it('has no power without turning cranks, and finite values everywhere', () => {
    for (const truth of truths) {
      for (let i = 0; i < truth.power.length; i++) {
        if (truth.cadence[i] === 0 && truth.power[i] !== 0) throw new Error(`power at rest in sample ${i}`);
      }
      for (const column of [
        truth.heartRate,
        truth.speed,
        truth.altitude,
        truth.temperature,
        truth.distance,
      ]) {
        expect(column.every(Number.isFinite)).toBe(true);
      }
    }
  });

  it('comes out the same again', () => {
    const again = drawTruth('ride 1', kind);
    expect(again.power).toEqual(truths[0]!.power);
    expect(again.heartRate).toEqual(truths[0]!.heartRate);
  });
});

describe('self-paced riding', () => {
  it('has a fractal dimension of 1.5 to 1.9 and an end spurt (Tucker et al. 2006, BJSM 40:912-917)', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const { secondPower, demand } = drawTruth(`tucker ${seed}`, 'time trial');
      const [from, to] = demand.window;
      const effort = secondPower.slice(from, to);
      const dimension = fractalDimension(effort);
      expect(dimension).toBeGreaterThan(1.5);
      expect(dimension).toBeLessThan(1.9);
      const mean = (a: Float64Array) => a.reduce((x, y) => x + y) / a.length;
      expect(mean(effort.slice(-20))).toBeGreaterThan(mean(effort.slice(-320, -20)));
    }
  });

  it('gets near to the rider’s best for the time', () => {
    for (const seed of [1, 2, 3, 4]) {
      const { secondPower, rider, demand } = drawTruth(`hard ${seed}`, 'short race');
      const [from, to] = demand.window;
      const share = best(secondPower, to - from) / powerFor(rider.ability, to - from);
      expect(share).toBeGreaterThan(0.88);
    }
  });
});

describe('one race, several riders', () => {
  it('riders of a race share its surges; riders of two races do not', () => {
    const one = drawTruth('rider 1', 'bunch race', 'race A');
    const two = drawTruth('rider 2', 'bunch race', 'race A');
    const other = drawTruth('rider 2', 'bunch race', 'race B');
    const race = ({ secondPower, demand }: Truth) => secondPower.slice(...demand.window);
    expect(correlation(race(one), race(two))).toBeGreaterThan(0.5);
    expect(correlation(race(one), race(other))).toBeLessThan(0.3);
  });
});
