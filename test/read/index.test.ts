import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Problem, sentence } from '../../src/problem.ts';
import { read } from '../../src/read/index.ts';
import { sniff } from '../../src/read/sniff.ts';
import { FitWriter, smallRide } from './fit-bytes.ts';
import { soundRecording } from './sound.ts';
import { problem, text, zip } from './zip-bytes.ts';

const file = (content: string | Uint8Array, name = 'x') => ({
  name,
  bytes: typeof content === 'string' ? text(content) : content,
});

const tcx = `<?xml version="1.0"?><TrainingCenterDatabase><Activities><Activity Sport="Biking"><Lap StartTime="2026-01-10T18:00:00Z">
<Track><Trackpoint><Time>2026-01-10T18:00:00Z</Time></Trackpoint></Track></Lap></Activity></Activities></TrainingCenterDatabase>`;
const gpx =
  '<gpx><trk><trkseg><trkpt lat="1" lon="2"><time>2026-01-10T18:00:00Z</time></trkpt></trkseg></trk></gpx>';
const csv = 'time;power\n0;200\n1;210\n';

test('a recording carries the SHA-256 of its file', async () => {
  const { sha256 } = await read(file(csv));
  expect(sha256).toBe(createHash('sha256').update(csv).digest('hex'));
});

describe('formats are told apart by content', () => {
  test.each([
    ['fit', smallRide(3).bytes()],
    ['tcx', text(tcx)],
    ['tcx', text(`\uFEFF \n<!-- a comment --><!DOCTYPE x><tc:${tcx.slice(tcx.indexOf('Training'))}`)],
    ['gpx', text(gpx)],
    ['csv', text(csv)],
    ['zip', zip([])],
    ['gzip', Uint8Array.of(0x1f, 0x8b, 8, 0)],
    ['table', text('a,b\n1,2\n')],
    ['web page', text('<!DOCTYPE html>\n<html><body>Sign in</body></html>')],
    ['other text', text('{"time": [1, 2], "power": [3, 4]}')],
    ['other text', text('<kml></kml>')],
    ['other text', text('hello')],
    ['other bytes', Uint8Array.of(0x25, 0x50, 0, 1, 2)],
    ['nothing', new Uint8Array(0)],
  ])('%s', (content, bytes) => {
    expect(sniff(bytes)).toBe(content);
  });

  test.each([
    ['fit', smallRide(3).bytes()],
    ['tcx', tcx],
    ['gpx', gpx],
    ['csv', csv],
  ])('a %s file is read whatever its name', async (format, content) => {
    const recording = await read(file(content, 'notes.docx'));
    expect(recording).toMatchObject({ name: 'notes.docx', format });
  });
});

describe('what cannot be read says what it is and what to do', () => {
  test.each([
    ['', 'format-unknown', /empty/],
    ['<html></html>', 'format-unknown', /web page/],
    ['hello', 'format-unknown', /not a recording/],
    [Uint8Array.of(1, 2, 3, 0, 0), 'format-unknown', /not a recording/],
    ['name,age\na,1\n', 'format-unknown', /its columns are: name, age/],
    [new FitWriter().bytes(), 'no-records', /no record with a time/],
    ['<gpx><rte><rtept lat="1" lon="2"/></rte></gpx>', 'no-records', /planned route/],
  ])('%j', async (content, code, words) => {
    await problem(read(file(content)), code, words);
  });

  test('the problem is placed at the name of the file, once', async () => {
    const error = await read(file('', 'ride.fit')).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(Problem);
    expect(sentence(error as Problem)).toBe(
      'ride.fit: this file is empty. Hand in the original file from the head unit or the training app.',
    );
  });
});

test('a ride without power, and a run, are returned like any other', async () => {
  const recording = await read(file(tcx.replace('Biking', 'Running')));
  expect(recording.sport).toBe('running');
  expect(recording.channels.power).toBeUndefined();
});

test('the same bytes make the same recording', async () => {
  const bytes = smallRide(40).bytes();
  expect(await read(file(bytes))).toEqual(await read(file(bytes.slice())));
});

test('whatever the bytes: a recording or a problem', async () => {
  const seeds = [
    smallRide(20).bytes(),
    text(tcx),
    text(gpx),
    text(csv),
    zip([{ name: 'a', bytes: text(csv) }]),
  ];
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...seeds),
      fc.array(fc.tuple(fc.nat({ max: 10_000 }), fc.nat({ max: 255 })), { maxLength: 5 }),
      fc.nat({ max: 10_000 }),
      async (seed, changes, length) => {
        const bytes = seed.slice(0, length % (seed.length + 1) || seed.length);
        for (const [at, value] of changes) bytes[at % bytes.length] = value;
        try {
          soundRecording(await read(file(bytes)));
        } catch (error) {
          expect(error).toBeInstanceOf(Problem);
        }
      },
    ),
    { numRuns: 600 },
  );
});
