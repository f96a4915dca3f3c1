import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../../../src/read/csv/csv.ts';
import { meaningOf } from '../../../src/read/csv/headings.ts';
import { limits } from '../../../src/read/limits.ts';
import type { Channel } from '../../../src/types.ts';
import { sound } from '../sound.ts';
import { text } from '../zip-bytes.ts';

const csv = (...lines: string[]) => readCsv(text(`${lines.join('\n')}\n`));
const column = (values: Float64Array | undefined) => [...(values ?? [])];
const six = Date.UTC(2026, 0, 10, 18) / 1000;

describe('headings of the trade', () => {
  test.each<[string, Channel, number?]>([
    ['power', 'power'],
    ['Power (W)', 'power', 1],
    ['power_watts', 'power', 1],
    ['WATTS', 'power', 1],
    ['Power [kW]', 'power', 1000],
    ['cad', 'cadence'],
    ['Cadence (rpm)', 'cadence', 1],
    ['rpm', 'cadence', 1],
    ['Heart Rate', 'heartRate'],
    ['heartRate', 'heartRate'],
    ['heart_rate_bpm', 'heartRate', 1],
    ['HR (1/min)', 'heartRate', 1],
    ['speed', 'speed'],
    ['Speed (km/h)', 'speed', 1 / 3.6],
    ['speed_kmh', 'speed', 1 / 3.6],
    ['km/h', 'speed', 1 / 3.6],
    ['kph', 'speed', 1 / 3.6],
    ['mph', 'speed', 0.44704],
    ['speed_m_s', 'speed', 1],
    ['enhanced_speed', 'speed'],
    ['km', 'distance', 1000],
    ['Distance (mi)', 'distance', 1609.344],
    ['alt', 'altitude'],
    ['Elevation (ft)', 'altitude', 0.3048],
    ['temp', 'temperature'],
    ['Temperature (°C)', 'temperature', 1],
  ])('%s', (heading, channel, scale) => {
    const meaning = meaningOf(heading);
    expect(meaning).toMatchObject({ kind: 'channel', channel });
    if (meaning.kind === 'channel') expect(meaning.conversion?.scale).toBe(scale);
  });

  test.each([
    ['time', 1],
    ['secs', 1],
    ['Elapsed Time (s)', 1],
    ['time_ms', 0.001],
    ['Minutes', 60],
    ['timestamp', 1],
  ])('%s is a time', (heading, scale) => {
    expect(meaningOf(heading)).toEqual({ kind: 'time', scale });
  });

  test.each(['lat', 'Longitude', 'position_lat'])('%s is a position', (heading) => {
    expect(meaningOf(heading).kind).toBe('position');
  });

  test.each(['Trainer power (W)', 'power 2', 'Pedal watts'])('%s may be a further meter', (heading) => {
    expect(meaningOf(heading).kind).toBe('meter');
  });

  test.each([
    'slope',
    'Power (knots)',
    'Speed (knots)',
    'left power',
    'average power',
    'torque (N·m)',
    'lap',
    '',
  ])('"%s" is nothing that is read', (heading) => {
    expect(meaningOf(heading).kind).toBe('other');
  });
});

