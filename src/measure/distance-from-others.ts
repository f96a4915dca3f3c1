import { declaredFor, declaredPair } from '../declared.ts';
import { widthOfFarthest } from '../math/farthest.ts';
import { grubbsVariances } from '../math/grubbs.ts';
import { mean } from '../math/mean.ts';
import type { DeviceFacts, MetersChart, Subject, Subjects } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { behindChain, chainLoss, fieldVariance, placeDifference } from './pair/expected.ts';
import { isIndependent } from './pair/gate.ts';
import { lostLinks } from './pair/samples.ts';

interface Meter {
  readonly subject: Subject;
  readonly power: Float64Array;
  readonly device: DeviceFacts | null;
}

/**
 * With three independent meters or more: how far the one that lies farthest is from the mean of the others,
 * %, loss in the chain allowed for, over the seconds that all of them measured. Where the others lie as far
 * apart among themselves, none is the odd one. The honest range is that of the farthest of so many meters.
 */
export const distanceFromOthers = defineMeasure({
  id: 'distance-from-others',
  of: 'submission',
  unit: '%',
  options: {
    blockSeconds: number('length of a block, s'),
    leastBlocks: number('fewest blocks'),
    mostOfDistance: number(
      'how far apart the others may lie, as a share of the distance, before none is the odd one',
    ),
  },
  circumstances: {
    'not the primary': 'it is not the primary that lies apart',
    'no odd one': 'the other meters lie as far apart among themselves',
    'alone on its side':
      'it is the only meter on its side of the chain, so loss in the chain may be part of it',
  },
  compute(all, _, { blockSeconds, leastBlocks, mostOfDistance }) {
    const meters = independentMeters(all);
    if (meters.length < 3) return notApplicable('no-third', { meters: meters.length });
    const lost = all.seconds.filter(isIndependent).map((pair) => lostLinks(all, pair));
    const blocks = commonBlocks(meters, lost, all.window, blockSeconds);
    const count = blocks[0]!.length;
    if (count < leastBlocks) return notApplicable('too-few-blocks', { blocks: count, needed: leastBlocks });
    const watts = blocks.map(mean);
    const logs = meters.map(({ device }, i) => Math.log(watts[i]!) - placeOf(device) / 100);
    const distances = logs.map((log, i) => log - mean(logs.filter((_l, j) => j !== i)));
    const odd = distances.reduce((far, d, i) => (Math.abs(d) > Math.abs(distances[far]!) ? i : far), 0);
    const rest = logs.filter((_, j) => j !== odd);
    const apart = Math.max(...rest) - Math.min(...rest);
    const value = 100 * Math.expm1(distances[odd]!);
    const side = meters.map(({ device }) => behindChain(device));
    const alone = side.filter((one) => one === side[odd]).length === 1;
    const devices = meters.map(({ device }) => device);
    const place = placeDifference(
      devices[odd]!,
      devices.filter((_, j) => j !== odd),
    );
    // Of the mean of several each has its part alone.
    const variances = devices.map(
      (device, i) => fieldVariance(device, watts[i]!) / (i === odd ? 1 : rest.length ** 2),
    );
    const single = Math.sqrt(variances.reduce((sum, one) => sum + one, place.spread ** 2));
    const spread = single * widthOfFarthest(meters.length);
    return measured(value, [value, value], count, {
      stretches: [all.window],
      expected: { declared: { centre: 0, spread }, field: { centre: 0, spread } },
      circumstances: [
        ...(odd === 0 ? [] : ['not the primary']),
        ...(apart > mostOfDistance * Math.abs(distances[odd]!) ? ['no odd one'] : []),
        ...(alone ? ['alone on its side'] : []),
      ],
      details: {
        meter: meters[odd]!.subject,
        apart: { value: 100 * apart, unit: '%' },
        meters: meters.length,
      },
      charts: [chart(meters, blocks, distances)],
    });
  },
});

function independentMeters(all: Subjects): Meter[] {
  const { primary, rider, seconds } = all;
  const own = primary.channels.power;
  const others = seconds.filter(isIndependent);
  if (own === undefined) return [];
  const device = declaredFor(rider.devices, primary.recording.name, 'primary');
  return [
    { subject: 'primary', power: own, device },
    ...others.map(({ subject, series }) => ({
      subject,
      power: series.channels.power!,
      device: declaredPair(all, subject).other,
    })),
  ];
}

/** Where a meter of this place reads, % of crank power. */
function placeOf(device: DeviceFacts | null): number {
  return behindChain(device) === true ? -chainLoss.centre : 0;
}

/** Block means of every meter over the seconds that all measured, with power on at least one. */
function commonBlocks(
  meters: readonly Meter[],
  lost: readonly Uint8Array[],
  [from, to]: readonly [number, number],
  seconds: number,
): Float64Array[] {
  const blocks: number[][] = meters.map(() => []);
  for (let start = from; start + seconds <= to; start += seconds) {
    const sums = meters.map(() => 0);
    let count = 0;
    for (let t = start; t < start + seconds; t++) {
      const watts = meters.map(({ power }) => power[t]!);
      if (watts.some(Number.isNaN) || watts.every((w) => w === 0)) continue;
      if (lost.some((seconds) => seconds[t] === 1)) continue;
      for (const [i, w] of watts.entries()) sums[i]! += w;
      count++;
    }
    if (count * 2 < seconds || sums.some((sum) => sum <= 0)) continue;
    for (const [i, sum] of sums.entries()) blocks[i]!.push(sum / count);
  }
  return blocks.map((values) => Float64Array.from(values));
}

function chart(
  meters: readonly Meter[],
  blocks: readonly Float64Array[],
  distances: readonly number[],
): MetersChart {
  const variances = grubbsVariances(blocks.map((values) => values.map(Math.log)));
  const overall = blocks.map(mean);
  return {
    kind: 'meters',
    id: 'meters',
    meters: meters.map(({ subject }, i) => ({
      subject,
      watts: overall[i]!,
      percent: 100 * Math.expm1(distances[i]!),
      scatter: variances[i]! > 0 ? 100 * Math.sqrt(variances[i]!) : null,
    })),
    pairs: meters.flatMap(({ subject: a }, i) =>
      meters
        .slice(i + 1)
        .map(({ subject: b }, k) => ({ a, b, percent: 100 * (overall[i]! / overall[i + 1 + k]! - 1) })),
    ),
  };
}
