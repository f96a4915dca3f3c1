import fitDecoder from 'fit-decoder';
import FitParser from 'fit-file-parser';
import { describe, expect, it } from 'vitest';
import type { Channel, Recording } from '../../src/types.ts';
import { writeFit } from './fit-writer.ts';
import { drawSubmission } from './submission.ts';

/** Field of a decoded record for each channel, by either decoder's name. */
const fieldOf: Readonly<Partial<Record<Channel, string>>> = {
  power: 'power',
  cadence: 'cadence',
  heartRate: 'heart_rate',
  speed: 'enhanced_speed',
  altitude: 'enhanced_altitude',
  distance: 'distance',
  temperature: 'temperature',
};

/** Compares every value of every record; counts how many values were compared. */
function compare(recording: Recording, records: readonly Readonly<Record<string, unknown>>[]): number {
  expect(records.length).toBe(recording.time.length);
  let values = 0;
  for (const [channel, name] of Object.entries(fieldOf)) {
    const column = recording.channels[channel as Channel];
    for (let k = 0; k < records.length; k++) {
      const found = records[k]![name];
      const wanted = column?.[k] ?? Number.NaN;
      if (Number.isNaN(wanted)) {
        if (found !== undefined && found !== null)
          throw new Error(`${name} of record ${k}: ${found} where none was`);
      } else if (Math.abs(Number(found) - wanted) > 1e-9) {
        throw new Error(`${name} of record ${k}: ${found}, wanted ${wanted}`);
      }
      values++;
    }
  }
  for (let k = 0; k < records.length; k++) {
    const clock = Date.parse(
      String((records[k]!.timestamp as Date).toISOString?.() ?? records[k]!.timestamp),
    );
    if (clock !== recording.time[k]! * 1000) throw new Error(`time of record ${k}`);
  }
  return values;
}

/**
 * The second decoder divides the enhanced altitude by 100 where the protocol says scale 5, offset 500: taken
 * back to the stored whole number, and read as the protocol says.
 */
function altitude(data: Readonly<Record<string, unknown>>): { enhanced_altitude?: number } {
  const { enhanced_altitude: found } = data;
  return typeof found === 'number' ? { enhanced_altitude: Math.round(found * 100) / 5 - 500 } : {};
}

const drawn = [
  drawSubmission('fit 1', { kind: 'outdoor ride', minutes: 25, recorders: 'varied', seconds: 2 }),
  drawSubmission('fit 2', { kind: 'short race', recorders: 'varied', seconds: 2 }),
  drawSubmission('fit 3', { kind: 'set-point session', minutes: 20 }),
].flatMap(({ primary, seconds }) => [primary, ...seconds]);

describe('FIT files', () => {
  it.each(drawn.map((r, k) => [k, r] as const))(
    'recording %i: two decoders read every value back',
    async (_, r) => {
      const bytes = writeFit(r);
      const strict = await new FitParser({ force: false, mode: 'list' }).parseAsync(bytes.buffer);
      expect(compare(r, strict.records as never)).toBeGreaterThan(4000);
      const other = fitDecoder.parseRecords(fitDecoder.fit2json(bytes.buffer));
      const records = other.records.filter((message) => message.type === 'record');
      compare(
        r,
        records.map(({ data }) => ({ ...data, ...altitude(data) })),
      );
    },
  );

  it('states totals, laps, pauses and who made it', async () => {
    const r = drawn[0]!;
    const read = await new FitParser({ force: false, mode: 'list' }).parseAsync(writeFit(r).buffer);
    const session = read.sessions![0]!;
    expect(session).toMatchObject({
      sport: 'cycling',
      sub_sport: 'road',
      avg_power: r.totals.meanPower,
      max_power: r.totals.maxPower,
      total_elapsed_time: r.totals.elapsedS,
      total_timer_time: r.totals.timerS,
      total_work: r.totals.workJ,
      num_laps: r.laps.length,
    });
    expect(read.laps!.map((lap) => lap.avg_power)).toEqual(r.laps.map((lap) => lap.meanPower));
    expect(read.events!.filter((event) => event.event_type === 'stop_all').length).toBe(r.pauses.length + 1);
    expect(read.file_ids![0]).toMatchObject({
      manufacturer: 'development',
      product_name: r.device.product,
      serial_number: Number(r.device.serial),
    });
  });

  it('is of normal size: some 10 to 30 bytes a record, by channels', () => {
    for (const r of drawn) {
      const perRecord = writeFit(r).length / r.time.length;
      expect(perRecord).toBeGreaterThan(8);
      expect(perRecord).toBeLessThan(30);
    }
  });

  it('carries a further meter as a developer field', async () => {
    const r = drawn[3]!;
    const power = r.channels.power!.map((watts) => watts + 7);
    const bytes = writeFit({ ...r, extraMeters: [{ name: 'Left Crank', power }] });
    const read = await new FitParser({ force: false, mode: 'list' }).parseAsync(bytes.buffer);
    expect(read.field_descriptions![0]).toMatchObject({ field_name: 'Left Crank' });
    const first = r.channels.power!.findIndex((watts) => watts > 0);
    expect((read.records![first] as unknown as Record<string, unknown>)['Left Crank']).toBe(power[first]);
  });
});
