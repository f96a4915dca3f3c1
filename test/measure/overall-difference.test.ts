import { expect, it } from 'vitest';
import { overallDifference } from '../../src/measure/overall-difference.ts';
import type { Measured } from '../../src/types.ts';
import { drawDraft, realise } from '../make/index.ts';
import { clean, covers, measuredOf, outcomeOf, ridden, subjectsOf } from './pair/make.ts';

const ride = { kind: 'bunch race', minutes: 45 } as const;

it.each([-12, 0, 7])('recovers a gain of %d %%', (percent) => {
  const found = measuredOf(
    overallDifference,
    'mean-bias',
    ridden(`gain ${percent}`, ride, [{ gain: 1 + percent / 100 }]),
  );
  expect(found.value).toBeCloseTo(percent, 0);
  expect(covers(found, percent)).toBe(true);
});

it('compares nothing while the second holds the last value that a lost link left', () => {
  const all = subjectsOf(ridden('held', ride, [{ gain: 1.03 }, {}]));
  const power = all.seconds[0]!.series.channels.power!;
  const [from] = all.window;
  power.fill(1.5 * power[from + 600]!, from + 600, from + 1500);
  const found = outcomeOf(overallDifference, 'mean-bias', all);
  expect(found.state === 'measured' && found.value).toBeCloseTo(3, 0);
});

it('says where the primary repeats one value while the second moves: a lost link is no difference of meters', () => {
  const repeats = (seconds: number) => {
    const all = subjectsOf(ridden('repeats', ride, [{}, {}]));
    const power = all.primary.channels.power!;
    const from = all.window[0] + 600;
    power.fill(1.5 * power[from]!, from, from + seconds);
    return outcomeOf(overallDifference, 'mean-bias', all);
  };
  expect(repeats(900)).toMatchObject({ circumstances: ['primary repeats'] });
  expect(repeats(60)).toMatchObject({ circumstances: [] });
});

it('expects honest pairs around the loss in the chain, as wide as meters are found to scatter', () => {
  const places = ['trainer', 'pedal', 'crank'] as const;
  const submission = ridden('places', { ...ride, places }, [
    { tolerancePercent: 1 },
    { tolerancePercent: 2 },
  ]);
  const { expected } = measuredOf(overallDifference, 'mean-bias', submission);
  // Loss 2.1 ± 1.5 % (Smit et al. 2023); a claim of ±a has a standard deviation of a/√3 (JCGM 100:2008);
  // 3.2 % in the field (Maier et al. 2017). Sampling error comes on top, so that these are lower bounds.
  expect(expected!.declared.centre).toBeCloseTo(-2.1, 6);
  expect(expected!.declared.spread).toBeGreaterThan(Math.hypot(1 / Math.sqrt(3), 2 / Math.sqrt(3), 1.5));
  expect(expected!.declared.spread).toBeLessThan(2.4);
  expect(expected!.field.spread).toBeGreaterThan(Math.hypot(3.2, 3.2, 1.5));
  expect(expected!.field.spread).toBeLessThan(5.1);
});

/** What is said of the first pair of three meters with these gains, the third recorded for so many seconds. */
function ofThree(gains: readonly number[], seconds = Number.POSITIVE_INFINITY) {
  const places = ['crank', 'pedal', 'hub'] as const;
  const changes = gains.map((gain) => ({ gain }));
  const all = subjectsOf(ridden('third', { ...ride, places, seconds: 2 }, changes));
  all.seconds[1]!.series.channels.power!.fill(Number.NaN, all.window[0] + seconds);
  return outcomeOf(overallDifference, 'mean-bias', all);
}

const sides = { circumstances: ['third sides with the primary'] };

it('says where a third meter sides with the primary: then it is the second that lies apart', () => {
  expect(ofThree([1, 0.85, 1])).toMatchObject(sides);
  expect(ofThree([1, 1.15, 1])).toMatchObject(sides);
  expect(ofThree([1, 0.85, 1.05])).toMatchObject(sides);
  expect(ofThree([1.15, 1, 1])).toMatchObject({ circumstances: [] });
  expect(ofThree([1.15, 1, 1.02])).toMatchObject({ circumstances: [] });
});

it('lets no third meter side with the primary that was recorded for less than a pair must be', () => {
  expect(ofThree([1, 0.85, 1], 900)).toMatchObject(sides);
  expect(ofThree([1, 0.85, 1], 300)).toMatchObject({ circumstances: [] });
});

/** What is said of a trainer against such pedals of a rider whose left leg does this much more than half at rest. */
function ofPedals(asymmetry: number, change: Parameters<typeof ridden>[2][number], tellsLegs = false) {
  const draft = drawDraft('leg', { kind: 'bunch race', minutes: 45, places: ['trainer', 'pedal'] });
  const meters = draft.meters.map((meter, k) => ({ ...meter, ...clean, ...(k === 1 ? change : {}) }));
  const recordings = draft.recordings.map(({ meter, recorder }) => {
    const channels = [...recorder.channels, ...(tellsLegs ? (['balance'] as const) : [])];
    return { meter, recorder: { ...recorder, channels } };
  });
  const today = { ...draft.today, asymmetry };
  return outcomeOf(
    overallDifference,
    'mean-bias',
    subjectsOf(realise({ ...draft, meters, recordings, today })),
  );
}

const fades = { circumstances: ['fades as one leg doubled'] };

// Asymmetry shrinks towards full effort (Kell & Greer 2017): what a doubled leg is off by does, a gain does not.
it('says where a second that tells no left and right may double the weaker leg', () => {
  expect(ofPedals(-0.15, { sides: 1 })).toMatchObject(fades);
  expect(ofPedals(0.15, { sides: 1 })).toMatchObject({ circumstances: [] });
  expect(ofPedals(0, { gain: 0.82 })).toMatchObject({ circumstances: [] });
  // A torque that the second lacks fades as well; a meter that tells both legs does not double one.
  expect(ofPedals(0, { torqueOffset: -4 })).toMatchObject(fades);
  expect(ofPedals(0, { torqueOffset: -4 }, true)).toMatchObject({ circumstances: [] });
});

it('says nothing of two recordings that are not on one clock', () => {
  const one = ridden('one', ride, []);
  const other = ridden('other', ride, []);
  const all = subjectsOf({ ...one, seconds: other.seconds });
  expect(outcomeOf(overallDifference, 'mean-bias', all)).toMatchObject({ reason: 'not-secure' });
});

it('passes over a link that was lost: it is no gain', () => {
  const submission = ridden('silent', ride, []);
  const power = submission.seconds[0]!.channels.power!;
  power.fill(0, 1000, 1400);
  expect(measuredOf(overallDifference, 'mean-bias', submission).value).toBeCloseTo(0, 0);
});

it('states how well the ratio of this ride is known, of which a slow change is a part and no error', () => {
  const half = ({ interval }: Measured) => (interval[1] - interval[0]) / 2;
  const noise = 0.03;
  const even = measuredOf(overallDifference, 'mean-bias', ridden('slow', ride, [{ noise }]));
  const slow = measuredOf(
    overallDifference,
    'mean-bias',
    ridden('slow', ride, [
      { noise, wander: { spread: 0.02, tau: 900, ramps: false }, driftPerHour: 0.04, powerSlope: 0.01 },
    ]),
  );
  expect(half(slow)).toBeLessThan(1.5 * half(even));
  expect(half(even)).toBeGreaterThan(0.05);
});
