import { describe, expect, it } from 'vitest';
import { eventFileFrom } from '../../src/event/event-file.ts';
import { resultsFrom } from '../../src/event/results.ts';
import { sentence } from '../../src/problem.ts';

const said = async (value: unknown) => (await eventFileFrom(value, 'a.event.json')).problems.map(sentence);

describe('an event file', () => {
  it('needs a name and nothing else', async () => {
    const { file, problems } = await eventFileFrom({ $schema: 'x', name: 'Round 1' }, 'a.event.json');
    expect(file).toEqual({ name: 'Round 1' });
    expect(problems).toEqual([]);
  });

  it('has everything that is wrong with it told at once, with place and fix', async () => {
    const faults = await said({ nmae: 'x', riders: [{ number: '../17' }, { numbr: '3' }] });
    expect(faults.join('\n')).toMatch(/“name” is missing/);
    expect(faults.join('\n')).toMatch(/nmae: there is no such field. Did you mean “name”\?/);
    expect(faults.join('\n')).toMatch(/riders › 1 › number: "..\/17" does not fit/);
    expect(faults.join('\n')).toMatch(/riders › 2 › numbr: there is no such field. Did you mean “number”\?/);
  });

  it('has a path that leads astray and a number borne twice told beside what is of the wrong kind', async () => {
    const faults = await said({
      name: 7,
      results: '../x.csv',
      categories: { A: { rules: '/etc' } },
      riders: [null, { number: '5' }, { number: '5', seconds: ['C:\\x.fit'] }],
    });
    expect(faults).toHaveLength(6);
    expect(faults.join('\n')).toMatch(/riders › 3 › number: rider 2 bears the number 5 too/);
    expect(faults.join('\n')).toMatch(/riders › 3 › seconds › 1: .* does not start at the event file/);
  });

  it('lets no two riders bear one number, in whatever case, and no rider an unknown category', async () => {
    const faults = await said({
      name: 'x',
      categories: { A: {} },
      riders: [{ number: 'b1' }, { number: 'B1', category: 'Z' }],
    });
    expect(faults).toEqual([
      'a.event.json › riders › 2 › number: rider 1 bears the number B1 too.',
      'a.event.json › riders › 2 › category: there is no category “Z”. The event has: A.',
    ]);
  });

  it.each(['/etc/passwd', 'C:\\x.fit', '../x.fit', 'a/../../x.fit', 'a\\x.fit'])(
    'refuses the path %s: it may lead out of the folder, or not work everywhere',
    async (primary) => {
      expect(await said({ name: 'x', riders: [{ number: '1', primary }] })).toHaveLength(1);
    },
  );

  it('tells the record of an event from the file that describes one', async () => {
    expect(await said({ eventVersion: 1, rows: [] })).toEqual([
      expect.stringMatching(/what an event came to/),
    ]);
  });
});

describe('a results list', () => {
  it('is read with its own mark, headings in any order and case', () => {
    const { riders, problems } = resultsFrom(
      '\uFEFFPlace;Bib;Name;Time\r\n1;17;"Ash; Bo ""B"" ";1:00\r\nDNF;18;;\r\n\r\n',
      'r.csv',
    );
    expect(problems).toEqual([]);
    expect(riders).toEqual([{ number: '17', place: 1, name: 'Ash; Bo "B"' }, { number: '18' }]);
  });

  it('reads what spreadsheets write: a mark between cells above the headings, lines left empty, other headings', () => {
    const { riders, problems } = resultsFrom(
      'sep=;\r\n\r\nBib;Pos;Rider name;Cat\r\n17;3;A. Bee;B\r\n',
      'r.csv',
    );
    expect(problems).toEqual([]);
    expect(riders).toEqual([{ number: '17', place: 3, name: 'A. Bee', category: 'B' }]);
  });

  it('says which lines are wrong, all at once', () => {
    const { problems } = resultsFrom('number,primary\n17,../x.fit\n17,\n../../x,\n', 'r.csv');
    expect(problems.map(sentence)).toEqual([
      "r.csv › line 2: “../x.fit” leads out of the event's folder.",
      'r.csv › line 3: line 2 bears the number 17 too.',
      expect.stringMatching(/^r.csv › line 4: “..\/..\/x” is no rider's number/),
    ]);
  });

  it('needs a column of numbers', () => {
    expect(resultsFrom('nmber,place\n', 'r.csv').problems.map(sentence)).toEqual([
      'r.csv › line 1: there is no column “number”. Write “number” where it says “nmber”.',
    ]);
  });
});
