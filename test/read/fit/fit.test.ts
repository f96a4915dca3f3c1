import { describe, expect, test } from 'vitest';
import { readFit } from '../../../src/read/fit/fit.ts';
import { plain } from '../../../src/report/words/sentence.ts';
import { defectSaid } from '../../../src/report/words/story.ts';
import {
  type BaseTypeName,
  baseTypes,
  crc,
  FitWriter,
  fitEpoch,
  mesg,
  record,
  smallRide,
  start,
  wattsAt,
} from '../fit-bytes.ts';

const ids = (bytes: Uint8Array) => readFit(bytes).defects.map(({ id }) => id);
const column = (values: Float64Array | undefined) => [...(values ?? [])];

/** A ride of records alone. */
function records(
  fields: readonly (readonly [number, BaseTypeName, number?])[],
  ...rows: (number | null)[][]
) {
  const writer = new FitWriter().define(0, mesg.record, [record.timestamp, ...fields]);
  rows.forEach((row, i) => {
    writer.data(0, start + i, ...row);
  });
  return readFit(writer.bytes());
}

describe('an intact file', () => {
  test.each([
    ['little-endian', true],
    ['big-endian', false],
  ])('%s: every record, the totals and the device are read', (_, littleEndian) => {
    const ride = readFit(smallRide(60, littleEndian).bytes());
    expect(ride.defects).toEqual([]);
    expect(ride.time[0]).toBe(fitEpoch + start);
    expect(column(ride.channels.power)).toEqual(Array.from({ length: 60 }, (_, i) => wattsAt(i)));
    expect(ride.channels.cadence![8]).toBe(86);
    expect(ride.channels.heartRate![10]).toBe(130);
    expect(ride.channels.distance![3]).toBe(27);
    expect(ride.sport).toBe('cycling');
    expect(ride.indoors).toBe(true);
    expect(ride.device).toEqual({ maker: 'development', product: '7', serial: '12345' });
    expect(ride.totals).toEqual({ meanPower: 203, maxPower: 260, elapsedS: 60, timerS: 60 });
  });

  test('a header of 12 bytes, and a header checksum left at 0, are sound', () => {
    expect(ids(smallRide().bytes({ header: 12 }))).toEqual([]);
    const bytes = smallRide().bytes();
    bytes.fill(0, 12, 14);
    const checksum = crc([...bytes.subarray(0, -2)]);
    bytes.set([checksum & 0xff, checksum >> 8], bytes.length - 2);
    expect(ids(bytes)).toEqual([]);
  });

  test('where file_id is silent, the recorder itself is asked', () => {
    const writer = new FitWriter()
      .define(0, mesg.fileId, [[0, 'enum']])
      .data(0, 4)
      .define(1, mesg.deviceInfo, [
        [0, 'uint8'],
        [2, 'uint16'],
        [27, 'string', 12],
      ])
      .data(1, 3, 255, 'A strap')
      .data(1, 0, 255, 'A recorder');
    expect(readFit(writer.bytes()).device).toEqual({
      maker: 'development',
      product: 'A recorder',
      serial: null,
    });
  });

  test('a file without records has none, and is no fault of the reader', () => {
    expect(readFit(new FitWriter().bytes()).time).toHaveLength(0);
  });
});