describe('tables', () => {
  test.each([
    ['comma', 'secs,watts,cad', '0,201.5,90'],
    ['semicolon and decimal comma', 'secs;watts;cad', '0;201,5;90'],
    ['tab', 'secs\twatts\tcad', '0\t201.5\t90'],
    ['quoted', '"secs","watts","cad"', '"0","201.5","90"'],
    ['quoted decimal comma', 'secs,watts,cad', '0,"201,5",90'],
    ['spaces', ' secs , watts , cad ', ' 0 , 201.5 , 90 '],
  ])('%s', (_, heading, row) => {
    for (const newline of ['\n', '\r\n']) {
      const ride = readCsv(text([heading, row, ''].join(newline)));
      expect(column(ride.channels.power)).toEqual([201.5]);
      expect(column(ride.channels.cadence)).toEqual([90]);
    }
  });

  test('quoted cells hold delimiters, quotes and line breaks', () => {
    const ride = csv('time,note,power', '0,"a, ""b""', 'c",200', '1,,"210"');
    expect(column(ride.channels.power)).toEqual([200, 210]);
  });

  test('lines above the headings, a separator line and a byte order mark are passed over', () => {
    const ride = readCsv(text('\uFEFFsep=;\nRider;A\n\nTime;Power\n0;200\n'));
    expect(column(ride.channels.power)).toEqual([200]);
  });

  test('a spreadsheet in Windows-1252 is understood', () => {
    const bytes = Uint8Array.from('time;power;Temperature (°C)\n0;200;21,5\n', (letter) =>
      letter.charCodeAt(0),
    );
    expect(column(readCsv(bytes).channels.temperature)).toEqual([21.5]);
  });

  test('units: from the heading, from a line of units, assumed and said', () => {
    const ride = csv('time (s),power (W),speed (km/h),distance (km),temp (F)', '0,200,36,1.5,50');
    expect(ride.channels.speed![0]).toBeCloseTo(10, 12);
    expect(ride.channels.distance![0]).toBe(1500);
    expect(ride.channels.temperature![0]).toBeCloseTo(10, 12);
    expect(ride.defects.map(({ id }) => id)).toEqual(['no-clock']);

    const below = csv('time,power,speed', 's,W,km/h', '0,200,36');
    expect(below.channels.speed![0]).toBeCloseTo(10, 12);
    expect(below.time).toHaveLength(1);

    const bare = csv('time,power,speed', '0,200,10');
    expect(bare.channels.speed![0]).toBe(10);
    expect(bare.defects).toContainEqual({ id: 'unit-assumed', values: { column: 'speed', unit: 'm/s' } });
  });

  test('empty cells are missing; cells that are no numbers are missing and counted', () => {
    const ride = csv('time,power', '0,200', '1,', '2,-', '3,NaN', '4,abc', '5,"1,234"', '6,0');
    expect(column(ride.channels.power)).toEqual([200, ...new Array(5).fill(Number.NaN), 0]);
    expect(ride.defects).toContainEqual({ id: 'unreadable-values', values: { count: 2, column: 'power' } });
  });

  test('a further power column is a further meter, unless it is a copy', () => {
    const ride = csv('time,power,trainer power,watts', '0,200,190,200', '1,210,205,210');
    expect(ride.extraMeters.map(({ name, power }) => [name, column(power)])).toEqual([
      ['trainer power', [190, 205]],
    ]);
  });

  test('positions are dropped and mean outdoors', () => {
    const ride = csv('time,power,lat,lon', '0,200,47.123,8.456');
    expect(ride.indoors).toBe(false);
    expect(JSON.stringify(ride)).not.toMatch(/47\.123|8\.456/);
    expect(csv('time,power,lat,lon', '0,200,,').indoors).toBeNull();
  });

  test('balance names its side', () => {
    expect(csv('time,power,left balance (%)', '0,200,51')).toMatchObject({ balanceSide: 'left' });
    expect(csv('time,power,balance', '0,200,51')).toMatchObject({ balanceSide: 'unknown' });
    expect(csv('time,power', '0,200')).toMatchObject({ balanceSide: null });
  });
});

