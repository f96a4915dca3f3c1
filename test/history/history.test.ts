import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutDuplicates } from '../../src/history/duplicates.ts';
import {
  collect,
  emptyProfile,
  flaw,
  historyFor,
  knownBefore,
  parseProfile,
  pastRide,
  placeOf,
  printProfile,
  tooShort,
  unfit,
} from '../../src/history/index.ts';
import schema from '../../src/history/profile.schema.json' with { type: 'json' };
import { settings } from '../../src/history/settings.ts';
import type { PastRide, Profile } from '../../src/types.ts';
import { recordingOf, seriesOf } from '../measure/series.ts';
import { rideOf } from './make.ts';

const wobble = (seconds: number, watts = 200) =>
  Float64Array.from({ length: seconds }, (_, i) => watts + 40 * Math.sin(i / 3) + ((i * 7919) % 31));

describe('pastRide', () => {
  it('keeps the bests with their heart rate, and null beyond the length of the ride', () => {
    const power = wobble(400);
    power.fill(500, 100, 105);
    const heartRate = Float64Array.from({ length: 400 }, (_, i) => 120 + i / 10);
    const ride = pastRide(seriesOf({ power, heartRate }), 'trainer');
    const at = (duration: number) => settings.durations.indexOf(duration);
    expect(ride.bests[at(5)]).toBe(500);
    expect(ride.heartRates?.[at(5)]).toBe(130);
    expect(ride.bests[at(420)]).toBeNull();
    expect(ride.heartRates?.[at(420)]).toBeNull();
    expect(ride.place).toBe('trainer');
    expect(ride.to - ride.from).toBe(399);
  });

  it('keeps no mass that its own file may not state', () => {
    const climb = (watts: number) =>
      pastRide(
        seriesOf({
          power: new Float64Array(600).fill(watts),
          speed: new Float64Array(600).fill(2),
          altitude: Float64Array.from({ length: 600 }, (_, i) => i / 10),
        }),
        null,
      ).climbed;
    expect(climb(100)?.stretches).toBe(19);
    expect(climb(20_000)).toBeUndefined();
  });

  it('tells power held by a trainer from power held by a rider', () => {
    const held = Float64Array.from({ length: 3600 }, (_, i) => 250 + ((i * 7919) % 5) - 2);
    expect(pastRide(seriesOf({ power: held }), null).controlled).toBe(1);
    expect(pastRide(seriesOf({ power: wobble(3600) }), null).controlled).toBe(0);
  });

  it('takes ten-second means that vary by less than 1.5 % in a minute for held', () => {
    // Six means in turn above and below their own mean by a share s vary by s·√(6/5).
    const swing = (share: number) =>
      Float64Array.from(
        { length: 600 },
        (_, i) => 200 * (1 + (Math.floor(i / 10) % 2 === 0 ? share : -share)),
      );
    const controlled = (variation: number) =>
      pastRide(seriesOf({ power: swing(variation / Math.sqrt(1.2)) }), null).controlled;
    expect([controlled(0.0149), controlled(0.0151)]).toEqual([1, 0]);
  });
});

describe('sifting', () => {
  const power = wobble(3600);
  it('takes cycling, whatever it is called, but no motor and no other sport', () => {
    for (const sport of [null, 'cycling', 'biking', 'virtual ride', 'indoor_cycling'])
      expect(unfit(recordingOf({ power }, { sport }))).toBeNull();
    for (const sport of ['running', 'rowing', 'e-biking', 'e_biking', 'ebike'])
      expect(unfit(recordingOf({ power }, { sport }))).toBe('other sport');
  });
  it('leaves out rides without power or hardly any', () => {
    expect(unfit(recordingOf({ power: new Float64Array(100) }))).toBe('no power');
    expect(unfit(recordingOf({ heartRate: new Float64Array(100).fill(140) }))).toBe('no power');
    expect(tooShort(seriesOf({ power: wobble(40) }))).toBe(true);
    expect(tooShort(seriesOf({ power }))).toBe(false);
  });
  it('names the flaw', () => {
    expect(flaw(seriesOf({ power }), [])).toBeNull();
    expect(flaw(seriesOf({ power: wobble(3600).fill(3000, 10, 20) }), [])).toBe('impossible power');
    expect(flaw(seriesOf({ power: wobble(3600).fill(217, 1000, 1300) }), [])).toBe('frozen power');
    expect(flaw(seriesOf({ power: wobble(3600).fill(Number.NaN, 1000) }), [])).toBe('mostly missing');
    const stray = { count: { value: 400, unit: 'count' } } as const;
    expect(flaw(seriesOf({ power }), [{ subject: 'x', id: 'far-records-dropped', values: stray }])).toBe(
      'clock astray',
    );
  });
});