describe('values', () => {
  // Invalid values: FIT Protocol, table "FIT Base Types and Invalid Values".
  test('an invalid value is missing, a zero is a zero', () => {
    const ride = records(
      [record.power, record.cadence, record.temperature],
      [0xffff, 0xff, 0x7f],
      [0, 0, 0],
      [250, 90, 21],
    );
    expect(column(ride.channels.power)).toEqual([Number.NaN, 0, 250]);
    expect(column(ride.channels.cadence)).toEqual([Number.NaN, 0, 90]);
    expect(column(ride.channels.temperature)).toEqual([Number.NaN, 0, 21]);
  });

  test('a channel with no valid value at all is absent', () => {
    const ride = records([record.power, record.cadence], [200, null], [210, null]);
    expect(Object.keys(ride.channels)).toEqual(['power']);
  });

  test('a heart rate of 0 means that no strap was heard', () => {
    expect(column(records([record.heartRate], [0], [140]).channels.heartRate)).toEqual([Number.NaN, 140]);
    expect(records([record.heartRate], [0], [0]).channels.heartRate).toBeUndefined();
  });

  test('enhanced speed and altitude come before the plain ones', () => {
    const enhanced = records([record.enhancedSpeed, record.enhancedAltitude], [11_500, 3000]);
    expect(column(enhanced.channels.speed)).toEqual([11.5]);
    expect(column(enhanced.channels.altitude)).toEqual([100]);
    const plain = records([record.speed, record.altitude], [9500, 2600]);
    expect(column(plain.channels.speed)).toEqual([9.5]);
    expect(column(plain.channels.altitude)).toEqual([20]);
    const both = records([record.speed, record.enhancedSpeed], [9500, 9700], [9600, null]);
    expect(column(both.channels.speed)).toEqual([9.7, 9.6]);
  });

  test('fractional cadence is added', () => {
    const ride = records([record.cadence, record.fractionalCadence], [88, 64], [89, null]);
    expect(column(ride.channels.cadence)).toEqual([88.5, 89]);
  });

  // FIT Profile, record field 8: 12 bits of speed in 1/100 m/s, 12 bits of distance in 1/16 m, accumulated.
  test('packed speed and distance are unpacked, over its turn at 256 m', () => {
    const packed = (speed: number, sixteenths: number): number[] => [
      speed & 0xff,
      (speed >> 8) | ((sixteenths & 0x0f) << 4),
      (sixteenths >> 4) & 0xff,
    ];
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, record.packedSpeedDistance]);
    writer.data(0, start, packed(1023, 4000)).data(0, start + 1, packed(255, 4095));
    writer.data(0, start + 2, [0xff, 0xff, 0xff]).data(0, start + 3, packed(1000, 64));
    const ride = readFit(writer.bytes());
    expect(column(ride.channels.speed)).toEqual([10.23, 2.55, Number.NaN, 10]);
    expect(column(ride.channels.distance)).toEqual([250, 255.9375, Number.NaN, 260]);
  });

  test('compressed time stamps continue the last full one', () => {
    const writer = new FitWriter()
      .define(0, mesg.record, [record.timestamp, record.power])
      .data(0, start, 200)
      .define(1, mesg.record, [record.power]);
    for (let i = 1; i <= 70; i++) writer.compressed(1, start + i, 200 + i);
    const ride = readFit(writer.bytes());
    expect(column(ride.time)).toEqual(Array.from({ length: 71 }, (_, i) => fitEpoch + start + i));
    expect(ride.channels.power![70]).toBe(270);
  });

  test('compressed time stamps of other messages continue those of records', () => {
    const writer = new FitWriter()
      .define(0, mesg.record, [record.timestamp, record.power])
      .define(1, mesg.event, [
        [0, 'enum'],
        [1, 'enum'],
      ])
      .data(0, start, 200);
    writer
      .compressed(1, start + 5, 0, 4)
      .compressed(1, start + 25, 0, 0)
      .data(0, start + 26, 210);
    expect(readFit(writer.bytes()).pauses).toEqual([[fitEpoch + start + 5, fitEpoch + start + 25]]);
  });

  test('records without a time are left out and counted', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, record.power]);
    writer
      .data(0, start, 200)
      .data(0, null, 900)
      .data(0, start + 1, 210);
    const ride = readFit(writer.bytes());
    expect(column(ride.channels.power)).toEqual([200, 210]);
    expect(ride.defects).toEqual([{ id: 'unreadable-values', values: { count: 1, column: 'time' } }]);
  });

  test('time is kept as recorded: repeated, backward and far', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, record.power]);
    const times = [start, start, start + 5, start + 2, start + 1_900_000_000];
    for (const time of times) writer.data(0, time, 200);
    expect(column(readFit(writer.bytes()).time)).toEqual(times.map((time) => time + fitEpoch));
  });
});

