import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readFit } from '../../../src/read/fit/fit.ts';
import { FitWriter, mesg, record, smallRide, start } from '../fit-bytes.ts';
import { sound } from '../sound.ts';

const ride = smallRide(50).bytes();
const developer = (() => {
  const writer = new FitWriter()
    .define(0, mesg.fieldDescription, [
      [0, 'uint8'],
      [1, 'uint8'],
      [2, 'uint8'],
      [3, 'string', 16],
      [8, 'string', 8],
    ])
    .data(0, 0, 0, 0x84, 'Power', 'watts')
    .define(1, mesg.record, [record.timestamp, record.power, record.balance], [[0, 2, 0, 'uint16']]);
  for (let i = 0; i < 40; i++) writer.data(1, start + i, 200 + i, 0x80 | 50, 190 + i);
  return writer.bytes();
})();

test('any truncation of a good file is read or is a problem', () => {
  for (let length = 0; length <= ride.length; length += 2) sound(() => readFit(ride.subarray(0, length)));
});

test('any byte changed, anywhere, is read or is a problem', () => {
  const place = fc.nat({ max: 100_000 });
  fc.assert(
    fc.property(
      fc.constantFrom(ride, developer),
      fc.array(fc.tuple(place, fc.nat({ max: 255 })), { minLength: 1, maxLength: 4 }),
      (good, changes) => {
        const bytes = good.slice();
        for (const [at, value] of changes) bytes[at % bytes.length] = value;
        sound(() => readFit(bytes));
      },
    ),
    { numRuns: 700 },
  );
});

test('bytes dropped, doubled or put in are read or are a problem', () => {
  fc.assert(
    fc.property(
      fc.nat({ max: ride.length }),
      fc.nat({ max: 40 }),
      fc.uint8Array({ maxLength: 40 }),
      (at, drop, add) => {
        const bytes = Uint8Array.from([...ride.subarray(0, at), ...add, ...ride.subarray(at + drop)]);
        sound(() => readFit(bytes));
      },
    ),
    { numRuns: 300 },
  );
});

test('noise behind a good header is read or is a problem', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 600 }), (noise) => {
      const bytes = new Uint8Array(14 + noise.length);
      bytes.set(ride.subarray(0, 14));
      bytes.set(noise, 14);
      sound(() => readFit(bytes));
    }),
    { numRuns: 300 },
  );
});

test('a damaged file never passes without a word', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 14, max: ride.length - 1 }),
      fc.integer({ min: 1, max: 255 }),
      (at, mask) => {
        const bytes = ride.slice();
        bytes[at]! ^= mask;
        expect(readFit(bytes).defects).not.toEqual([]);
      },
    ),
    { numRuns: 300 },
  );
});
