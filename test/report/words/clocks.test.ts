import { describe, expect, it } from 'vitest';
import { driftSaid, offsetSaid, runsApart } from '../../../src/report/words/clocks.ts';
import type { Alignment } from '../../../src/types.ts';
import { makeReport } from '../make-report.ts';

const [known] = makeReport({}, 600).alignment;
const said = (parts: Partial<Alignment>, of: (one: Alignment) => string | null) =>
  of({ ...known!, ...parts })?.replaceAll('\u00a0', ' ') ?? null;
const offset = (value: number, half = 0.1): Partial<Alignment> => ({
  offset: { value, low: value - half, high: value + half },
  segments: [{ stretch: [0, 600], offset: value }],
});

describe('offsetSaid', () => {
  it.each([
    [-2.34, '2.3 s ahead of the primary’s (± 0.1 s)'],
    [3, '3 s behind the primary’s (± 0.1 s)'],
    [-431.67, '7 min 11.7 s ahead of the primary’s (± 0.1 s)'],
    [-59.97, '1 min ahead of the primary’s (± 0.1 s)'],
    [-2_680_230.6, '31 days 30 min 30.6 s ahead of the primary’s (± 0.1 s)'],
    [0.02, 'the same as the primary’s (± 0.1 s)'],
  ])('says of %f s to be added which clock is ahead, and by how much', (value, words) => {
    expect(said(offset(value), offsetSaid)).toBe(words);
  });

  it('says of each stretch how far it is off where the clock skips pauses', () => {
    const segments = [
      { stretch: [0, 1371], offset: 1.5 },
      { stretch: [1384, 3286], offset: 15.4 },
    ] as const;
    expect(said({ ...offset(15.4), segments }, offsetSaid)).toBe(
      '1.5 s behind the primary’s (0:00–22:51) and 15.4 s behind the primary’s (23:04–54:46)',
    );
  });

  it('says nothing where no offset fits', () => {
    expect(said({ offset: null, segments: [] }, offsetSaid)).toBeNull();
  });
});

describe('driftSaid', () => {
  it('tells a fast clock, which needs ever more taken off, from a slow one', () => {
    expect(said({ driftPpm: { value: -300, low: -400, high: -200 } }, driftSaid)).toBe(
      '1.1 s an hour fast (300 parts in a million, 200 to 400)',
    );
    expect(said({ driftPpm: { value: 60, low: -74, high: 189 } }, driftSaid)).toBe(
      '0.2 s an hour slow (−60 parts in a million, −189 to 74)',
    );
    expect(said({ driftPpm: null }, driftSaid)).toBeNull();
  });

  it('is sure only where the interval leaves out that clocks run alike', () => {
    expect(runsApart({ ...known!, driftPpm: { value: -300, low: -400, high: -200 } })).toBe(true);
    expect(runsApart({ ...known!, driftPpm: { value: 60, low: -74, high: 189 } })).toBe(false);
  });
});