describe('power in an unusual type', () => {
  const types: BaseTypeName[] = ['sint16', 'uint32', 'sint32', 'float32', 'float64', 'uint16z', 'uint8'];
  test.each(types)('%s is recovered with its invalid value, and said', (type) => {
    const ride = records([[7, type]], [201], [baseTypes[type].invalid], [240]);
    expect(column(ride.channels.power)).toEqual([201, Number.NaN, 240]);
    expect(ride.defects).toEqual([{ id: 'odd-power-type', values: { type } }]);
  });

  // One byte holds a soft pedaller's watts at best.
  test.each<BaseTypeName>(['enum', 'sint8', 'uint8z', 'byte', 'uint32z'])('%s is recovered, too', (type) => {
    const ride = records([[7, type]], [101], [baseTypes[type].invalid], [40]);
    expect(column(ride.channels.power)).toEqual([101, Number.NaN, 40]);
  });

  test('text in the place of power is said, and is no power', () => {
    const ride = records([[7, 'string', 4]], [null], [null]);
    expect(ride.channels.power).toBeUndefined();
    expect(ride.defects).toEqual([{ id: 'odd-power-type', values: { type: 'type 7' } }]);
  });

  test('in one half of the file only, the other half stays as it is', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, record.power]);
    writer
      .data(0, start, 200)
      .define(0, mesg.record, [record.timestamp, [7, 'uint32']])
      .data(0, start + 1, 300);
    expect(column(readFit(writer.bytes()).channels.power)).toEqual([200, 300]);
  });
});