describe('times', () => {
  const times = (heading: string, ...cells: string[]) => {
    const ride = readCsv(text([`${heading};power`, ...cells.map((cell) => `${cell};200`), ''].join('\n')));
    return { time: column(ride.time), defects: ride.defects.map(({ id }) => id) };
  };

  test.each([
    ['ISO with zone', ['2026-01-10T18:00:00Z', '2026-01-10T19:00:01+01:00'], []],
    ['ISO without', ['2026-01-10 18:00:00', '2026-01-10 18:00:01'], ['zone-assumed']],
    ['day.month.year', ['10.01.2026 18:00:00', '10.1.2026 18:00:01'], ['zone-assumed']],
    ['epoch, s', [String(six), String(six + 1)], []],
    ['epoch, ms', [`${six}000`, `${six + 1}000`], []],
  ])('%s', (_, cells, defects) => {
    expect(times('time', ...cells)).toEqual({ time: [six, six + 1], defects });
  });

  test.each([
    ['seconds', 'secs', ['0', '1,5'], [0, 1.5]],
    ['milliseconds', 'time (ms)', ['0', '1500'], [0, 1.5]],
    ['minutes', 'minutes', ['0', '0,5'], [0, 30]],
    ['h:mm:ss', 'time', ['0:00:59', '1:01:00'], [59, 3660]],
    ['mm:ss', 'elapsed', ['59:59', '60:01'], [3599, Number.NaN]],
    ['a time of day over midnight', 'time', ['23:59:59', '00:00:01'], [86_399, 86_401]],
  ])('%s: no clock', (_, heading, cells, expected) => {
    const { time, defects } = times(heading, ...cells);
    expect(time).toEqual(expected.filter((value) => !Number.isNaN(value)));
    expect(defects).toContain('no-clock');
  });

  test('a date beside a time of day', () => {
    const ride = csv('Date,Time,Power', '2026-01-10,18:00:00,200', '2026-01-10,18:00:01,210');
    expect(column(ride.time)).toEqual([six, six + 1]);
    expect(ride.defects.map(({ id }) => id)).toEqual(['zone-assumed']);
  });

  test('a clock outweighs elapsed time', () => {
    const ride = csv('secs,timestamp,power', '0,2026-01-10T18:00:00Z,200');
    expect(column(ride.time)).toEqual([six]);
  });

  test('month/day/year could be day/month/year: not read', () => {
    const ride = csv('time,power', '01/10/2026 18:00:00,200');
    expect(ride.time).toHaveLength(0);
    expect(ride.defects).toContainEqual({ id: 'unreadable-values', values: { count: 1, column: 'time' } });
  });

  test('days and hours that do not exist are no times', () => {
    expect(times('time', '2026-02-29T18:00:00Z', '2026-01-10T18:00:00Z').time).toEqual([six]);
    expect(times('time', '2026-01-10T18:00:00Z', '2026-01-10T25:00:00Z').time).toEqual([six]);
  });
});

describe('damage and limits', () => {
  test('a last line cut short is left out', () => {
    const ride = readCsv(text('time,power,cadence\n0,200,90\n1,21'));
    expect(column(ride.channels.power)).toEqual([200]);
    expect(ride.defects).toContainEqual({ id: 'markup-ends-early', values: { line: 3 } });
  });

  test('a whole last line without a line break is kept', () => {
    expect(readCsv(text('time,power\n0,200\n1,210')).time).toHaveLength(2);
  });

  test('a quote that is never closed ends the table', () => {
    const ride = readCsv(text('time,power\n0,200\n1,"210\n2,220\n'));
    expect(column(ride.channels.power)).toEqual([200]);
    expect(ride.defects).toContainEqual({ id: 'markup-ends-early', values: { line: 3 } });
  });

  test('without our headings, the columns found are named', () => {
    expect(() => csv('name;age', 'a;1')).toThrow(/its columns are: name, age$/);
    const many = Array.from({ length: 40 }, (_, i) => `c${i}`).join(',');
    expect(() => csv(many)).toThrow(/c29 and 10 more$/);
  });

  test('too many lines or columns are refused', () => {
    const lines = `time,power\n${'0,1\n'.repeat(limits.csvLines)}`;
    expect(() => readCsv(text(lines))).toThrow(expect.objectContaining({ code: 'format-limits' }));
    const wide = `time${',power'.repeat(250)}\n${'0\n'.repeat(limits.csvValues / 250 + 1)}`;
    expect(() => readCsv(text(wide))).toThrow('this table has more than 12000000 values');
    expect(() => csv('time,power', ','.repeat(limits.csvColumns))).toThrow(
      expect.objectContaining({ code: 'format-limits' }),
    );
  });

  test('time grows with length, whatever stands in the cells', () => {
    for (const row of ['0,1', '"0","1"', '"0" "1"', '""""",1', ';;;', '\t']) {
      sound(() => readCsv(text(`time,power\n${`${row}\n`.repeat(50_000)}`)));
    }
  });

  test('any changed character is read or is a problem', () => {
    const good =
      'time;power;speed (km/h);note\n2026-01-10T18:00:00Z;200,5;36;"a"\n2026-01-10T18:00:01Z;210;35;b\n';
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat({ max: 200 }), fc.constantFrom(...';,\t\n"\r 0a-.:(')), {
          minLength: 1,
          maxLength: 6,
        }),
        (changes) => {
          const letters = [...good];
          for (const [place, letter] of changes) letters[place % letters.length] = letter;
          sound(() => readCsv(text(letters.join(''))));
        },
      ),
      { numRuns: 1000 },
    );
  });
});
