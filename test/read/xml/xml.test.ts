import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limits } from '../../../src/read/limits.ts';
import { readGpx } from '../../../src/read/xml/gpx.ts';
import { readTcx } from '../../../src/read/xml/tcx.ts';
import { sound } from '../sound.ts';
import { text } from '../zip-bytes.ts';

const at = (second: number) => new Date(Date.UTC(2026, 0, 10, 18) + second * 1000).toISOString();
const clock = (second: number) => Date.UTC(2026, 0, 10, 18) / 1000 + second;
const column = (values: Float64Array | undefined) => [...(values ?? [])];

const trackpoint = (second: number, inside: string) =>
  `<Trackpoint><Time>${at(second)}</Time>${inside}</Trackpoint>`;
const lap = (inside: string, start = 0) => `<Lap StartTime="${at(start)}">${inside}</Lap>`;
const activity = (inside: string, sport = 'Biking') =>
  `<?xml version="1.0" encoding="UTF-8"?>
<TrainingCenterDatabase xmlns="urn:a" xmlns:ns3="urn:b"><Activities><Activity Sport="${sport}"><Id>${at(0)}</Id>${inside}
<Creator><Name>Head unit</Name><UnitId>77</UnitId></Creator></Activity></Activities></TrainingCenterDatabase>`;
const tcx = (inside: string) => readTcx(text(activity(inside)));

describe('TCX', () => {
  const watts = (value: number, tag = 'ns3:Watts') =>
    `<Extensions><ns3:TPX><${tag}>${value}</${tag}></ns3:TPX></Extensions>`;

  test('every channel of a trackpoint', () => {
    const ride = tcx(
      lap(
        `<Track>${trackpoint(
          5,
          `<AltitudeMeters>12.5</AltitudeMeters><DistanceMeters>40</DistanceMeters>
         <HeartRateBpm xsi:type="x"><Value>141</Value></HeartRateBpm><Cadence>88</Cadence>
         <Extensions><ns3:TPX><ns3:Speed>9.25</ns3:Speed><ns3:Watts>231</ns3:Watts></ns3:TPX></Extensions>`,
        )}</Track>`,
      ),
    );
    expect(column(ride.time)).toEqual([clock(5)]);
    expect(
      Object.fromEntries(Object.entries(ride.channels).map(([name, values]) => [name, values[0]])),
    ).toEqual({
      power: 231,
      cadence: 88,
      heartRate: 141,
      speed: 9.25,
      altitude: 12.5,
      distance: 40,
    });
    expect(ride).toMatchObject({ sport: 'cycling', indoors: null, defects: [] });
    expect(ride.device).toEqual({ maker: null, product: 'Head unit', serial: '77' });
  });

  test.each(['Watts', 'ns3:Watts', 'x:Watts', 'watts'])('power as <%s>', (tag) => {
    expect(column(tcx(lap(`<Track>${trackpoint(0, watts(210, tag))}</Track>`)).channels.power)).toEqual([
      210,
    ]);
  });

  test('missing watts are missing, not 0', () => {
    const ride = tcx(
      lap(`<Track>${trackpoint(0, watts(0))}${trackpoint(1, '')}${trackpoint(2, watts(220))}</Track>`),
    );
    expect(column(ride.channels.power)).toEqual([0, Number.NaN, 220]);
  });

  test('averages of a lap are totals, never samples', () => {
    const summary = (seconds: number) =>
      `<TotalTimeSeconds>${seconds}</TotalTimeSeconds><DistanceMeters>${seconds * 10}</DistanceMeters>
       <AverageHeartRateBpm><Value>140</Value></AverageHeartRateBpm><MaximumHeartRateBpm><Value>150</Value></MaximumHeartRateBpm>
       <Cadence>80</Cadence>`;
    const extension = (mean: number, max: number) =>
      `<Extensions><ns3:LX><ns3:AvgWatts>${mean}</ns3:AvgWatts><ns3:MaxWatts>${max}</ns3:MaxWatts></ns3:LX></Extensions>`;
    const ride = tcx(
      lap(`${summary(100)}<Track>${trackpoint(0, '')}${trackpoint(99, '')}</Track>${extension(200, 300)}`) +
        lap(
          `${summary(300)}<Track>${trackpoint(100, '')}${trackpoint(399, '')}</Track>${extension(240, 280)}`,
          100,
        ),
    );
    expect(ride.channels).toEqual({});
    expect(ride.totals).toEqual({
      timerS: 400,
      distanceM: 4000,
      meanHeartRate: 140,
      maxHeartRate: 150,
      meanCadence: 80,
      meanPower: 230,
      maxPower: 300,
    });
    expect(ride.laps).toEqual([
      { from: clock(0), to: clock(99), meanPower: 200 },
      { from: clock(100), to: clock(399), meanPower: 240 },
    ]);
  });

  test('a second track in one lap is a pause; the next lap is none', () => {
    const track = (...seconds: number[]) =>
      `<Track>${seconds.map((second) => trackpoint(second, '')).join('')}</Track>`;
    const ride = tcx(lap(track(0, 10) + track(60, 70)) + lap(track(100, 110), 100));
    expect(ride.pauses).toEqual([[clock(11), clock(60)]]);
  });

  test('positions are dropped and mean outdoors', () => {
    const position =
      '<Position><LatitudeDegrees>47.123</LatitudeDegrees><LongitudeDegrees>8.456</LongitudeDegrees></Position>';
    const ride = tcx(lap(`<Track>${trackpoint(0, position)}</Track>`));
    expect(ride.indoors).toBe(false);
    expect(JSON.stringify(ride)).not.toMatch(/47\.123|8\.456/);
  });

  test('a planned course is no recording', () => {
    const course = `<TrainingCenterDatabase><Courses><Course><Track>${trackpoint(0, '')}</Track></Course></Courses></TrainingCenterDatabase>`;
    expect(readTcx(text(course)).time).toHaveLength(0);
  });

  test('several activities are said', () => {
    const one = lap(`<Track>${trackpoint(0, '')}</Track>`);
    const both = activity(one).replace(
      '</Activities>',
      `<Activity Sport="Running">${one}</Activity></Activities>`,
    );
    const ride = readTcx(text(both));
    expect(ride.sport).toBe('cycling');
    expect(ride.defects).toEqual([{ id: 'several-sessions', values: { sessions: 2 } }]);
  });
});