describe('developer fields', () => {
  /** Records with native power and developer fields, each described first. */
  function withFields(
    fields: readonly { name: string; units?: string; type?: BaseTypeName; index?: number }[],
    rows: readonly (readonly (number | null)[])[],
    native = true,
  ) {
    const writer = new FitWriter().define(0, mesg.fieldDescription, [
      [0, 'uint8'],
      [1, 'uint8'],
      [2, 'uint8'],
      [3, 'string', 32],
      [8, 'string', 16],
    ]);
    fields.forEach(({ name, units = 'watts', type = 'uint16', index = 0 }, i) => {
      writer.data(0, index, i, baseTypes[type].id, name, units);
    });
    writer.define(
      1,
      mesg.record,
      [record.timestamp, ...(native ? [record.power] : [])],
      fields.map(({ type = 'uint16', index = 0 }, i) => [i, baseTypes[type].size, index, type] as const),
    );
    rows.forEach((row, i) => {
      writer.data(1, start + i, ...row);
    });
    return readFit(writer.bytes());
  }

  test('a second meter is a further meter', () => {
    const ride = withFields(
      [{ name: 'Trainer Power' }],
      [
        [200, 190],
        [210, null],
        [220, 215],
      ],
    );
    expect(column(ride.channels.power)).toEqual([200, 210, 220]);
    expect(ride.extraMeters.map(({ name }) => name)).toEqual(['Trainer Power']);
    expect(column(ride.extraMeters[0]!.power)).toEqual([190, Number.NaN, 215]);
    expect(ride.defects).toEqual([]);
  });

  test('as many as 32 are read: each costs a column, however many a file describes', () => {
    const named = (count: number) => Array.from({ length: count }, (_, i) => ({ name: `Power ${i}` }));
    const rows = (count: number) => [1, 2].map((k) => [200, ...named(count).map((_, i) => 100 * k + i)]);
    expect(withFields(named(32), rows(32)).extraMeters).toHaveLength(32);
    expect(() => withFields(named(33), rows(33))).toThrow('more than 32 added fields of power');
  });

  test.each([
    [
      'a copy of the native power',
      [
        [200, 200],
        [210, 210],
      ],
    ],
    [
      'an absent meter, zero throughout',
      [
        [200, 0],
        [210, 0],
      ],
    ],
    [
      'one without a value',
      [
        [200, null],
        [210, null],
      ],
    ],
  ])('%s is none', (_, rows) => {
    expect(withFields([{ name: 'Power' }], rows).extraMeters).toEqual([]);
  });

  test.each([
    'Power Balance',
    'Left Power',
    'Avg Power',
    'Target Power',
    'Form Power',
    'Empower',
    'Power Zone',
  ])('"%s" is no meter', (name) => {
    expect(
      withFields(
        [{ name }],
        [
          [200, 150],
          [210, 160],
        ],
      ).extraMeters,
    ).toEqual([]);
  });

  test('nor is a field in another unit', () => {
    expect(withFields([{ name: 'Power', units: '%' }], [[200, 50]]).extraMeters).toEqual([]);
  });

  test.each(['power', 'timestamp', 'heart_rate'])(
    'one named like the native %s leaves that alone',
    (name) => {
      const ride = withFields(
        [{ name, units: '' }],
        [
          [200, 7],
          [210, 8],
        ],
      );
      expect(column(ride.channels.power)).toEqual([200, 210]);
      expect(column(ride.time)).toEqual([start + fitEpoch, start + fitEpoch + 1]);
      expect(ride.channels.heartRate).toBeUndefined();
      expect(ride.defects).toEqual([{ id: 'colliding-field', values: { name } }]);
    },
  );

  test('one named power that differs from the native is a further meter, too', () => {
    const ride = withFields(
      [{ name: 'power' }],
      [
        [200, 230],
        [210, 240],
      ],
    );
    expect(column(ride.channels.power)).toEqual([200, 210]);
    expect(column(ride.extraMeters[0]!.power)).toEqual([230, 240]);
  });

  test('two of one name, by two apps, stay two', () => {
    const ride = withFields(
      [{ name: 'Power' }, { name: 'Power', index: 1 }],
      [
        [200, 180, 220],
        [210, 185, 230],
      ],
    );
    expect(ride.extraMeters.map(({ power }) => column(power))).toEqual([
      [180, 185],
      [220, 230],
    ]);
  });

  test.each(['__proto__', 'constructor', 'toString'])('one named %s does no harm', (name) => {
    const ride = withFields(
      [{ name }],
      [
        [200, 7],
        [210, 8],
      ],
    );
    expect(column(ride.channels.power)).toEqual([200, 210]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test('where there is no native power, one stands in for it, and it is said', () => {
    const ride = withFields([{ name: 'Power' }], [[190], [215]], false);
    expect(column(ride.channels.power)).toEqual([190, 215]);
    expect(ride.extraMeters).toEqual([]);
    expect(ride.defects).toEqual([{ id: 'power-in-developer-field', values: { name: 'Power' } }]);
  });

  test('a type that is not in the protocol costs nothing but itself', () => {
    const writer = new FitWriter().define(0, mesg.fieldDescription, [
      [0, 'uint8'],
      [1, 'uint8'],
      [2, 'uint8'],
      [3, 'string', 8],
    ]);
    writer.data(0, 0, 0, 0x55, 'Power');
    writer
      .define(1, mesg.record, [record.timestamp, record.power], [[0, 2, 0, 'uint16']])
      .data(1, start, 200, 5);
    expect(column(readFit(writer.bytes()).channels.power)).toEqual([200]);
  });
});

describe('balance', () => {
  // FIT Profile, type left_right_balance: mask 0x7F is the share, 0x80 says that it is the right leg's.
  test('with the flag the left share is what the right one leaves', () => {
    const ride = records([record.power, record.balance], [200, 0x80 | 53], [210, 0x80 | 49]);
    expect(column(ride.channels.balance)).toEqual([47, 51]);
    expect(ride.balanceSide).toBe('right');
  });

  test('without the flag the leg is unknown', () => {
    const ride = records([record.power, record.balance], [200, 47], [210, null]);
    expect(column(ride.channels.balance)).toEqual([47, Number.NaN]);
    expect(ride.balanceSide).toBe('unknown');
  });

  test('where only some records set it, the others are left out', () => {
    const ride = records([record.power, record.balance], [200, 50], [210, 0x80 | 49]);
    expect(column(ride.channels.balance)).toEqual([Number.NaN, 51]);
  });

  test('none, or a share beyond 100 %, is none', () => {
    expect(records([record.power], [200]).balanceSide).toBeNull();
    expect(records([record.power, record.balance], [200, 120]).channels.balance).toBeUndefined();
  });
});

describe('positions', () => {
  test('are dropped, and say that the ride was outdoors', () => {
    const ride = records([record.power, record.latitude, record.longitude], [200, 123_456_789, 98_765_432]);
    expect(ride.indoors).toBe(false);
    expect(Object.keys(ride.channels)).toEqual(['power']);
    expect(
      JSON.stringify(ride, (_, value) => (ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value)),
    ).not.toMatch(/10\.3|8\.2[78]|123456789|98765432/);
  });

  test('are outweighed by a statement: a virtual ride has them, too', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, record.latitude]);
    writer
      .data(0, start, 123_456_789)
      .define(1, mesg.session, [
        [5, 'enum'],
        [6, 'enum'],
      ])
      .data(1, 2, 58);
    expect(readFit(writer.bytes()).indoors).toBe(true);
  });

  test('without either it is unknown', () => {
    expect(records([record.power], [200]).indoors).toBeNull();
  });
});

