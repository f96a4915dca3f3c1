import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchFiles } from '../../src/event/match.ts';

const of = (
  files: readonly string[],
  known: readonly string[] | null = null,
  tables: readonly string[] = [],
) => matchFiles(files, known, new Set(tables));

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
        doubt: null,
        facts: 'riders/11/rider.json',
      },
      {
        number: '17',
        primary: '17-primary.fit',
        seconds: ['17-seconds.tcx.gz'],
        history: '017 profile.json',
        doubt: null,
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
        doubt: null,
        facts: null,
      },
    ]);
  });

  it('takes no recording where two folders side by side bear one number', () => {
    const { matched, unmatched } = of([
      'riders/17/a.fit',
      'riders/17 Moss/primary.fit',
      'riders/17/second.fit',
    ]);
    expect(matched).toMatchObject([{ number: '17', primary: null, seconds: [] }]);
    expect(matched[0]!.doubt).toBe('2 folders bear the number 17: riders/17, riders/17 Moss');
    expect(unmatched.map(({ file }) => file)).toHaveLength(3);
    // Five are named, however many there are: the sentence stands beside each file.
    const named = (count: number) =>
      of(Array.from({ length: count }, (_, i) => `17 ${i}/a.fit`)).matched[0]!.doubt;
    expect(named(5)).toBe('5 folders bear the number 17: 17 0, 17 1, 17 2, 17 3, 17 4');
    expect(named(6)).toBe('6 folders bear the number 17: 17 0, 17 1, 17 2, 17 3, 17 4, and others');
    // One folder for each of the two recordings, or a folder beside a single file, leaves no doubt.
    for (const files of [
      ['primary/17/a.fit', 'second/17/b.fit'],
      ['17/primary.fit', '17-second.fit'],
      ['17/primary/17.fit', '17/second/17.fit'],
    ]) {
      expect(of(files).matched, files.join()).toMatchObject([{ primary: files[0], seconds: [files[1]] }]);
    }
  });

  it.each([
    ['the only one that is no second', ['17.fit', '17-second.fit'], '17.fit', ['17-second.fit']],
    ['folders that say it', ['17/primary/a.fit', '17/second/b.fit'], '17/primary/a.fit', ['17/second/b.fit']],
    [
      'ZIPs that say it',
      ['17-primary.zip/a.fit', '17-second.zip/b.fit'],
      '17-primary.zip/a.fit',
      ['17-second.zip/b.fit'],
    ],
    ['a round that is called second', ['second round/17.fit'], 'second round/17.fit', []],
    ['a number that a program gave', ['17.zip/40213_ride.fit'], '17.zip/40213_ride.fit', []],
    ['the ZIP of another in a folder', ['17/2.zip/a.fit'], '17/2.zip/a.fit', []],
    ['a ZIP of several riders', ['all.zip/17/a.fit'], 'all.zip/17/a.fit', []],
    ['an export with its notes', ['17.zip/x/a.fit', '17.zip/x/photo.jpg'], '17.zip/x/a.fit', []],
  ] as const)('takes %s', (_, files, primary, seconds) => {
    const { matched, unmatched } = of(files);
    expect(unmatched).toEqual([]);
    expect(matched).toMatchObject([{ number: '17', primary, seconds, doubt: null }]);
  });

  it('passes over a table of another kind beside a recording, and takes it where it stands alone', () => {
    const files = ['17.zip/a.fit', '17.zip/profile.csv', '18.csv', 'results.csv'];
    const { matched, unmatched } = of(files, null, ['17.zip/profile.csv', '18.csv', 'results.csv']);
    expect(matched.map(({ primary }) => primary)).toEqual(['17.zip/a.fit', '18.csv']);
    expect(unmatched).toEqual([]);
  });

  it('lists what was handed in where a recording should be, and makes nobody a rider of it', () => {
    const { matched, unmatched } = of(['17/screen.png', '18.rar', '19.fit', '19.txt', 'notes.txt']);
    expect(matched.map(({ number }) => number)).toEqual(['19']);
    expect(unmatched.map(({ file }) => file)).toEqual(['17/screen.png', '18.rar']);
    for (const { why } of unmatched) expect(why).toMatch(/has no recording, and this is none/);
  });

  it.each([
    ['no number', ['morning ride.fit'], null, /no rider's number/],
    ['a date is no number', ['2026-03-14-19-00.fit'], null, /no rider's number/],
    ['nor with the day first', ['14.03.2026/ride.fit'], null, /no rider's number/],
    ['a number with a letter behind it', ['17b.fit'], null, /no rider's number/],
    ['a number that nobody bears', ['99.fit'], ['17'], /no rider of the start list/],
    [
      'folder and name disagree',
      ['11/17-primary.fit'],
      ['11', '17'],
      /its folder says rider 11, its name says rider 17/,
    ],
    [
      'a ZIP and a name in it disagree',
      ['11.zip/17-primary.fit'],
      ['11', '17'],
      /its ZIP says rider 11, its name says rider 17/,
    ],
    ['two recordings without a role', ['11/a.fit', '11/b.fit'], null, /none of the 2 recordings/],
    ['two primaries', ['11/primary.fit', '11/primary (1).fit'], null, /2 of the 2 recordings/],
    ['a third of no role', ['11/primary.fit', '11/second.fit', '11/x.fit'], null, /does not say what it is/],
    ['only a second', ['11/second.fit'], null, /the only recording of rider 11 is called second/],
  ] as const)('lists what leaves a doubt and guesses nothing: %s', (_, files, known, why) => {
    const { unmatched } = of(files, known);
    expect(unmatched.length).toBeGreaterThan(0);
    for (const one of unmatched) {
      expect(one.why).toMatch(why);
      expect(one.hint).not.toBe('');
    }
  });

  it('says that what a ZIP holds has to be taken out before it can be named', () => {
    const hints = (files: readonly string[]) =>
      of(files).unmatched.map(({ hint }) => hint.split(' one file')[0]);
    expect(hints(['7.zip/a.fit', '7.zip/b.fit'])).toEqual(Array(2).fill('Take them out of the ZIP and name'));
    expect(hints(['7-a.fit', '7-b.fit'])).toEqual(['Name', 'Name']);
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
