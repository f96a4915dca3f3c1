import { describe, expect, it } from 'vitest';
import { marksOf, readMarks } from '../../src/event/fingerprint.ts';
import marksSchema from '../../src/event/marks.schema.json' with { type: 'json' };
import { sharedContent } from '../../src/event/shared.ts';
import { sharedSaid } from '../../src/report/event/words.ts';
import { plain } from '../../src/report/words/sentence.ts';
import type { EventRow } from '../../src/types.ts';
import { drawSubmission } from '../make/index.ts';

const ride = (seed: string) =>
  drawSubmission(seed, { kind: 'bunch race', race: 'one race', minutes: 40, seconds: 0 }).primary.channels;
const a = ride('a');
const b = ride('b');

async function row(number: string, channels: typeof a): Promise<EventRow> {
  const marks = await marksOf({ channels });
  return { number, recordings: [{ role: 'primary', marks }] } as unknown as EventRow;
}
const parsed = (text: string) => {
  const found: unknown[] = [];
  readMarks(text, (channel, at, digest) => found.push({ channel, at, digest: digest.toString(16) }));
  return found;
};
const withPower = (channels: typeof a, power: Float64Array) => ({ ...channels, power });

describe('marks of content', () => {
  it('are found again in a copy, wherever it lies and whatever stands around it', async () => {
    const copied = a.power!.slice(300, 1500);
    const power = b.power!.slice();
    power.set(copied, 700);
    const rows = [await row('1', { power: a.power! }), await row('2', { power })];
    const [shared, ...others] = sharedContent(rows, []);
    expect(others).toEqual([]);
    expect(shared).toMatchObject({ a: { number: '1' }, b: { number: '2' } });
    expect(shared!.seconds).toBeLessThanOrEqual(1200);
    expect(shared!.seconds).toBeGreaterThan(500);
  });

  it('are not shared by two riders of one race, who ride the same surges', async () => {
    expect(sharedContent([await row('1', a), await row('2', b)], [])).toEqual([]);
  });

  it('are found in cadence where somebody rescaled power, and in how power rises and falls', async () => {
    const power = a.power!.map((watts) => Math.round(watts * 1.05));
    const [shared] = sharedContent([await row('1', a), await row('2', withPower(a, power))], []);
    expect(shared!.alike.map(({ what }) => what)).toEqual(['cadence', 'rises and falls']);
    // Two and a half minutes put into another's ride, where nothing but power was recorded.
    const put = b.power!.slice();
    put.set(power.subarray(900, 1050), 400);
    const [part] = sharedContent([await row('1', a), await row('2', { power: put })], []);
    expect(part!.alike).toEqual([{ what: 'rises and falls', seconds: part!.seconds }]);
    expect(part!.seconds).toBeGreaterThanOrEqual(45);
    expect(part!.seconds).toBeLessThanOrEqual(150);
    expect(
      plain(sharedSaid({ rule: '', level: 'query', ...part!, a: { number: '1', role: 'primary' } })),
    ).toMatch(
      /^Riders 1 \(primary\) and 2 \(primary\): the same in both recordings are at least .+ of rises and falls of power, as where power was multiplied\.$/,
    );
  });

  it('say of each for how long it is the same: a copy may have been multiplied in part', async () => {
    const power = a.power!.map((watts, i) => (i < 1500 ? watts : Math.round(watts * 1.05)));
    const [shared] = sharedContent([await row('1', { power: a.power! }), await row('2', { power })], []);
    const seconds = Object.fromEntries(shared!.alike.map((one) => [one.what, one.seconds]));
    expect(seconds.power).toBeLessThanOrEqual(1500);
    expect(seconds['rises and falls']).toBeGreaterThan(1500);
    expect(shared!.seconds).toBe(seconds['rises and falls']);
  });

  it('are not shared by two meters on one ride, whose power is more alike than that of any two riders', async () => {
    const { primary, seconds } = drawSubmission('two meters', { kind: 'bunch race', minutes: 40 });
    const rows = [await row('1', primary.channels), await row('2', { power: seconds[0]!.channels.power! })];
    expect(sharedContent(rows, [])).toEqual([]);
  });

  it('are compared with those kept of an earlier event, and those not with one another', async () => {
    const marks = await marksOf({ channels: a });
    const earlier = ['round 1', 'round 2'].map((event) => ({
      marksVersion: 1 as const,
      event,
      recordings: [{ code: '0a1b2c3d', marks }],
    }));
    const shared = sharedContent([await row('1', a)], earlier);
    expect(shared.map((one) => one.b)).toEqual([
      { event: 'round 1', number: null, role: '0a1b2c3d' },
      { event: 'round 2', number: null, role: '0a1b2c3d' },
    ]);
  });

  it('reveal nothing: digests and places, no sample', async () => {
    const text = await marksOf({ channels: a });
    expect(text).toMatch(/^([pcr][0-9a-z]+\.[0-9a-f]{12}( |$))+$/);
    expect(parsed(text).length).toBeGreaterThan(50);
    // A target held for minutes tells nobody from anybody: it leaves no mark.
    expect(await marksOf({ channels: { power: new Float64Array(3600).fill(200) } })).toBe('');
  });

  it('are at most 17,000 a channel, so that an earlier event can be read again however long its tables were', () => {
    let state = 1;
    const power = Float64Array.from({ length: 370_000 }, () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return state >>> 29;
    });
    const marks = marksOf({ channels: { power } }).split(' ');
    expect(marks.filter((mark) => mark.startsWith('r'))).toHaveLength(17_000);
    const longest = 1 + Math.max(...marks.map((mark) => mark.length));
    const { maxLength } = marksSchema.properties.recordings.items.properties.marks;
    expect(3 * 17_000 * longest).toBeLessThanOrEqual(maxLength);
  });

  it('are never broken by hostile text', () => {
    const none = 'p1.zz <script> x1.0123456789ab p1234567.0123456789ab p.0123456789ab p1.0123456789AB';
    expect(parsed(`${none} p2.f123456789ab  cx c-1.f123456789ab c1a.f123456789ab`)).toEqual([
      { channel: 'p', at: 2, digest: 'f123456789ab' },
      { channel: 'c', at: 46, digest: 'f123456789ab' },
    ]);
    const text = marksOf({ channels: a });
    expect(parsed(text).length).toBe(text.split(' ').length);
  });
});