describe('pauses, laps, sessions', () => {
  test('every kind of stop begins a pause, the next start ends it', () => {
    const writer = new FitWriter().define(0, mesg.event, [
      [253, 'uint32'],
      [0, 'enum'],
      [1, 'enum'],
    ]);
    const stop = { stop: 1, stopAll: 4, stopDisable: 8, stopDisableAll: 9 };
    writer.data(0, start, 0, 0);
    Object.values(stop).forEach((type, i) => {
      writer.data(0, start + 100 * i + 50, 0, type).data(0, start + 100 * i + 60, 0, type);
      writer.data(0, start + 100 * i + 80, 0, 0);
    });
    writer.data(0, start + 900, 0, stop.stopAll).data(0, start + 910, 8, 0);
    expect(
      readFit(writer.bytes()).pauses.map(([from, to]) => [from - fitEpoch - start, to - fitEpoch - start]),
    ).toEqual([
      [50, 80],
      [150, 180],
      [250, 280],
      [350, 380],
    ]);
  });

  test('laps have their times and mean', () => {
    const writer = new FitWriter().define(0, mesg.lap, [
      [253, 'uint32'],
      [2, 'uint32'],
      [7, 'uint32'],
      [19, 'uint16'],
    ]);
    writer.data(0, start + 300, start, 300_000, 231).data(0, start + 400, start + 300, null, null);
    const at = start + fitEpoch;
    expect(readFit(writer.bytes()).laps).toEqual([
      { from: at, to: at + 300, meanPower: 231 },
      { from: at + 300, to: at + 400 },
    ]);
  });

  const session = [
    [2, 'uint32'],
    [5, 'enum'],
    [7, 'uint32'],
    [8, 'uint32'],
    [9, 'uint32'],
    [20, 'uint16'],
    [21, 'uint16'],
    [48, 'uint32'],
    [16, 'uint8'],
    [17, 'uint8'],
  ] as const;

  test('several sessions are said; their totals are put together', () => {
    const writer = new FitWriter().define(0, mesg.session, session);
    writer.data(0, start, 2, 1_000_000, 900_000, 1_000_000, 200, 400, 180_000, 0, 0);
    writer.data(0, start + 2000, 2, 400_000, 300_000, 500_000, 300, 380, 90_000, 150, 170);
    const { totals, defects } = readFit(writer.bytes());
    expect(defects).toEqual([{ id: 'several-sessions', values: { sessions: 2 } }]);
    expect(totals).toEqual({
      meanPower: (200 * 900 + 300 * 300) / 1200,
      maxPower: 400,
      workJ: 270_000,
      timerS: 1200,
      distanceM: 15_000,
      elapsedS: 2400,
    });
  });

  test('a ride among other sports makes the sport', () => {
    const writer = new FitWriter()
      .define(0, mesg.session, [[5, 'enum']])
      .data(0, 1)
      .data(0, 2);
    expect(readFit(writer.bytes()).sport).toBe('cycling');
    expect(
      readFit(
        new FitWriter()
          .define(0, mesg.sport, [[0, 'enum']])
          .data(0, 1)
          .bytes(),
      ).sport,
    ).toBe('running');
  });

  test('a motor makes the sport: one leg of several, or what its battery tells whatever sport was chosen', () => {
    const legs = new FitWriter()
      .define(0, mesg.session, [[5, 'enum']])
      .data(0, 2)
      .data(0, 21);
    expect(readFit(legs.bytes()).sport).toBe('e-biking');
    const told = (battery: number | null) =>
      readFit(
        new FitWriter()
          .define(0, mesg.session, [[5, 'enum']])
          .data(0, 2)
          .define(1, mesg.record, [
            [253, 'uint32'],
            [7, 'uint16'],
            [118, 'uint8'],
          ])
          .data(1, start, 200, battery)
          .bytes(),
      ).sport;
    // Field 118 of a record: ebike_battery_level, % (FIT Profile).
    expect(told(80)).toBe('e-biking');
    expect(told(null)).toBe('cycling');
    expect(told(0)).toBe('cycling');
    expect(told(1)).toBe('e-biking');
  });

  test('a total that one session lacks is not stated', () => {
    const writer = new FitWriter().define(0, mesg.session, [
      [8, 'uint32'],
      [20, 'uint16'],
    ]);
    expect(readFit(writer.data(0, 900_000, 200).data(0, 300_000, null).bytes()).totals).toEqual({
      timerS: 1200,
    });
  });
});

