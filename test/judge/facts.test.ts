import { describe, expect, it } from 'vitest';
import { raceFrom, riderFrom } from '../../src/judge/facts.ts';
import { Problem, sentence } from '../../src/problem.ts';

const said = async (checked: Promise<unknown>) =>
  checked.then(
    () => 'nothing is wrong',
    (error) => (error instanceof Problem ? sentence(error) : Promise.reject(error)),
  );
const device = { name: 'primary', place: 'trainer', sides: 2, tolerancePercent: 1.5 };

describe('facts about a rider', () => {
  it('are taken as they are, without the note of the schema', async () => {
    const rider = { massKg: 68, recordClass: 'women', devices: [device] };
    expect(await riderFrom({ $schema: 'x', ...rider }, 'rider.json')).toEqual(rider);
    expect(await riderFrom({}, 'rider.json')).toEqual({});
  });

  it.each([
    [{ mass: 68 }, 'rider.json › mass: there is no such field. Did you mean “massKg”?'],
    [{ massKg: 680 }, 'rider.json › massKg: 680 is out of range: it must be at most 250: body mass in kg.'],
    [
      { devices: [{ ...device, place: 'pedals' }] },
      'rider.json › devices › 1 › place: "pedals" stands where one of these must: crank, pedal, hub, trainer. Did you mean “pedal”?',
    ],
    [{ devices: [device, device] }, 'rider.json › devices › 2 › name: two devices are named “primary”.'],
    [
      { devices: [{ ...device, tolerancePercent: 0 }] },
      "rider.json › devices › 1 › tolerancePercent: 0 is out of range: it must be above 0: the maker's claim, plus or minus per cent.",
    ],
    [
      [],
      'rider.json: [] is not a group of fields in braces: What is known about a rider beside the recordings.',
    ],
  ])('%j', async (value, sentence) => {
    expect((await said(riderFrom(value, 'rider.json'))).slice(0, sentence.length)).toBe(sentence);
  });

  it('say all that is wrong at once', async () => {
    const all = await said(riderFrom({ massKg: 'x', age: 3 }, 'rider.json'));
    expect(all).toContain('age: there is no such field');
    expect(all).toContain('massKg: "x" is not a number');
  });
});

describe('facts about a race', () => {
  it('are taken as they are', async () => {
    const race = {
      start: '2026-03-14T19:00:00+01:00',
      finish: '2026-03-14T19:04Z',
      kind: 'race',
      required: ['power', 'second recording'],
    };
    expect(await raceFrom(race, 'race.json')).toEqual(race);
  });

  it.each([
    [
      { start: '2026-03-14 19:00' },
      'race.json › start: "2026-03-14 19:00" does not fit: date and time with the offset from UTC, for example 2026-03-14T19:00:00+01:00.',
    ],
    [
      { start: '2026-02-30T19:00:00Z' },
      'race.json › start: 2026-02-30T19:00:00Z is on no calendar and no clock.',
    ],
    [
      { finish: '2026-02-20T25:00:00Z' },
      'race.json › finish: 2026-02-20T25:00:00Z is on no calendar and no clock.',
    ],
    [
      { start: '2026-03-14T19:00:00+01:00', finish: '2026-03-14T18:00:00Z' },
      'race.json › finish: the race finishes before it starts. Look at the dates and at the offsets from UTC.',
    ],
    [{ required: ['power', 'power'] }, 'race.json › required: the same item stands twice.'],
    [
      { required: ['heartrate'] },
      'race.json › required › 1: "heartrate" stands where one of these must: power, cadence, heartRate, second recording, history. Did you mean “heartRate”?',
    ],
  ])('%j', async (value, sentence) => {
    expect(await said(raceFrom(value, 'race.json'))).toBe(sentence);
  });
});
