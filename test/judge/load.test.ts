import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadRules, ruleFaults } from '../../src/judge/load.ts';
import { sentence } from '../../src/problem.ts';
import type { Rule } from '../../src/types.ts';
import { ground, rule } from './make.ts';

const file = (id: string, content: unknown) => ({
  name: `${id}.rule.json`,
  text: typeof content === 'string' ? content : JSON.stringify(content),
});
const load = (...files: { name: string; text: string }[]) => loadRules(ground, files, 'test');

/** What is said about a rule that differs from a right one in the given fields. */
async function said(change: object): Promise<string[]> {
  const { problems } = await load(file('wobble', { id: 'wobble', ...change }));
  return problems.map(sentence);
}

describe('a right rule', () => {
  it('has no faults', async () => {
    expect(await ruleFaults(rule, ground)).toEqual([]);
  });

  it('may be laid over itself, and its schema noted', async () => {
    const { set } = await load(file('wobble', { $schema: '../rules/rule.schema.json', ...rule }));
    expect(set?.rules).toEqual([rule]);
  });
});

describe('a change', () => {
  it('replaces what it names and keeps the rest', async () => {
    const text = JSON.stringify({ id: 'wobble', title: 'It shakes', limits: { query: { 'at least': 6 } } });
    const { set } = await load({ name: 'wobble.rule.json', text });
    expect(set?.rules).toEqual([
      {
        ...rule,
        title: 'It shakes',
        limits: { ...rule.limits, query: { 'at least': 6, of: 'value', end: 'cautious' } },
      },
    ]);
    expect(set?.overlaid).toEqual([{ file: 'wobble.rule.json', text }]);
    expect(set?.name).toBe('test');
  });

  it('forgets how often honest riders were asked once a limit differs, and only then', async () => {
    const shares = { submissions: 9, query: { share: 0, atMost: 0.3 }, refer: { share: 0, atMost: 0.3 } };
    const falseAlarm = { command: 'x', withinClaims: shares, asFound: shares };
    const measured: Rule = { ...rule, source: { ...rule.source, falseAlarm } };
    const laid = async (change: object) => {
      const files = [file('wobble', { id: 'wobble', ...change })];
      return (await loadRules({ ...ground, rules: [measured] }, files, 'test')).set!.rules[0]!.source;
    };
    expect(await laid({ title: 'It shakes' })).toEqual(measured.source);
    expect(await laid({ limits: { query: { 'at least': 6 } } })).toEqual(rule.source);
  });

  it('takes a limit away with null', async () => {
    const { set } = await load(
      file('wobble', {
        id: 'wobble',
        highest: 'query',
        limits: { refer: null },
        examples: rule.examples.filter((example) => example.level !== 'refer'),
      }),
    );
    expect(Object.keys(set!.rules[0]!.limits)).toEqual(['note', 'query']);
  });

  it('switches a rule off with its reason, and changes nothing else', async () => {
    const { set } = await load(file('wobble', { id: 'wobble', off: 'Not on this course.', limits: {} }));
    expect(set?.rules).toEqual([{ ...rule, off: 'Not on this course.' }]);
  });

  it('adds a complete rule under a new id, after the others', async () => {
    const { set } = await load(file('sway', { ...rule, id: 'sway' }));
    expect(set?.rules.map(({ id }) => id)).toEqual(['wobble', 'sway']);
  });

  it('replaces the grades', async () => {
    const grades = { queriesThatRefer: 2, why: 'Two are enough here.' };
    const { set } = await load({ name: 'grades.json', text: JSON.stringify(grades) });
    expect(set?.grades).toEqual(grades);
  });

  it('gives the set another digest, its layout does not', async () => {
    const shipped = await load();
    const same = await load(file('wobble', { title: rule.title, id: 'wobble' }));
    const other = await load(file('wobble', { id: 'wobble', title: 'x' }));
    expect(shipped.set?.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(same.set?.sha256).toBe(shipped.set?.sha256);
    expect(other.set?.sha256).not.toBe(shipped.set?.sha256);
  });
});

describe('what is wrong is said with file, field and way out', () => {
  it.each<[string, object, string[]]>([
    [
      'a misspelt field',
      { limit: {} },
      ['wobble.rule.json › limit: there is no such field. Did you mean “limits”?'],
    ],
    [
      'a misspelt field deep inside',
      { limits: { query: { 'at leats': 3 } } },
      ['wobble.rule.json › limits › query › at leats: there is no such field. Did you mean “at least”?'],
    ],
    [
      'a field that is like none',
      { source: { kind: 'from memory', note: 'x', zzz: 1 } },
      ['wobble.rule.json › source › zzz: there is no such field. Known here: kind, note, falseAlarm.'],
    ],
    [
      'a wrong type',
      { limits: { query: { 'at least': '3' } } },
      ['wobble.rule.json › limits › query › at least: "3" is not a number or null.'],
    ],
    ['a blank', { title: '  ' }, ['wobble.rule.json › title: "  " does not fit: it must not be blank.']],
    [
      'a word that is not one of those allowed',
      { family: 'tracee' },
      [
        'wobble.rule.json › family: "tracee" stands where one of these must: recording, trace, agreement, physiology. Did you mean “trace”?',
      ],
    ],
    [
      'a source of an unknown kind',
      { source: { kind: 'publishd' } },
      [
        'wobble.rule.json › source › kind: "publishd" stands where one of these must: published, common practice, from memory, measured. Did you mean “published”?',
      ],
    ],
    [
      'a source without its citation',
      { source: { kind: 'published' } },
      ['wobble.rule.json › source: “citation” is missing.'],
    ],
    [
      'a share out of range',
      {
        source: {
          kind: 'measured',
          note: 'x',
          falseAlarm: {
            command: 'x',
            withinClaims: {
              submissions: 9,
              query: { share: 2, atMost: 1 },
              refer: { share: 0, atMost: 0.3 },
            },
            asFound: { submissions: 9, query: { share: 0, atMost: 0.3 }, refer: { share: 0, atMost: 0.3 } },
          },
        },
      },
      [
        'wobble.rule.json › source › falseAlarm › withinClaims › query › share: 2 is out of range: it must be at most 1.',
      ],
    ],
    [
      'too few examples',
      { examples: [rule.examples[0]] },
      [
        'wobble.rule.json › examples: there must be at least 2 items: measurements with the level that they must get; judged whenever the rule is loaded.',
      ],
    ],
    [
      'an unknown measure',
      { measure: 'wobble-sise' },
      ['wobble.rule.json › measure: there is no measure “wobble-sise”. Did you mean “wobble-size”?'],
    ],
    [
      'subjects that the measure does not look at',
      { subjects: 'pairs' },
      [
        'wobble.rule.json › subjects: “pairs” does not fit the measure wobble-size, which looks at a recording. Write primary or recordings.',
      ],
    ],
    [
      'an unknown option',
      { options: { windowSecond: 3 } },
      [
        'wobble.rule.json › options › windowSecond: the measure wobble-size has no such option. Did you mean “windowSeconds”?',
      ],
    ],
    [
      'a list for a number and a number for a list',
      { options: { windowSeconds: [3], bands: 3 } },
      [
        'wobble.rule.json › options › windowSeconds: it must be one number: length of a window, s.',
        'wobble.rule.json › options › bands: it must be a list of numbers in square brackets: edges of the bands, Hz.',
      ],
    ],
    [
      'an unknown circumstance',
      { ceilings: [{ when: 'coble', level: 'note', why: 'x' }] },
      [
        'wobble.rule.json › ceilings › 1 › when: the measure wobble-size never reports the circumstance “coble”. Did you mean “cobbles”?',
        'wobble.rule.json › examples › 5: example 5 is listed as note, but the limits now make it refer. Change the example too, or the limit back.',
      ],
    ],
    [
      'a higher level that is looser',
      { limits: { refer: { 'at least': 4 } }, examples: rule.examples.slice(0, 2) },
      [
        'wobble.rule.json › limits › refer › at least: refer (at least 4) is looser than query (at least 5). The limit of the higher level must lie above the other.',
      ],
    ],
    [
      'a higher level that asks less of the range',
      { limits: { refer: { end: 'estimate' } } },
      [
        'wobble.rule.json › limits › refer › end: refer asks only for the estimate while query asks for the cautious end. The higher level must not be the easier one.',
      ],
    ],
    [
      'a level that can never be the outcome',
      { limits: { query: { 'at least': 10 } }, examples: [rule.examples[0], rule.examples[3]] },
      [
        'wobble.rule.json › limits › query › at least: it has no effect: refer begins at the same value (at least 10). Move one of the two, or take one away with null.',
      ],
    ],
    [
      'a limit without a number',
      { limits: { note: { 'at least': null } }, examples: [rule.examples[0], rule.examples[3]] },
      ['wobble.rule.json › limits › note: a limit without “at least” or “at most” has no effect.'],
    ],
    [
      'a limit that always acts',
      {
        limits: { note: { 'at most': 3 } },
        claims: { below: 'x' },
        examples: [rule.examples[2], rule.examples[3]],
      },
      [
        'wobble.rule.json › limits › note: every value is at least 2 or at most 3: the limit would always act. “at least” must lie above “at most”.',
      ],
    ],
    [
      'a referral by declared tolerance',
      {
        limits: { refer: { of: 'declared spread' } },
        examples: [
          {
            value: 1,
            interval: [1, 1],
            count: 1,
            level: 'none',
            expected: { declared: { centre: 0, spread: 1 }, field: { centre: 0, spread: 1 } },
          },
          {
            value: 12,
            interval: [11, 13],
            count: 1,
            level: 'refer',
            expected: { declared: { centre: 0, spread: 1 }, field: { centre: 0, spread: 1 } },
          },
        ],
      },
      [
        'wobble.rule.json › limits › refer › of: a declared tolerance may tighten a query, but a referral goes by the spread found in the field. Write “field spread”.',
      ],
    ],
    [
      'an example that lacks the spread it is judged by',
      { limits: { query: { of: 'field spread' } }, examples: rule.examples.slice(0, 2) },
      [
        'wobble.rule.json › examples › 1: the limits are multiples of a spread, so the example must say what is “expected”.',
        'wobble.rule.json › examples › 2: the limits are multiples of a spread, so the example must say what is “expected”.',
      ],
    ],
    [
      'a rule that asks nothing any more',
      { limits: { note: null, query: null, refer: null }, examples: [rule.examples[0], rule.examples[0]] },
      [
        'wobble.rule.json › limits: a rule without a limit has no effect. To stop asking the question, give the reason in “off”.',
      ],
    ],
    [
      'a level above the highest',
      { highest: 'query' },
      [
        'wobble.rule.json › limits › refer: the rule\'s highest level is query, so it cannot have a limit for refer. Raise “highest”, or take the limit away: "limits": { "refer": null }.',
      ],
    ],
    [
      'a highest level that nothing makes',
      { limits: { refer: null }, examples: rule.examples.slice(0, 3) },
      [
        'wobble.rule.json › highest: it has no effect: no limit makes refer. Give “limits” a refer, or lower “highest” to query.',
      ],
    ],
    [
      'a ceiling that never lowers anything',
      {
        limits: { query: null, refer: null },
        highest: 'note',
        examples: rule.examples.slice(0, 2),
      },
      ['wobble.rule.json › ceilings › 1: it has no effect: the rule never goes beyond note anyway.'],
    ],
    [
      'a sentence that is missing',
      { limits: { query: { 'at most': -5 } } },
      [
        'wobble.rule.json › claims: “below” is missing: the rule has an “at most” limit, so it needs the sentence that says so.',
      ],
    ],
    [
      'a placeholder that nothing fills in',
      { claims: { above: 'It wobbles by {valeu} in {times|place|places} and {more}.' } },
      [
        'wobble.rule.json › claims › above: nothing fills in {valeu}. Did you mean {value}?',
        'wobble.rule.json › claims › above: nothing fills in {more}. Known here: {value} {size} {low} {high} {limit} {times}.',
      ],
    ],
    [
      'an example that the limits contradict',
      { limits: { query: { 'at least': 6.5 } } },
      [
        'wobble.rule.json › examples › 3: example 3 is listed as query, but the limits now make it note. Change the example too, or the limit back.',
      ],
    ],
    [
      'an interval that does not hold its value',
      {
        examples: [rule.examples[0], { value: 12, interval: [13, 14], count: 1, level: 'refer' }],
      },
      ['wobble.rule.json › examples › 2 › interval: [13, 14] does not hold the value 12.'],
    ],
  ])('%s', async (_, change, sentences) => {
    expect(await said(change)).toEqual(sentences);
  });

  it.each<[string, { name: string; text: string }, string]>([
    [
      'text that is no JSON',
      { name: 'wobble.rule.json', text: '{\n  "id": "wobble",\n  "title" "x"\n}' },
      'wobble.rule.json › line 3: this is not JSON. Look there and just before for a comma, quotation mark or brace that is missing or too many.',
    ],
    [
      'an empty file',
      { name: 'wobble.rule.json', text: '' },
      'wobble.rule.json › line 1: this is not JSON: it is empty or breaks off. Look there and just before for a comma, quotation mark or brace that is missing or too many.',
    ],
    [
      'a list where a rule is wanted',
      { name: 'wobble.rule.json', text: '[]' },
      'wobble.rule.json: [] is not a group of fields in braces.',
    ],
    [
      'a rule without its id',
      file('wobble', {}),
      "wobble.rule.json: “id” is missing: a noun for the fault, in small letters with hyphens, the same as the file's name before .rule.json.",
    ],
    [
      'another name than the id',
      file('wobbel', { id: 'wobble' }),
      "wobbel.rule.json › id: the id “wobble” does not match the file's name. Name the file wobble.rule.json, or write the id wobbel.",
    ],
    [
      'a misspelt id',
      file('woble', { id: 'woble', title: 'x' }),
      'woble.rule.json › id: there is no rule “woble” to change, and as a new rule it lacks family, question, measure, subjects, options, needs, limits, highest, ceilings, claims, innocent, settles, source, examples. Did you mean “wobble”?',
    ],
    [
      'a file that is none of ours',
      { name: 'wobble.json', text: '{}' },
      'wobble.json: this is neither a rule nor grades.json. Name a rule file <id>.rule.json, after the rule it changes or adds.',
    ],
    [
      'grades that nobody can reach',
      { name: 'grades.json', text: '{"queriesThatRefer":1,"why":"x"}' },
      'grades.json › queriesThatRefer: 1 is out of range: it must be at least 2: how many queries, each from another family of rules, make a referral (2 to 4); null: queries never add up.',
    ],
  ])('%s', async (_, given, said) => {
    const { set, problems } = await load(given);
    expect(set).toBeNull();
    expect(problems.map(sentence)).toEqual([said]);
  });

  it('may account for rules that there are, or that the same folder adds, and for no others', async () => {
    const explains = ['sway', 'woble'];
    const { problems } = await load(
      file('wobble', { id: 'wobble', explains }),
      file('sway', { ...rule, id: 'sway' }),
    );
    expect(problems.map(sentence)).toEqual([
      'wobble.rule.json › explains › 2: there is no rule “woble”. Did you mean “wobble”?',
    ]);
  });

  it('misses an option', async () => {
    const { problems } = await load(file('sway', { ...rule, id: 'sway', options: { bands: [1] } }));
    expect(problems.map(sentence)).toEqual([
      'sway.rule.json › options: “windowSeconds” is missing: length of a window, s.',
    ]);
  });

  it('finds what is wrong in every file at once', async () => {
    const { problems } = await load(file('wobble', '{'), file('sway', { id: 'sway' }), {
      name: 'grades.json',
      text: '{}',
    });
    expect(new Set(problems.map(({ where }) => where?.split(' › ')[0]))).toEqual(
      new Set(['wobble.rule.json', 'sway.rule.json', 'grades.json']),
    );
  });

  it('refuses a rule that stands twice', async () => {
    const { problems } = await load(file('wobble', { id: 'wobble' }), file('wobble', { id: 'wobble' }));
    expect(problems.map(sentence)).toEqual([
      'wobble.rule.json › id: the rule “wobble” stands twice in this folder.',
    ]);
  });
});

describe('rules that only say that something is missing', () => {
  const lack: Rule = {
    ...rule,
    id: 'lack',
    highest: 'incomplete',
    limits: { note: { 'at least': 1, of: 'value', end: 'estimate' } },
    ceilings: [],
    examples: [
      { value: 0, interval: [0, 0], count: 1, level: 'none' },
      { value: 1, interval: [1, 1], count: 1, level: 'note' },
    ],
  };

  it('make a note', async () => {
    expect(await ruleFaults(lack, ground)).toEqual([]);
  });

  it('make no more', async () => {
    const more = {
      ...lack,
      limits: { ...lack.limits, query: { 'at least': 2, of: 'value', end: 'estimate' } },
    };
    expect(await ruleFaults(more, ground)).toMatchObject([{ path: ['limits', 'query'] }]);
  });
});

describe('hostile rule files', () => {
  it('change no prototype, and are refused', async () => {
    for (const text of [
      '{"id":"wobble","__proto__":{"off":"x"}}',
      '{"id":"wobble","options":{"__proto__":5}}',
      '{"id":"wobble","limits":{"__proto__":{"at least":0}}}',
      '{"id":"wobble","constructor":{"prototype":{}}}',
    ]) {
      const { set } = await load({ name: 'wobble.rule.json', text });
      expect(set).toBeNull();
    }
    expect({}).not.toHaveProperty('off');
  });

  it('never make anything but a set or problems', async () => {
    const value = fc.oneof(fc.jsonValue({ maxDepth: 3 }), fc.constantFrom('wobble', 'query', 3, null));
    await fc.assert(
      fc.asyncProperty(
        fc.dictionary(fc.constantFrom(...Object.keys(rule), '__proto__', 'off', 'x'), value),
        async (fields) => {
          const { set, problems } = await load(file('wobble', { ...fields, id: 'wobble' }));
          expect(set === null).toBe(problems.length > 0);
        },
      ),
    );
  });
});