describe('damage', () => {
  const whole = smallRide(60).bytes();

  test('truncated: the whole messages before the end are kept, and it is said', () => {
    const cut = readFit(whole.subarray(0, whole.length - 200));
    const kept = cut.time.length;
    expect(kept).toBeGreaterThan(40);
    expect(cut.defects[0]).toMatchObject({ id: 'truncated', values: { kept } });
    expect(column(cut.channels.power)).toEqual(Array.from({ length: kept }, (_, i) => wattsAt(i)));
  });

  test('a missing checksum is a truncation of two bytes', () => {
    expect(readFit(whole.subarray(0, -2)).defects).toEqual([
      { id: 'truncated', values: { kept: 60, lostBytes: 2 } },
    ]);
  });

  test('a wrong checksum is said, and the content read', () => {
    const ride = readFit(smallRide(60).bytes({ checksum: 1 }));
    expect(ride.defects).toEqual([{ id: 'checksum-wrong', values: {} }]);
    expect(ride.time).toHaveLength(60);
  });

  test('a damaged header checksum is said', () => {
    const bytes = whole.slice();
    bytes[12]! ^= 0x55;
    expect(ids(bytes)).toEqual(['checksum-wrong']);
  });

  test.each([0, 300])('never closed (size %d in the header): every record is recovered', (size) => {
    const ride = readFit(smallRide(60).bytes({ size }).subarray(0, -2));
    expect(ride.defects).toEqual([{ id: 'never-closed', values: { kept: 60 } }]);
    expect(ride.time).toHaveLength(60);
    expect(column(ride.channels.power)).toEqual(Array.from({ length: 60 }, (_, i) => wattsAt(i)));
  });

  test('a header that claims two gigabytes: its number is wrong, and nothing was lost', () => {
    const size = 0x7fff_ffff;
    const ride = readFit(smallRide(60).bytes({ size }));
    expect(ride.defects).toEqual([
      { id: 'size-impossible', values: { stated: 14 + size + 2, held: whole.length, kept: 60 } },
    ]);
    expect(column(ride.channels.power)).toEqual(Array.from({ length: 60 }, (_, i) => wattsAt(i)));
    expect(plain(defectSaid(ride.defects[0]!))).toBe(
      'The file’s header states 2,147,483,663 bytes, more than any recording holds, and the file has 920: 60 records were read, to the end of its messages. Copy the file from the head unit again.',
    );
  });

  test('framing that breaks in the middle ends the kept part', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, record.power]);
    writer
      .data(0, start, 200)
      .data(0, start + 1, 210)
      .raw(0x0c, 1, 2, 3);
    const ride = readFit(writer.bytes());
    expect(column(ride.channels.power)).toEqual([200, 210]);
    expect(ride.defects).toEqual([{ id: 'truncated', values: { kept: 2, lostBytes: 6 } }]);
  });

  test('checksum bytes never become a record', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp, [7, 'uint16']]);
    writer.data(0, start, 200).raw(0x00, 0x10, 0x20, 0x30, 0x40);
    const ride = readFit(writer.bytes({ checksum: 0x7fff }));
    expect(column(ride.channels.power)).toEqual([200]);
  });

  test('chained recordings are read as one', () => {
    const first = smallRide(40).bytes();
    const second = smallRide(20).bytes();
    const both = new Uint8Array(first.length + second.length);
    both.set(first);
    both.set(second, first.length);
    const ride = readFit(both);
    expect(ride.time).toHaveLength(60);
    expect(ids(both)).toEqual(['chained', 'several-sessions']);
    both[first.length + 200]! ^= 0xff;
    expect(ids(both)).toContain('checksum-wrong');
  });

  test('bytes after the end are said; padding with zeros is nothing', () => {
    const padded = new Uint8Array(whole.length + 30);
    padded.set(whole);
    expect(readFit(padded).defects).toEqual([]);
    padded[whole.length + 20] = 9;
    expect(readFit(padded).defects).toEqual([{ id: 'trailing-bytes', values: { bytes: 30 } }]);
  });

  test('a time beyond the range of the format is a problem', () => {
    const writer = new FitWriter().define(0, mesg.record, [record.timestamp]).data(0, 0xfffffffe);
    expect(() => readFit(writer.compressed(0, 0).bytes())).toThrow(
      expect.objectContaining({ name: 'Problem', code: 'format-damaged' }),
    );
  });

  test('a header that cannot be followed is a problem', () => {
    const bytes = whole.slice();
    bytes[0] = 99;
    expect(() => readFit(bytes)).toThrow(
      expect.objectContaining({ name: 'Problem', code: 'format-damaged' }),
    );
  });
});

