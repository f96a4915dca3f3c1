import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseJson } from '../src/json.ts';
import { Problem } from '../src/problem.ts';

const parse = (text: string) => parseJson(text, 'rule-wrong', 'f');
/** The line that the problem names, or null when the text is JSON. */
function lineNamed(text: string): number | null {
  try {
    parse(text);
    return null;
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return Number(/^f › line (\d+)$/.exec(error.where ?? '')?.[1]);
  }
}

describe('parsing JSON', () => {
  it('gives what JSON.parse gives, byte-order mark or not', () => {
    fc.assert(
      fc.property(fc.json(), fc.boolean(), (text, mark) => {
        expect(parse(mark ? `\uFEFF${text}` : text)).toEqual(JSON.parse(text));
      }),
    );
  });

  it('refuses what is nested too deeply to be walked through, and nothing that people write', () => {
    const nested = (depth: number) => `${'['.repeat(depth)}${']'.repeat(depth)}`;
    expect(() => parse(nested(100_000))).toThrow('it is nested more than 64 deep');
    expect(() => parse(nested(64))).not.toThrow();
    expect(parse(`"${'['.repeat(100)}"`)).toBe('['.repeat(100));
  });

  it.each([
    ['', 1],
    ['{\n  "a": 1,\n  "b" 2\n}', 3],
    ['{\n  "a": 1\n  "b": 2\n}', 3],
    ['{\n  "a": 1,\n}', 3],
    ['[\n1,\n2,\n]', 4],
    ['{\n"a": [1, 2}\n}', 2],
    ['{\n"a": "un\nclosed"}', 2],
    ["{\n'a': 1}", 2],
    ['{"a": 1}\n\n{"b": 2}', 3],
    ['{\n"a": 01}', 2],
    ['{\n"a": .5}', 2],
    ['{\n"a": {\n"b": 1', 3],
    ['{\n"a": True}', 2],
    ['// rule\n{}', 1],
  ])('finds the line at which %j breaks', (text, line) => {
    expect(lineNamed(text)).toBe(line);
  });

  it('names the last line before the end of every text that is cut off', () => {
    fc.assert(
      fc.property(fc.array(fc.jsonValue(), { minLength: 1 }), fc.nat(), (value, cut) => {
        const text = JSON.stringify(value, null, 1);
        const kept = text.slice(0, cut % (text.length - 1));
        expect(lineNamed(kept)).toBeLessThanOrEqual(kept.split('\n').length);
        expect(lineNamed(kept)).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('always stops at a fault, never before one', () => {
    // Breaking one character of right JSON moves the line to that character or after it.
    fc.assert(
      fc.property(fc.array(fc.jsonValue(), { minLength: 1 }), fc.nat(), (value, place) => {
        const text = JSON.stringify(value, null, 1);
        const at = place % text.length;
        const broken = `${text.slice(0, at)}\u0001${text.slice(at + 1)}`;
        const line = text.slice(0, at).split('\n').length;
        const named = lineNamed(broken);
        expect(named === null || named <= line).toBe(true);
      }),
    );
  });

  it('is not exhausted by nesting', () => {
    expect(lineNamed('['.repeat(200_000))).toBe(1);
  });
});
