import type { RaceFacts, Series, Stretch } from '../types.ts';

export interface Window {
  readonly stretch: Stretch;
  /** False when the program proposed it. */
  readonly given: boolean;
}

/**
 * The race on the primary's series: from the race facts where they give start or finish, cut to what was
 * recorded; otherwise from the first to the last second with power. A window that does not touch the
 * recording at all is kept as the whole recording, marked as proposed: whether the ride was on the right
 * day is for a rule to say, and the rest can still be looked at.
 */
export function raceWindow(primary: Series, race: RaceFacts): Window {
  const proposed = ridden(primary);
  if (race.start === undefined && race.finish === undefined) return { stretch: proposed, given: false };
  const from =
    race.start === undefined ? proposed[0] : Math.floor(Date.parse(race.start) / 1000) - primary.start;
  const to =
    race.finish === undefined ? proposed[1] : Math.ceil(Date.parse(race.finish) / 1000) - primary.start;
  const stretch = [Math.max(0, from), Math.min(primary.length, to)] as const;
  return stretch[1] > stretch[0] ? { stretch, given: true } : { stretch: proposed, given: false };
}

function ridden({ channels: { power }, length }: Series): Stretch {
  if (power === undefined) return [0, length];
  const from = power.findIndex((watts) => watts > 0);
  return from < 0 ? [0, length] : [from, power.findLastIndex((watts) => watts > 0) + 1];
}
