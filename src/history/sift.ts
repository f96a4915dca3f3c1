import { meanMaximal } from '../math/mean-maximal.ts';
import { longestLength, stretchesWhere } from '../math/stretches.ts';
import type { Flaw, LeftOut, Recording, Series, Step } from '../types.ts';
import { settings } from './settings.ts';

/** Whether a sport is cycling under the rider's own power; a file that states none is taken at its word. */
function isCycling(sport: string | null): boolean {
  if (sport === null) return true;
  return /cycl|bik|ride/.test(sport) && !/^e[ _-]?bik|electric|motor/.test(sport);
}

/** Why a recording does not belong in a profile before it is even laid on a grid; null when it may. */
export function unfit(recording: Recording): LeftOut | null {
  if (!isCycling(recording.sport)) return 'other sport';
  const power = recording.channels.power;
  return power?.some((watts) => watts > 0) ? null : 'no power';
}

/** Whether the ride holds too little power to say anything. */
export function tooShort(series: Series): boolean {
  return count(series.channels.power!, (watts) => watts > 0) < settings.shortestSeconds;
}

/** What makes this recording no evidence of what its rider can do; null where nothing does. */
export function flaw(series: Series, steps: readonly Step[]): Flaw | null {
  const power = series.channels.power!;
  const sprint = meanMaximal(power, [settings.impossibleSprintSeconds]).watts[0]!;
  if (sprint > settings.impossibleSprint) return 'impossible power';
  if (stray(steps) > settings.strayShare * series.recording.time.length) return 'clock astray';
  const recorded = count(series.state, (state) => state <= 1);
  const known = count(power, (watts) => !Number.isNaN(watts));
  if (recorded - known > settings.missingShare * recorded) return 'mostly missing';
  return longestFreeze(power) >= settings.frozenSeconds ? 'frozen power' : null;
}

/** Records dropped because they lie far from the body of the ride, as the steps log them. */
function stray(steps: readonly Step[]): number {
  const dropped = steps.find((step) => step.id === 'far-records-dropped')?.values.count;
  return typeof dropped === 'object' ? dropped.value : 0;
}

function longestFreeze(power: Float64Array): number {
  const repeats = stretchesWhere(
    1,
    power.length,
    (i) => power[i] === power[i - 1] && power[i]! > settings.frozenWatts,
    settings.frozenSeconds - 1,
  );
  return repeats.length === 0 ? 0 : longestLength(repeats) + 1;
}

function count(column: Float64Array | Uint8Array, holds: (value: number) => boolean): number {
  let counted = 0;
  for (const value of column) if (holds(value)) counted++;
  return counted;
}