const point = (second: number, inside: string, time = at(second)) =>
  `<trkpt lat="47.1" lon="8.4"><ele>410.5</ele><time>${time}</time>${inside}</trkpt>`;
const track = (inside: string, type = 'cycling') =>
  `<?xml version="1.0"?><gpx version="1.1" creator="Head unit"><trk><name>Ride</name><type>${type}</type><trkseg>${inside}</trkseg></trk></gpx>`;
const gpx = (inside: string, type?: string) => readGpx(text(track(inside, type)));

describe('GPX', () => {
  test.each([
    '<extensions><power>250</power></extensions>',
    '<extensions><p:power>250</p:power></extensions>',
    '<extensions><a:PowerExtension><a:PowerInWatts>250</a:PowerInWatts></a:PowerExtension></extensions>',
    '<extensions><t:TrackPointExtension><t:power>250</t:power></t:TrackPointExtension></extensions>',
    '<extensions><TPX><Watts>250</Watts></TPX></extensions>',
    '<extensions><power> 250 </power></extensions>',
    '<extensions><power><![CDATA[250]]></power></extensions>',
  ])('power as %s', (inside) => {
    expect(column(gpx(point(0, inside)).channels.power)).toEqual([250]);
  });

  test('every channel of a trackpoint', () => {
    const ride = gpx(
      point(
        0,
        '<extensions><t:TrackPointExtension><t:atemp>21</t:atemp><t:hr>139</t:hr><t:cad>91</t:cad><t:speed>8.5</t:speed></t:TrackPointExtension><power>0</power></extensions>',
      ),
    );
    expect(
      Object.fromEntries(Object.entries(ride.channels).map(([name, values]) => [name, values[0]])),
    ).toEqual({
      power: 0,
      cadence: 91,
      heartRate: 139,
      speed: 8.5,
      altitude: 410.5,
      temperature: 21,
    });
    expect(ride).toMatchObject({ sport: 'cycling', indoors: false, laps: [], totals: {}, defects: [] });
    expect(ride.device.product).toBe('Head unit');
  });

  test('values outside a trackpoint are none', () => {
    const ride = readGpx(
      text(track(point(0, '')).replace('<trkseg>', '<extensions><power>999</power></extensions><trkseg>')),
    );
    expect(ride.channels.power).toBeUndefined();
  });

  test('a virtual ride says so', () => {
    expect(gpx(point(0, ''), 'VirtualRide')).toMatchObject({ sport: 'cycling', indoors: true });
    expect(gpx(point(0, ''), '')).toMatchObject({ sport: null, indoors: false });
  });

  // GPX 1.1 schema, trkseg: a new segment where reception was lost or the receiver turned off.
  test('a new segment is a pause', () => {
    const ride = gpx(
      `${point(0, '')}${point(9, '')}</trkseg><trkseg>${point(50, '')}</trkseg><trkseg>${point(51, '')}`,
    );
    expect(ride.pauses).toEqual([[clock(10), clock(50)]]);
  });

  test('times: zones, fractions, and none', () => {
    const ride = gpx(
      point(0, '', '2026-01-10T19:00:00.500+01:00') + point(0, '', '2026-01-10T17:30:01-0030'),
    );
    expect(column(ride.time)).toEqual([clock(0.5), clock(1)]);
    expect(ride.defects).toEqual([]);
    const bare = gpx(point(0, '', '2026-01-10T18:00:00') + point(0, '', 'yesterday'));
    expect(column(bare.time)).toEqual([clock(0)]);
    expect(bare.defects.map(({ id }) => id)).toEqual(['zone-assumed', 'unreadable-values']);
  });

  test('values that are no numbers are missing and counted', () => {
    const power = (value: string) => `<extensions><power>${value}</power></extensions>`;
    const ride = gpx(['200', 'n/a', '', '0x10', '1e999'].map((value, i) => point(i, power(value))).join(''));
    expect(column(ride.channels.power)).toEqual([200, ...new Array(4).fill(Number.NaN)]);
    expect(ride.defects).toEqual([{ id: 'unreadable-values', values: { count: 3, column: 'power' } }]);
  });
});

