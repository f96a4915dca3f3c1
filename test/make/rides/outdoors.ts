import { bestMeanPower } from '../ability.ts';
import type { Random } from '../random.ts';
import type { Demand } from '../ride.ts';
import type { Rider } from '../rider.ts';
import { coolDown, Script } from './script.ts';

/** Rolling roads, free-wheeling, corners, hills, a traffic light here and there. */
function roads(rider: Rider, random: Random, seconds: number, level: number, crowd: number): Script {
  const script = new Script(seconds);
  const { cp } = rider.ability;
  script.roll(0, seconds, 0.012, random);
  const hills = Math.round(seconds / random.between(700, 1500));
  for (let k = 0; k < hills; k++) {
    const length = random.integer(60, 420);
    const from = random.integer(120, Math.max(121, seconds - 2 * length));
    const steep = random.between(0.035, 0.08);
    script.grade.fill(steep, from, Math.min(seconds, from + length));
    script.grade.fill(-steep, from + length, Math.min(seconds, from + 2 * length));
  }
  let place = 0;
  for (let i = 0; i < seconds; i++) {
    place = place * 0.985 + 0.03 * random.normal();
    const grade = script.grade[i]!;
    const push = grade > 0 ? Math.min(1.06 / level, 1 + 6 * grade) : Math.max(0.35, 1 + 12 * grade);
    script.effort[i] = Math.min(cp * 1.5, cp * level * push * Math.exp(place));
    script.shelter[i] = crowd;
  }
  let i = 30;
  while (i < seconds) {
    const grade = script.grade[i]!;
    const rate = grade < -0.045 ? 0.12 : grade < -0.015 ? 0.03 : grade < 0.02 ? 0.012 : 0.002;
    if (random.chance(rate * rider.coasting)) {
      const length = 1 + Math.round(random.exponential(grade < -0.045 ? 14 : 5));
      script.coast(i, length);
      i += length + 2;
    }
    i++;
  }
  return script;
}

function lights(script: Script, random: Random, spacing: number): void {
  for (let at = Math.round(random.exponential(spacing)) + 120; at < script.seconds - 300; ) {
    const length = random.integer(8, 70);
    script.stop(at, length);
    at += length + 120 + Math.round(random.exponential(spacing));
  }
}

export function outdoorRide(rider: Rider, random: Random, minutes?: number): Demand {
  const seconds = Math.round((minutes ?? random.between(60, 120)) * 60);
  const script = roads(rider, random, seconds, random.between(0.6, 0.82), 1);
  lights(script, random, 900);
  const efforts = random.integer(0, 3);
  for (let k = 0; k < efforts; k++) {
    script.sprint(random.integer(600, Math.max(601, seconds - 400)), random.integer(8, 14));
  }
  return script.done({
    kind: 'outdoor ride',
    raceKind: 'race',
    indoors: false,
    control: 'free',
    window: [0, seconds],
    roughness: random.between(1.3, 1.9),
  });
}

export function longRide(rider: Rider, random: Random, minutes?: number): Demand {
  const seconds = Math.round((minutes ?? random.between(165, 200)) * 60);
  const script = roads(rider, random, seconds, random.between(0.55, 0.72), random.pick([1, 0.8]));
  lights(script, random, 2400);
  coolDown(script, seconds - 240, rider.ability.cp);
  return script.done({
    kind: 'long ride',
    raceKind: 'race',
    indoors: false,
    control: 'free',
    window: [0, seconds],
    roughness: random.between(1.3, 1.9),
  });
}

/** Easy in the wheels for most of it, then as hard as it goes to the line: honest, and looks like a late surge. */
export function groupRideAndFinale(rider: Rider, random: Random, minutes?: number): Demand {
  const seconds = Math.round((minutes ?? random.between(55, 90)) * 60);
  const indoors = random.chance(0.6);
  const script = roads(rider, random, seconds, random.between(0.52, 0.66), 0.65);
  const finale = Math.round(random.between(8, 16) * 60);
  const end = seconds - random.integer(60, 240);
  const mean = bestMeanPower(rider.ability, finale, rider.tiring) * random.between(0.93, 0.99);
  script.line(end - finale, end, mean);
  script.selfPaced = [end - finale, end - 30];
  script.sprint(end - random.integer(9, 15), 15);
  script.allOut.fill(0, end);
  script.grade.fill(0.002, end - finale, end);
  coolDown(script, end, rider.ability.cp);
  return script.done({
    kind: 'group ride and finale',
    raceKind: 'race',
    indoors,
    control: 'free',
    window: [0, end],
    roughness: indoors ? 1 : 1.4,
  });
}
