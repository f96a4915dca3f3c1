import type { Random } from '../random.ts';
import type { Demand } from '../ride.ts';
import type { Rider } from '../rider.ts';
import { coolDown, Script, warmUp } from './script.ts';

/**
 * What the race asks of everyone in the bunch: paces as multiples of CP, shared by all who ride it.
 * Two riders drawn from one script share climbs, surges and the finish, and nothing else.
 */
export interface RaceScript {
  readonly seconds: number;
  readonly pace: Float64Array;
  readonly grade: Float64Array;
  /** Intermediate sprints: [second, length]. */
  readonly sprints: readonly (readonly [at: number, seconds: number])[];
  /** Final sprint. */
  readonly finish: readonly [at: number, seconds: number];
}

export function drawRaceScript(random: Random, minutes?: number): RaceScript {
  const seconds = Math.round((minutes ?? random.between(35, 75)) * 60);
  const pace = new Float64Array(seconds);
  const script = new Script(seconds);
  script.roll(0, seconds, 0.008, random);
  let swing = 0;
  for (let i = 0; i < seconds; i++) {
    swing = swing * 0.985 + 0.014 * random.normal();
    const grade = script.grade[i]!;
    pace[i] = 0.8 + swing + (grade > 0 ? 2.5 : 3) * grade;
  }
  startHard(pace, random);
  climbs(pace, script.grade, seconds, random);
  surges(pace, seconds, random);
  const finish: [number, number] = [0, random.integer(10, 18)];
  finish[0] = seconds - finish[1];
  const run = random.integer(90, 240);
  for (let i = seconds - run; i < finish[0]; i++) pace[i] = 0.92 + (0.2 * (i - seconds + run)) / run;
  const sprints: [number, number][] = [];
  const count = random.integer(2, 5);
  for (let k = 0; k < count; k++) {
    const at = Math.round(seconds * ((k + random.between(0.3, 0.8)) / count) * 0.9);
    if (at > 120) sprints.push([at, random.integer(8, 15)]);
  }
  return { seconds, pace, grade: script.grade, sprints, finish };
}

function startHard(pace: Float64Array, random: Random): void {
  const length = random.integer(60, 180);
  for (let i = 0; i < length; i++) pace[i] = 1.25 - (0.35 * i) / length;
}

function climbs(pace: Float64Array, grade: Float64Array, seconds: number, random: Random): void {
  const count = random.integer(1, 5);
  for (let k = 0; k < count; k++) {
    const length = random.integer(50, 380);
    const from = random.integer(240, Math.max(241, seconds - length - 300));
    const level = length < 120 ? random.between(1.2, 1.45) : random.between(1.02, 1.16);
    const steep = random.between(0.04, 0.09);
    for (let i = from; i < Math.min(seconds, from + length); i++) {
      pace[i] = level;
      grade[i] = steep;
    }
    const down = random.integer(30, Math.max(31, length >> 1));
    for (let i = from + length; i < Math.min(seconds, from + length + down); i++) {
      pace[i] = 0.45;
      grade[i] = -steep * 0.8;
    }
  }
}

function surges(pace: Float64Array, seconds: number, random: Random): void {
  let at = 200;
  while (at < seconds - 300) {
    const length = random.integer(6, 35);
    const peak = random.between(1.3, 2.3 - length * 0.015);
    for (let i = 0; i < length && at + i < seconds; i++) {
      const shape = Math.min(1, (i + 1) / 3) * Math.min(1, (length - i) / 4);
      pace[at + i] = Math.max(pace[at + i]!, 0.8 + (peak - 0.8) * shape);
    }
    const ease = random.integer(10, 50);
    for (let i = 0; i < ease && at + length + i < seconds; i++) pace[at + length + i]! *= 0.78;
    at += length + ease + Math.round(random.exponential(130));
  }
}

/** One rider's way through the race. */
export function bunchRace(rider: Rider, random: Random, script: RaceScript): Demand {
  const before = random.integer(3, 12) * 60 + random.integer(0, 59);
  const after = random.integer(60, 300);
  const out = new Script(before + script.seconds + after);
  const { cp } = rider.ability;
  warmUp(out, before, cp, random);
  const level = random.between(0.9, 1.0);
  const late = random.integer(-2, 2);
  let place = 0;
  let shelter = 0.7;
  for (let i = 0; i < script.seconds; i++) {
    const at = Math.max(0, Math.min(script.seconds - 1, i - late));
    place = place * 0.95 + 0.035 * random.normal();
    shelter += 0.05 * (0.7 - shelter) + 0.02 * random.normal();
    out.effort[before + i] = cp * level * script.pace[at]! * Math.exp(place);
    out.grade[before + i] = script.grade[i]!;
    out.shelter[before + i] = Math.max(0.55, Math.min(1, shelter));
  }
  easeOff(out, before, script, rider.coasting, random);
  for (const [at, seconds] of script.sprints) {
    if (random.chance(0.75)) out.sprint(before + at + random.integer(-1, 2), seconds);
  }
  out.sprint(before + script.finish[0] + random.integer(-2, 1), script.finish[1]);
  coolDown(out, before + script.seconds, cp);
  return out.done({
    kind: 'bunch race',
    raceKind: 'race',
    indoors: true,
    control: 'free',
    window: [before, before + script.seconds],
    roughness: 1,
  });
}

/** Free-wheeling behind others, more often on descents. */
function easeOff(out: Script, before: number, script: RaceScript, habit: number, random: Random): void {
  let i = 60;
  while (i < script.seconds - 120) {
    const downhill = script.grade[i]! < -0.02;
    if (random.chance(habit * (downhill ? 0.05 : 0.004)) && script.pace[i]! < 0.95) {
      const length = 1 + Math.round(random.exponential(downhill ? 6 : 2.5));
      out.coast(before + i, length);
      i += length + 5;
    }
    i++;
  }
}