describe('markup', () => {
  test('a byte order mark, white space before the declaration, and UTF-16 are understood', () => {
    const whole = track(point(0, ''));
    expect(readGpx(text(`\uFEFF\n  ${whole}`)).time).toHaveLength(1);
    const wide = new Uint8Array(2 + whole.length * 2);
    wide.set([0xff, 0xfe]);
    for (let i = 0; i < whole.length; i++) wide[2 + i * 2] = whole.charCodeAt(i);
    expect(readGpx(wide).time).toHaveLength(1);
  });

  test('that breaks off keeps the whole trackpoints before', () => {
    const whole = track(`${point(0, '')}\n${point(1, '')}\n${point(2, '')}`);
    const ride = readGpx(text(whole.slice(0, whole.lastIndexOf('<time>') + 9)));
    expect(column(ride.time)).toEqual([clock(0), clock(1)]);
    expect(ride.defects).toEqual([{ id: 'markup-ends-early', values: { line: 3 } }]);
  });

  test('that breaks in the middle keeps what came before', () => {
    const ride = gpx(`${point(0, '')}${point(1, '')}</wrong>${point(2, '')}`);
    expect(ride.time).toHaveLength(2);
    expect(ride.defects.map(({ id }) => id)).toEqual(['markup-ends-early']);
  });

  test.each(['Up & down', 'Up &c; down', 'Up &', 'Up \u0001 down'])(
    'a fault before the first trackpoint costs nothing: %j',
    (name) => {
      const ride = readGpx(text(track(point(0, '')).replace('Ride', name)));
      expect(ride.time).toHaveLength(1);
      expect(ride.defects).toEqual([]);
    },
  );

  test('custom entities are not expanded', () => {
    const bomb = `<!DOCTYPE gpx [<!ENTITY a "9999999999"><!ENTITY b "&a;&a;&a;&a;">]>`;
    const ride = readGpx(
      text(bomb + track(point(0, '<extensions><power>&b;</power></extensions>')).slice(21)),
    );
    expect(ride.channels.power).toBeUndefined();
  });

  test('nested too deep is refused', () => {
    const deep = '<a>'.repeat(100_000);
    expect(() => readGpx(text(`<gpx>${deep}`))).toThrow(
      expect.objectContaining({ name: 'Problem', code: 'format-limits' }),
    );
    const allowed = limits.xmlDepth - 4;
    expect(
      gpx(point(0, `${'<a>'.repeat(allowed - 1)}<power>7</power>${'</a>'.repeat(allowed - 1)}`)).channels
        .power,
    ).toEqual(Float64Array.of(7));
  });

  test('endless trackpoints are refused, however empty', () => {
    const points = '<trkpt></trkpt>'.repeat(limits.trackpoints + 1);
    expect(() => gpx(points)).toThrow(expect.objectContaining({ name: 'Problem', code: 'format-limits' }));
  });

  test('any truncation or changed character is read or is a problem', () => {
    const good = [
      activity(lap(`<Track>${trackpoint(0, '<Cadence>80</Cadence>')}${trackpoint(1, '')}</Track>`)),
      track(point(0, '<extensions><power>250</power></extensions>') + point(1, '')),
    ];
    for (const whole of good) {
      for (let length = 0; length < whole.length; length += 3) {
        sound(() => readGpx(text(whole.slice(0, length))));
        sound(() => readTcx(text(whole.slice(0, length))));
      }
    }
    fc.assert(
      fc.property(
        fc.constantFrom(...good),
        fc.array(fc.tuple(fc.nat({ max: 2000 }), fc.constantFrom(...'<>/&;"\'= \0é]!-0')), {
          minLength: 1,
          maxLength: 4,
        }),
        (whole, changes) => {
          const letters = [...whole];
          for (const [place, letter] of changes) letters[place % letters.length] = letter;
          const bytes = text(letters.join(''));
          sound(() => readGpx(bytes));
          sound(() => readTcx(bytes));
        },
      ),
      { numRuns: 500 },
    );
  });
});