describe('duplicates', () => {
  const unnamed = { maker: null, product: null, serial: null };
  it('keeps one of two exports of a ride, whichever comes first', () => {
    const original = rideOf(1);
    const copy = rideOf(2, {
      from: original.from + 2,
      to: original.to,
      bests: original.bests,
      device: unnamed,
    });
    for (const rides of [
      [original, copy],
      [copy, original],
    ]) {
      const { kept, dropped } = withoutDuplicates(rides);
      expect(kept).toEqual([original]);
      expect(dropped).toEqual([copy]);
    }
  });
  it('takes four fifths of the shorter ride in common for one ride, with bests within half a per cent', () => {
    const first = rideOf(1);
    const dropped = (late: number, share: number) => {
      const bests = first.bests.map((watts) => watts && watts * (1 + share));
      const second = rideOf(2, { from: first.from + late, to: first.to + late, bests });
      return withoutDuplicates([first, second]).dropped.length;
    };
    expect([dropped(720, 0), dropped(721, 0)]).toEqual([1, 0]);
    expect([dropped(0, 0.005), dropped(0, 0.02)]).toEqual([1, 0]);
  });
  it('keeps two meters on one ride, and rides that only follow one another', () => {
    const first = rideOf(1);
    const higher = rideOf(3, {
      from: first.from,
      to: first.to,
      bests: first.bests.map((b) => b && b * 1.03),
    });
    const after = rideOf(4, { from: first.to, to: first.to + 3600, bests: first.bests });
    expect(withoutDuplicates([first, higher, after]).dropped).toEqual([]);
  });
});

describe('collect', () => {
  const take = (ride: PastRide) => ({ name: `${ride.sha256}.fit`, sha256: ride.sha256, outcome: { ride } });
  it('adds to what was known, in one order', () => {
    const all = collect(
      emptyProfile,
      [3, 1, 2].map((n) => take(rideOf(n))),
    );
    const stepwise = collect(collect(emptyProfile, [take(rideOf(2)), take(rideOf(3))]), [take(rideOf(1))]);
    expect(stepwise).toEqual(all);
    expect(all.rides.map((ride) => ride.from)).toEqual([1, 2, 3].map((n) => rideOf(n).from));
  });
  it('remembers rides and left-out files by digest, but tries unreadable ones again', () => {
    const outcome = (why: 'other sport' | 'unreadable') => ({ leftOut: { why } });
    const profile = collect(emptyProfile, [
      take(rideOf(1)),
      { name: 'run.fit', sha256: 'b'.repeat(64), outcome: outcome('other sport') },
      { name: 'odd.fit', sha256: 'c'.repeat(64), outcome: outcome('unreadable') },
    ]);
    const known = knownBefore(profile);
    expect(known.get(rideOf(1).sha256)).toEqual({ ride: rideOf(1) });
    expect(known.get('b'.repeat(64))).toEqual(outcome('other sport'));
    expect(known.has('c'.repeat(64))).toBe(false);
    const readAtLast = collect(profile, [take(rideOf(5, { sha256: 'c'.repeat(64) }))]);
    expect(readAtLast.leftOut.map((file) => file.name)).toEqual(['run.fit']);
  });
  it('carries a profile of other durations over', () => {
    const old: Profile = {
      profileVersion: 1,
      durations: [5, 60],
      rides: [rideOf(1, { bests: [900, 400] })],
      leftOut: [],
    };
    const { rides, durations } = collect(old, []);
    expect(rides[0]?.bests[durations.indexOf(5)]).toBe(900);
    expect(rides[0]?.bests[durations.indexOf(60)]).toBe(400);
    expect(rides[0]?.bests[durations.indexOf(300)]).toBeNull();
    expect(knownBefore(old).size).toBe(0);
  });
});

describe('historyFor', () => {
  it('leaves out and counts rides that overlap or follow the race', () => {
    const rides = [1, 2, 3, 4].map((n) => rideOf(n));
    const race = rides[2]!;
    const history = historyFor({ ...emptyProfile, rides }, race.from + 10, race.to);
    expect(history.rides).toEqual(rides.slice(0, 2));
    expect(history.notBefore).toBe(2);
    expect(history.overlapping).toBe(1);
  });
});

