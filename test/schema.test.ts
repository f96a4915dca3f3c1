import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faultsOf, fitting, problemOf } from '../src/schema.ts';

const schema = {
  type: 'object',
  additionalProperties: false,
  required: ['name'],
  properties: {
    name: { type: 'string', maxLength: 3, description: 'what it is called' },
    'a/b~c': { type: 'array', minItems: 1, items: { type: 'integer', minimum: 2, exclusiveMaximum: 5 } },
    kind: { const: 'x' },
  },
};

describe('faults', () => {
  it.each<[unknown, object[]]>([
    [{ name: 'abc', 'a/b~c': [2, 4], kind: 'x' }, []],
    [{}, [{ path: [], what: '“name” is missing: what it is called' }]],
    [{ name: 'abcd' }, [{ path: ['name'], what: 'there must be at most 3 characters: what it is called' }]],
    [{ name: 'a', 'a/b~c': [] }, [{ path: ['a/b~c'], what: 'there must be at least 1 item' }]],
    [
      { name: 'a', 'a/b~c': [2, 1.5] },
      [
        { path: ['a/b~c', '2'], what: '1.5 is not a whole number' },
        { path: ['a/b~c', '2'], what: '1.5 is out of range: it must be at least 2' },
      ],
    ],
    [{ name: 'a', 'a/b~c': [5] }, [{ path: ['a/b~c', '1'], what: '5 is out of range: it must be below 5' }]],
    [{ name: 'a', kind: 'y' }, [{ path: ['kind'], what: '"y" stands where one of these must: x' }]],
    [null, [{ path: [], what: 'null is not a group of fields in braces' }]],
  ])('of %j', async (value, faults) => {
    expect(await faultsOf(schema, value)).toEqual(faults);
  });

  it('quote no more than a glance of what a stranger wrote', async () => {
    const long = 'y'.repeat(5000);
    const faults = await faultsOf(schema, { name: 'a', kind: long, [long]: 1 });
    expect(JSON.stringify(faults).length).toBeLessThan(500);
  });

  it('leave a value that fits as it is', async () => {
    const value = { name: 'a' };
    expect(await fitting(schema, value, 'facts-wrong', 'f')).toBe(value);
    await expect(fitting(schema, {}, 'facts-wrong', 'f')).rejects.toMatchObject({ where: 'f' });
  });
});

describe('a problem of several faults', () => {
  it('says the first in full and names the others', () => {
    const problem = problemOf(
      [
        { path: ['a'], what: 'one', hint: 'h' },
        { path: ['b', '2'], what: 'two', hint: 'i' },
      ],
      'facts-wrong',
      'f',
    );
    expect(problem).toMatchObject({ where: 'f › a', message: 'one; f › b › 2: two', hint: 'h' });
  });
});

describe('the shipped schemas', () => {
  it.each(['rule', 'overlay', 'grades', 'rider', 'race'])(
    '%s compiles, so an editor can use it',
    async (name) => {
      const read = (file: string) =>
        JSON.parse(readFileSync(new URL(`../rules/${file}`, import.meta.url), 'utf8'));
      const shipped = read(`${name}.schema.json`);
      expect(shipped.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
      const usable = name === 'overlay' ? { ...read('rule.schema.json'), required: ['id'] } : shipped;
      expect(await faultsOf(usable, {})).toBeDefined();
    },
  );
});
