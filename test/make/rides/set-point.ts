import type { Random } from '../random.ts';
import type { Demand } from '../ride.ts';
import type { Rider } from '../rider.ts';
import { coolDown, Script } from './script.ts';

type Block = readonly [seconds: number, share: number];

/** A structured session on a trainer that holds the power: blocks of constant watts. */
export function setPointSession(rider: Rider, random: Random, minutes?: number): Demand {
  const total = Math.round((minutes ?? random.between(40, 75)) * 60);
  const before = random.integer(6, 12) * 60;
  const script = new Script(total);
  const { cp } = rider.ability;
  // A ramp of one-minute steps.
  for (let i = 0; i < before; i += 60) script.line(i, i + 60, cp * (0.42 + (0.33 * i) / before));
  const end = total - random.integer(180, 420);
  let at = before;
  const set = random.pick(sets);
  while (at < end) {
    for (const [seconds, share] of set(random)) {
      if (at >= end) break;
      script.line(at, Math.min(end, at + seconds), Math.round(cp * share));
      at += seconds;
    }
  }
  coolDown(script, end, cp);
  return script.done({
    kind: 'set-point session',
    raceKind: 'workout',
    indoors: true,
    control: 'set-point',
    window: [0, total],
    // The trainer holds the power: what is left is 2–4 % of unevenness (common practice, no source).
    roughness: random.between(0.025, 0.04) / rider.unsteadiness,
  });
}

const sets: readonly ((random: Random) => readonly Block[])[] = [
  (random) => [
    [random.integer(3, 8) * 60, random.between(0.92, 1.02)],
    [random.integer(2, 4) * 60, 0.5],
  ],
  () => [
    [120, 0.88],
    [60, 1.06],
    [120, 0.88],
    [60, 1.06],
    [120, 0.88],
    [60, 1.06],
    [240, 0.5],
  ],
  () => [
    ...Array.from(
      { length: 8 },
      () =>
        [
          [30, 1.15],
          [30, 0.5],
        ] as const,
    ).flat(),
    [240, 0.5],
  ],
  (random) => [
    [random.integer(10, 20) * 60, random.between(0.82, 0.9)],
    [300, 0.5],
  ],
];