describe('placeOf', () => {
  const device = { maker: 'Maker', product: 'Model 3', serial: null };
  it('matches a declared meter by file name or by what the file states', () => {
    const declared = (name: string) => [{ name, place: 'pedal', sides: 2, tolerancePercent: 1 } as const];
    expect(placeOf('a.fit', device, declared('A.fit'))).toBe('pedal');
    expect(placeOf('a.fit', device, declared('maker model 3'))).toBe('pedal');
    expect(placeOf('b.fit', device, declared('a.fit'))).toBeNull();
    expect(placeOf('', { maker: null, product: null, serial: null }, declared(''))).toBe('pedal');
  });
});

describe('a profile as text', () => {
  const profile: Profile = {
    ...emptyProfile,
    rides: [
      rideOf(1, {
        heartRates: settings.durations.map(() => 150),
        controlled: 0.25,
        climbed: { kg: 78.4, stretches: 12, scatter: 0.021 },
      }),
      rideOf(2),
    ],
    leftOut: [{ name: 'run.fit', why: 'other sport', sha256: 'b'.repeat(64) }],
  };
  const validate = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

  it('comes back as it went', () => {
    expect(parseProfile(printProfile(profile))).toEqual(profile);
    expect(parseProfile(printProfile(emptyProfile))).toEqual(emptyProfile);
  });
  it('does not depend on the order of rides or fields, and gives each ride its line', () => {
    const shuffled = { ...profile, rides: [...profile.rides].reverse() };
    const text = printProfile(profile);
    expect(printProfile(shuffled)).toBe(text);
    const more = printProfile({ ...profile, rides: [...profile.rides, rideOf(9)] });
    const lines = new Set(text.split('\n').map((line) => line.replace(/,$/, '')));
    expect(more.split('\n').filter((line) => !lines.has(line.replace(/,$/, '')))).toHaveLength(1);
  });
  it('fits its schema', () => {
    expect(validate(JSON.parse(printProfile(profile)))).toBe(true);
  });

  const broken: [string, (top: Record<string, unknown>) => unknown, string][] = [
    ['a list', () => [], ''],
    ['another version', (top) => ({ ...top, profileVersion: 2 }), 'profileVersion'],
    ['a stray field', (top) => ({ ...top, extra: 1 }), ''],
    ['durations that are text', (top) => ({ ...top, durations: ['5'] }), 'durations › 1'],
    [
      'a ride without digest',
      (top) => ({ ...top, rides: [{ ...rideOf(1), sha256: undefined }] }),
      'rides › 1 › sha256',
    ],
    [
      'a digest in capitals',
      (top) => ({ ...top, rides: [{ ...rideOf(1), sha256: 'A'.repeat(64) }] }),
      'rides › 1 › sha256',
    ],
    [
      'power below zero',
      (top) => ({ ...top, rides: [{ ...rideOf(1), bests: settings.durations.map(() => -1) }] }),
      'rides › 1 › bests › 1',
    ],
    [
      'an unknown place',
      (top) => ({ ...top, rides: [rideOf(1, { place: 'saddle' as never })] }),
      'rides › 1 › place',
    ],
    ['an unknown reason', (top) => ({ ...top, leftOut: [{ name: 'x', why: 'dull' }] }), 'leftOut › 1 › why'],
  ];
  it.each(broken)('refuses %s and says where; the schema refuses it as well', (_, breakIt, where) => {
    const bad = JSON.parse(JSON.stringify(breakIt(JSON.parse(printProfile(profile)))));
    expect(() => parseProfile(JSON.stringify(bad))).toThrow(
      expect.objectContaining({ code: 'profile-wrong', where: where === '' ? undefined : where }),
    );
    expect(validate(bad)).toBe(false);
  });
  it('refuses what is no JSON, and lists of the wrong length', () => {
    expect(() => parseProfile('{')).toThrow(/no JSON/);
    const short = { ...profile, rides: [rideOf(1, { bests: [1, 2] })] };
    expect(() => parseProfile(printProfile(short))).toThrow(/one for each duration/);
  });
  it('answers any JSON with a profile or a problem', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(() => parseProfile(text)).toThrow(expect.objectContaining({ code: 'profile-wrong' }));
      }),
    );
  });
});
