import { bestMeanPower } from '../ability.ts';
import type { Random } from '../random.ts';
import type { Demand } from '../ride.ts';
import type { Rider } from '../rider.ts';
import { coolDown, Script, warmUp } from './script.ts';

/** How hard the rider goes: 1 is the best even effort for the time. */
interface Pacing {
  readonly level: number;
  /** Multiplies the first and the last watts of the body of the effort. */
  readonly start: number;
  readonly end: number;
}

function drawPacing(random: Random): Pacing {
  return {
    level: random.between(0.94, 0.99),
    start: random.between(0.98, 1.06),
    end: random.between(0.96, 1.01),
  };
}

/** Warm-up, one long self-paced effort with an end spurt (seen in every rider by Tucker et al. 2006), roll-out. */
function effortFor(
  rider: Rider,
  random: Random,
  seconds: number,
): { script: Script; from: number; to: number } {
  const before = random.integer(4, 15) * 60 + random.integer(0, 59);
  const script = new Script(before + seconds + random.integer(60, 300));
  const { cp } = rider.ability;
  warmUp(script, before, cp, random);
  const pacing = drawPacing(random);
  const mean = bestMeanPower(rider.ability, seconds, rider.tiring) * pacing.level;
  const to = before + seconds;
  const middle = before + Math.round(seconds * 0.4);
  script.line(before, middle, mean * pacing.start, mean * pacing.end);
  script.line(middle, to, mean * pacing.end);
  script.line(before, before + 15, mean * 1.25, mean * 1.1);
  const spurt = Math.round(seconds * random.between(0.03, 0.08));
  script.selfPaced = [before, to - spurt];
  script.line(to - spurt, to, mean * 1.05, mean * 1.25);
  script.sprint(to - random.integer(6, 14), 14);
  script.allOut.fill(0, to);
  coolDown(script, to, cp);
  return { script, from: before, to };
}

export function timeTrial(rider: Rider, random: Random, minutes?: number): Demand {
  const seconds = Math.round((minutes ?? random.between(18, 60)) * 60);
  const { script, from, to } = effortFor(rider, random, seconds);
  const indoors = random.chance(0.7);
  script.roll(0, script.seconds, 0.006, random);
  if (!indoors) {
    for (let at = from + random.integer(100, 500); at < to - 60; at += random.integer(150, 600)) {
      script.coast(at, random.integer(2, 7));
    }
  }
  return script.done({
    kind: 'time trial',
    raceKind: 'time trial',
    indoors,
    control: 'free',
    window: [from, to],
    roughness: indoors ? 0.8 : 1.05,
  });
}

export function shortRace(rider: Rider, random: Random, minutes = 12): Demand {
  const { script, from, to } = effortFor(rider, random, Math.round(minutes * 60));
  script.roll(0, script.seconds, 0.006, random);
  return script.done({
    kind: 'short race',
    raceKind: 'race',
    indoors: true,
    control: 'free',
    window: [from, to],
    roughness: 0.9,
  });
}

export function longClimb(rider: Rider, random: Random, minutes?: number): Demand {
  const seconds = Math.round((minutes ?? random.between(25, 65)) * 60);
  const { script, from, to } = effortFor(rider, random, seconds);
  const indoors = random.chance(0.6);
  script.roll(0, from, 0.008, random);
  let grade = 0.06;
  let next = from;
  for (let i = from; i < to; i++) {
    if (i === next) {
      grade = random.normalWithin(0.066, 0.018, 0.025, 0.11);
      next = i + random.integer(60, 300);
      const push = 1 + 1.2 * (grade - 0.066);
      script.scale(i, Math.min(next, to), () => push);
    }
    script.grade[i] = grade;
  }
  return script.done({
    kind: 'long climb',
    raceKind: random.chance(0.5) ? 'race' : 'time trial',
    indoors,
    control: 'free',
    window: [from, to],
    roughness: indoors ? 0.85 : 0.95,
  });
}