describe('limits', () => {
  test('a crafted file of one record a byte is refused before it is decoded', () => {
    const header = new FitWriter().define(0, mesg.record, []).bytes().subarray(0, 20);
    const bytes = new Uint8Array(10_000_000);
    bytes.set(header);
    new DataView(bytes.buffer).setUint32(4, bytes.length - 16, true);
    expect(() => readFit(bytes)).toThrow(expect.objectContaining({ name: 'Problem', code: 'format-limits' }));
  });

  test('so is one of many fields a record', () => {
    const fields = Array.from({ length: 255 }, (_, i) => [i, 'uint8'] as const);
    const head = new FitWriter().define(0, mesg.record, fields).bytes().subarray(0, -2);
    const bytes = new Uint8Array(head.length + 256 * 20_000);
    bytes.set(head);
    new DataView(bytes.buffer).setUint32(4, bytes.length - 16, true);
    expect(() => readFit(bytes)).toThrow(expect.objectContaining({ name: 'Problem', code: 'format-limits' }));
  });

  test('so are endless chains', () => {
    const one = new FitWriter().bytes();
    const bytes = new Uint8Array(one.length * 100);
    for (let i = 0; i < 100; i++) bytes.set(one, i * one.length);
    expect(() => readFit(bytes)).toThrow(expect.objectContaining({ name: 'Problem', code: 'format-limits' }));
  });
});
