import fitDecoder from 'fit-decoder';
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
