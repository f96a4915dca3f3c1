import raceSchema from '../../rules/race.schema.json' with { type: 'json' };
import riderSchema from '../../rules/rider.schema.json' with { type: 'json' };
import { type Fault, fitting, problemOf } from '../schema.ts';
import type { RaceFacts, RiderFacts } from '../types.ts';
import { withoutSchema } from './overlay.ts';

/**
 * Facts about a rider, from parsed JSON.
 *
 * @param where the file they stand in, for the sentence
 * @throws Problem `facts-wrong` that says everything that is wrong
 */
export async function riderFrom(value: unknown, where: string): Promise<RiderFacts> {
  const rider = withoutSchema(await fitting<object>(riderSchema, value, 'facts-wrong', where)) as RiderFacts;
  const names = rider.devices?.map((device) => device.name) ?? [];
  const twice = names.findIndex((name, i) => names.indexOf(name) < i);
  if (twice >= 0) {
    throw wrong(where, {
      path: ['devices', `${twice + 1}`, 'name'],
      what: `two devices are named “${names[twice]}”`,
    });
  }
  return rider;
}

/** Facts about a race, from parsed JSON. See `riderFrom`. */
export async function raceFrom(value: unknown, where: string): Promise<RaceFacts> {
  const race = withoutSchema(await fitting<object>(raceSchema, value, 'facts-wrong', where)) as RaceFacts;
  for (const field of ['start', 'finish'] as const) {
    const instant = race[field];
    if (instant !== undefined && !isInstant(instant)) {
      throw wrong(where, { path: [field], what: `${instant} is on no calendar and no clock` });
    }
  }
  const { start, finish } = race;
  if (start !== undefined && finish !== undefined && Date.parse(finish) <= Date.parse(start)) {
    throw wrong(where, {
      path: ['finish'],
      what: 'the race finishes before it starts',
      hint: 'Look at the dates and at the offsets from UTC',
    });
  }
  return race;
}

/** JavaScript reads 30 February as 2 March: the day must come back as it was written. */
function isInstant(text: string): boolean {
  if (Number.isNaN(Date.parse(text))) return false;
  const day = text.slice(0, 10);
  return new Date(`${day}T00:00:00Z`).toISOString().startsWith(day);
}

function wrong(where: string, fault: Fault) {
  return problemOf([fault], 'facts-wrong', where);
}
