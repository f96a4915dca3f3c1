import fitDecoder from 'fit-decoder';
import FitParser from 'fit-file-parser';
import { describe, expect, test } from 'vitest';
import { readFit } from '../../../src/read/fit/fit.ts';
import type { Channel } from '../../../src/types.ts';
import { FitWriter, fitEpoch, mesg, record, smallRide, start } from '../fit-bytes.ts';

/*
 * A second decoder, which shares no code with ours, reads the same bytes. It hands over values as stored;
 * scale, offset and invalid value of each field are those of the FIT Profile, message record.
 */
interface Field {
  readonly number: number;
  readonly scale: number;
  readonly offset: number;
  readonly invalid: number;
}
const profile: Readonly<Partial<Record<Channel | 'time', Field>>> = {
  time: { number: 253, scale: 1, offset: -fitEpoch, invalid: 0xffffffff },
  power: { number: 7, scale: 1, offset: 0, invalid: 0xffff },
  cadence: { number: 4, scale: 1, offset: 0, invalid: 0xff },
  heartRate: { number: 3, scale: 1, offset: 0, invalid: 0xff },
  speed: { number: 6, scale: 1000, offset: 0, invalid: 0xffff },
  altitude: { number: 2, scale: 5, offset: 500, invalid: 0xffff },
  distance: { number: 5, scale: 100, offset: 0, invalid: 0xffffffff },
  temperature: { number: 13, scale: 1, offset: 0, invalid: 0x7f },
};

/** A message as the second decoder hands it over. */
interface Raw {
  readonly globalMessageNumber: number;
  readonly fields: readonly { readonly recordNumber: number; readonly data: unknown }[];
}

/** Every channel as the second decoder has it. */
function secondOpinion(bytes: Uint8Array): Map<string, number[]> {
  const { records } = fitDecoder.fit2json(bytes.slice().buffer as ArrayBuffer) as { records: readonly Raw[] };
  const rows = records.filter(({ globalMessageNumber }) => globalMessageNumber === mesg.record);
  return new Map(
    Object.entries(profile).map(([name, { number, scale, offset, invalid }]) => [
      name,
      rows.map(({ fields }) => {
        const data = fields.find((field) => field.recordNumber === number)?.data;
        return typeof data !== 'number' || data === invalid ? Number.NaN : data / scale - offset;
      }),
    ]),
  );
}

function agree(bytes: Uint8Array): void {
  const ours = readFit(bytes);
  const theirs = secondOpinion(bytes);
  for (const [name, values] of theirs) {
    const column = name === 'time' ? ours.time : ours.channels[name as Channel];
    if (values.every(Number.isNaN)) expect(column, name).toBeUndefined();
    else {
      expect(column, name).toHaveLength(values.length);
      values.forEach((value, i) => {
        if (Number.isNaN(value)) expect(column![i], `${name} ${i}`).toBeNaN();
        else expect(column![i], `${name} ${i}`).toBeCloseTo(value, 9);
      });
    }
  }
}

describe('an independent decoder agrees on every value', () => {
  test('of a small ride, in both byte orders', () => {
    agree(smallRide(300).bytes());
    agree(smallRide(300, false).bytes());
  });

  test('of records with every channel, missing values and changing definitions', () => {
    const full = [record.power, record.cadence, record.heartRate, record.speed, record.altitude] as const;
    const writer = new FitWriter().define(0, mesg.record, [
      record.timestamp,
      ...full,
      record.distance,
      record.temperature,
    ]);
    writer.define(1, mesg.record, [record.timestamp, record.power, record.temperature]);
    for (let i = 0; i < 500; i++) {
      const gone = (every: number, value: number) => (i % every === 0 ? null : value);
      if (i % 5 === 4) writer.data(1, start + i, gone(3, 180 + i), (i % 60) - 25);
      else {
        const channels = [gone(7, 200 + i), gone(11, i % 130), gone(13, 90 + (i % 90)), gone(4, 9000 + i)];
        writer.data(0, start + i, ...channels, gone(5, 2500 + i), gone(6, i * 911), gone(9, (i % 60) - 25));
      }
    }
    agree(writer.bytes());
  });
});

/** Records as objects, by the decoder that reads all other messages for us. */
function recordsOf(bytes: Uint8Array): Readonly<Record<string, unknown>>[] {
  let records: Readonly<Record<string, unknown>>[] = [];
  new FitParser({ force: false, mode: 'list' }).parse(bytes.slice().buffer as ArrayBuffer, (error, data) => {
    if (error || data === undefined) throw new Error(String(error));
    records = data.records as unknown as typeof records;
  });
  return records;
}

describe('a decoder into objects agrees on every value', () => {
  const numberOf = (value: unknown) => (typeof value === 'number' ? value : Number.NaN);

  test.each([true, false])(
    'of every field, compressed times and developer fields; little-endian: %s',
    (little) => {
      const writer = new FitWriter(little)
        .define(0, mesg.fieldDescription, [
          [0, 'uint8'],
          [1, 'uint8'],
          [2, 'uint8'],
          [3, 'string', 16],
          [6, 'uint8'],
          [7, 'sint8'],
          [8, 'string', 8],
        ])
        .data(0, 0, 3, 0x84, 'trainer power', 10, -5, 'watts')
        .define(1, mesg.record, [record.timestamp, record.power])
        .define(
          2,
          mesg.record,
          [
            record.timestamp,
            record.power,
            record.cadence,
            record.fractionalCadence,
            record.heartRate,
            record.speed,
            record.enhancedSpeed,
            record.enhancedAltitude,
            record.distance,
            record.temperature,
          ],
          [[3, 2, 0, 'uint16']],
        );
      for (let i = 0; i < 300; i++) {
        const gone = (every: number, value: number) => (i % every === 0 ? null : value);
        const fields = [gone(7, 200 + i), gone(5, i % 120), gone(3, i % 128), gone(4, 90 + (i % 90))];
        const more = [9000 + i, gone(2, 9100 + i), gone(6, 2500 + i), i * 911, gone(9, (i % 60) - 25)];
        if (i % 40 === 0) writer.data(1, start + i, 100 + i);
        else writer.compressed(2, start + i, ...fields, ...more, gone(8, 2000 + i));
      }
      const bytes = writer.bytes();
      const ours = readFit(bytes);
      const rows = recordsOf(bytes);
      const of = (take: (row: Readonly<Record<string, unknown>>) => number) => Float64Array.from(rows, take);
      expect(ours.time).toEqual(of(({ timestamp }) => (timestamp as Date).getTime() / 1000));
      expect(ours.extraMeters).toEqual([
        { name: 'trainer power', power: of((row) => numberOf(row['trainer power'])) },
      ]);
      expect(ours.channels).toEqual({
        power: of((row) => numberOf(row.power)),
        cadence: of((row) => numberOf(row.cadence) + ((row.fractional_cadence as number) ?? 0)),
        heartRate: of((row) => numberOf(row.heart_rate)),
        speed: of((row) => numberOf(row.enhanced_speed ?? row.speed)),
        altitude: of((row) => numberOf(row.enhanced_altitude)),
        distance: of((row) => numberOf(row.distance)),
        temperature: of((row) => numberOf(row.temperature)),
      });
    },
  );
});
