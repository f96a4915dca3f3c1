import fc from 'fast-check';
import { expect, it } from 'vitest';
import { canonical } from '../src/json.ts';

const shuffled = (value: unknown): unknown =>
  value === null || typeof value !== 'object'
    ? value
    : Array.isArray(value)
      ? value.map(shuffled)
      : Object.fromEntries(
          Object.entries(value)
            .reverse()
            .map(([name, part]) => [name, shuffled(part)]),
        );

it('gives the same text whatever the order of fields, and the same value back', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(canonical(shuffled(value))).toBe(canonical(value));
      expect(JSON.parse(canonical(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
  );
  expect(canonical({ b: [2, { d: 1, c: 0 }], a: 'x' })).toBe('{"a":"x","b":[2,{"c":0,"d":1}]}');
});
