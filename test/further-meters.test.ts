import { describe, expect, it } from 'vitest';
import { audit } from '../src/audit.ts';
import { ruleSet } from '../src/rules.ts';
import type { Recording, Report } from '../src/types.ts';
import { writeFit } from './make/fit-writer.ts';
import { drawDraft, type MeterSpec, realise } from './make/index.ts';
import { clean } from './measure/pair/make.ts';

const rules = await ruleSet();

/** One ride on meters that are sound but for what is given, all by recorders that keep the same clock. */
function onOneClock(seed: string, changes: readonly Partial<MeterSpec>[]): readonly Recording[] {
  const draft = drawDraft(seed, {
    kind: 'time trial',
    minutes: 40,
    seconds: changes.length - 1,
    places: ['crank', 'pedal', 'hub'],
  });
  const meters = draft.meters.map((meter, k) => ({ ...meter, ...clean, ...changes[k] }));
  const [{ recorder }] = draft.recordings as [(typeof draft.recordings)[number]];
  const recordings = meters.map((_, meter) => ({ recorder: { ...recorder, repeats: 0 }, meter }));
  const { primary, seconds } = realise({ ...draft, meters, recordings });
  return [primary, ...seconds];
}

/** The first recording with the power of others as developer fields beside its own. */
function together([own, ...others]: readonly Recording[], names: readonly string[]): Recording {
  const extraMeters = others.map((other, i) => {
    expect(other.time).toEqual(own!.time);
    return { name: names[i]!, power: other.channels.power! };
  });
  return { ...own!, extraMeters };
}

const file = (name: string, recording: Recording) => ({ name, bytes: writeFit(recording) });
const nothing = { rider: {}, race: {}, profile: null, otherInputs: [] };
const value = ({ measurements }: Report, rule: string, subject: string | RegExp) =>
  measurements.find((one) => one.rule === rule && one.subject.match(subject))?.value;

describe('a further meter in a developer field', () => {
  it('of the primary is a second meter, on which every comparison runs', async () => {
    const primary = together(onOneClock('field', [{ gain: 1.12 }, {}]), ['Pedal Power']);
    const report = await audit({ ...nothing, primary: file('ride.fit', primary), seconds: [] }, rules);
    expect(report.inputs.map(({ role }) => role)).toEqual(['primary']);
    expect(report.alignment.map(({ secure, reason, origin }) => [secure, reason, origin])).toEqual([
      [true, 'same-recorder', 'independent'],
    ]);
    expect(report.submission.seconds.map(({ name, field }) => [name, field])).toEqual([
      ['ride.fit', 'Pedal Power'],
    ]);
    expect(value(report, 'mean-bias', /^pair:.*\.1$/)).toBeCloseTo(12, 0);
    const judged = report.findings
      .filter(({ subject }) => subject.startsWith('pair:'))
      .map(({ rule }) => rule);
    for (const rule of ['mean-bias', 'wide-spread', 'late-drift', 'shared-origin', 'different-ride'])
      expect(judged).toContain(rule);
    expect(report.findings.find(({ rule }) => rule === 'mean-bias')!.level).not.toBe('none');
    // Its file is the primary's: rules about recordings are put to that once.
    expect(report.measurements.filter(({ subject }) => subject.startsWith('second'))).toEqual([]);
  });

  it('of the primary meets an event that requires a second recording', async () => {
    const primary = together(onOneClock('field', [{}, {}]), ['Pedal Power']);
    const race = { required: ['second recording'] } as const;
    const submission = { ...nothing, race, primary: file('ride.fit', primary), seconds: [] };
    expect((await audit(submission, rules)).missing).toEqual([]);
  });

  it('of a second makes three, of which the odd one is told', async () => {
    const [own, pedals, hub] = onOneClock('third', [{ gain: 1.15 }, {}, {}]);
    const second = together([pedals!, hub!], ['Hub Power']);
    const report = await audit(
      { ...nothing, primary: file('ride.fit', own!), seconds: [file('head unit.fit', second)] },
      rules,
    );
    expect(report.inputs.map(({ role }) => role)).toEqual(['primary', 'second']);
    expect(report.submission.seconds.map(({ field }) => field)).toEqual([null, 'Hub Power']);
    expect(report.alignment.every(({ secure, sameAs }) => secure && sameAs === null)).toBe(true);
    expect(value(report, 'odd-one-out', 'submission')).toBeCloseTo(15, 0);
  });

  it('that shows what another second shows is no further opinion', async () => {
    const [own, pedals] = onOneClock('same', [{ gain: 1.15 }, {}]);
    const watch = { ...pedals!, time: pedals!.time.map((time) => time + 3) };
    const report = await audit(
      {
        ...nothing,
        primary: file('ride.fit', own!),
        seconds: [file('head unit.fit', pedals!), file('watch.fit', watch)],
      },
      rules,
    );
    const [first, second] = report.alignment;
    expect([first!.sameAs, second!.sameAs]).toEqual([null, first!.subject]);
    const odd = report.measurements.find(({ rule }) => rule === 'odd-one-out')!;
    expect(odd.reason).toEqual({ id: 'no-third', values: { meters: 2 } });
  });
});
