import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchFiles } from '../../src/event/match.ts';

const of = (files: readonly string[], known: readonly string[] | null = null) => matchFiles(files, known);

describe('matching files with riders', () => {
  it('goes by the folder, or by the number at the front of the name', () => {
    const { matched, unmatched } = of([
      'riders/11/primary.fit',
      'riders/11/second.fit',
      'riders/11/rider.json',
      'riders/11/history/001.fit',
      'riders/11/history/2025-01-02.fit',
      '17-primary.fit',
      '17-seconds.tcx.gz',
      '017 profile.json',
      'notes.txt',
    ]);
    expect(unmatched).toEqual([]);
    expect(matched).toEqual([
      {
        number: '11',
        primary: 'riders/11/primary.fit',
        seconds: ['riders/11/second.fit'],
        history: 'riders/11/history',
        facts: 'riders/11/rider.json',
      },
      {
        number: '17',
        primary: '17-primary.fit',
        seconds: ['17-seconds.tcx.gz'],
        history: '017 profile.json',
        facts: null,
      },
    ]);
  });

  it('looks into a ZIP as into a folder', () => {
    expect(of(['11.zip/primary.fit', '11.zip/second.fit']).matched).toEqual([
      {
        number: '11',
        primary: '11.zip/primary.fit',
        seconds: ['11.zip/second.fit'],
        history: null,
        facts: null,
      },
    ]);
  });

  it.each([
    ['no number', ['morning ride.fit'], null, /no rider's number/],
    ['a date is no number', ['2026-03-14-19-00.fit'], null, /no rider's number/],
    ['a number with a letter behind it', ['17b.fit'], null, /no rider's number/],
    ['a number that nobody bears', ['99.fit'], ['17'], /no rider of the start list/],
    [
      'folder and name disagree',
      ['11/17-primary.fit'],
      ['11', '17'],
      /its folder says rider 11, its name says rider 17/,
    ],
    ['two recordings without a role', ['11/a.fit', '11/b.fit'], null, /none of the 2 recordings/],
    ['two primaries', ['11/primary.fit', '11/primary (1).fit'], null, /2 of the 2 recordings/],
    ['a third of no role', ['11/primary.fit', '11/second.fit', '11/x.fit'], null, /does not say what it is/],
    ['only a second', ['11/second.fit'], null, /none of the 1 recordings/],
  ] as const)('lists what leaves a doubt and guesses nothing: %s', (_, files, known, why) => {
    const { unmatched } = of(files, known);
    expect(unmatched.length).toBeGreaterThan(0);
    for (const one of unmatched) {
      expect(one.why).toMatch(why);
      expect(one.hint).not.toBe('');
    }
  });

  it('knows numbers with letters from the start list only', () => {
    expect(of(['b7-primary.fit'], ['B7']).matched[0]?.number).toBe('B7');
    expect(of(['b7-primary.fit']).matched).toEqual([]);
  });

  it('gives every recording to one rider or to none, whatever the names', () => {
    const part = fc.stringMatching(/^[0-9a-z ._-]{1,12}$/).filter((text) => !/^\.+$/.test(text));
    const file = fc
      .tuple(fc.array(part, { maxLength: 2 }), part)
      .map(([folders, name]) => [...folders, `${name}.fit`].join('/'));
    fc.assert(
      fc.property(fc.uniqueArray(file, { maxLength: 12 }), (files) => {
        const { matched, unmatched } = of(files);
        const given = matched.flatMap(({ primary, seconds }) =>
          primary === null ? [] : [primary, ...seconds],
        );
        const past = matched.flatMap(({ history }) => history ?? []);
        expect(new Set(given).size).toBe(given.length);
        for (const one of given) expect(unmatched.map(({ file: at }) => at)).not.toContain(one);
        for (const one of files) {
          const kept = given.includes(one) || unmatched.some(({ file: at }) => at === one);
          expect(kept || past.some((folder) => one.startsWith(folder)) || /(^|\/)history/i.test(one)).toBe(
            true,
          );
        }
      }),
      { numRuns: 200 },
    );
  });
});
