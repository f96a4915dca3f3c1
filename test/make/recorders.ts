import type { Channel } from '../../src/types.ts';
import type { Random } from './random.ts';
import { type Dropout, plainRecorder, type RecorderSpec, type StrapFault } from './recorder.ts';
import type { Demand } from './ride.ts';

/** Recorders as honest riders use them, with everything that goes wrong without anyone's fault. */
export function drawRecorder(random: Random, index: number, demand: Demand): RecorderSpec {
  const seconds = demand.effort.length;
  const second = index > 0;
  return {
    ...plainRecorder,
    name: index === 0 ? 'primary.fit' : index === 1 ? 'second.fit' : `second-${index}.fit`,
    device: {
      maker: 'development',
      product: random.pick(['Harrow 2', 'Lodestone', 'Quarry', 'Tern 40', 'Millrace']),
      serial: String(random.integer(100_000, 999_999)),
    },
    offset: drawOffset(random, second),
    driftPpm: random.normalWithin(0, 20, -60, 60),
    ...drawEnds(random, demand, second),
    pauses: random.pick(['recorded', 'skipped', 'skipped', second ? 'clock stops' : 'skipped']),
    smart: random.chance(0.04) ? random.integer(3, 8) : 0,
    doubled: random.chance(0.05) ? random.between(0.005, 0.035) : 0,
    channels: drawChannels(random, second),
    repeats: random.between(0, 0.025),
    dropouts: drawDropouts(random, seconds),
    strap: random.chance(0.06) ? drawStrap(random, seconds) : [],
    heartLag: random.between(0.5, 8),
    meanCountsZeros: !random.chance(0.08),
  };
}

/** Seconds off; now and then minutes, or a time zone. */
function drawOffset(random: Random, second: boolean): number {
  const seconds = random.normalWithin(0, second ? 3 : 1, -12, 12);
  // What drives the race is on the network and knows the time.
  if (!second) return seconds;
  if (random.chance(0.06)) return seconds + random.integer(-40, 40) * 60;
  if (random.chance(0.05)) return seconds + random.pick([-2, -1, 1, 2, 5.5, 9.75]) * 3600;
  return seconds;
}

/** Started a little late or stopped a little early, outside the race. */
function drawEnds(random: Random, demand: Demand, second: boolean): Pick<RecorderSpec, 'from' | 'to'> {
  const before = demand.window[0];
  const after = demand.effort.length - demand.window[1];
  return {
    from: second && before > 60 ? random.between(0, before - 30) : 0,
    to: demand.effort.length - (second && after > 40 ? random.between(0, after - 20) : 0),
  };
}

function drawChannels(random: Random, second: boolean): readonly Channel[] {
  const left = new Set<Channel>(plainRecorder.channels);
  if (random.chance(second ? 0.2 : 0.05)) left.delete('heartRate');
  if (random.chance(0.06)) left.delete('cadence');
  if (random.chance(0.3)) left.delete('temperature');
  if (second && random.chance(0.4)) {
    left.delete('altitude');
    left.delete('speed');
    left.delete('distance');
  }
  return [...left];
}

/** Most rides have none; some a few of seconds; a few a longer one. */
function drawDropouts(random: Random, seconds: number): Dropout[] {
  if (!random.chance(0.25)) return [];
  const out: Dropout[] = [];
  const count = random.integer(1, 4);
  for (let k = 0; k < count; k++) {
    const from = random.integer(30, seconds - 60);
    const length = random.chance(0.85) ? random.integer(1, 4) : random.integer(5, 15);
    out.push({ from, to: from + length, as: random.pick(['missing', 'zero', 'held', 'no record']) });
  }
  return out;
}

function drawStrap(random: Random, seconds: number): StrapFault[] {
  const from = random.integer(0, seconds - 300);
  const length = random.integer(40, 400);
  return [{ from, to: from + length, as: random.pick(['missing', 'stuck', 'cadence', 'low']) }];
}
