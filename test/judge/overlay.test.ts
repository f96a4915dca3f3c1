import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { laidOver } from '../../src/judge/overlay.ts';

/** Objects as JSON may hold them, `__proto__` as a name among them. */
const json = fc
  .dictionary(fc.oneof(fc.constant('__proto__'), fc.string({ maxLength: 4 })), fc.jsonValue({ maxDepth: 3 }))
  .map((value) => JSON.parse(JSON.stringify(value)) as Record<string, unknown>);

describe('laying a change over', () => {
  // The cases of RFC 7396, appendix A, whose target and patch are objects.
  it.each([
    [{ a: 'b' }, { a: 'c' }, { a: 'c' }],
    [{ a: 'b' }, { b: 'c' }, { a: 'b', b: 'c' }],
    [{ a: 'b' }, { a: null }, {}],
    [{ a: 'b', b: 'c' }, { a: null }, { b: 'c' }],
    [{ a: ['b'] }, { a: 'c' }, { a: 'c' }],
    [{ a: 'c' }, { a: ['b'] }, { a: ['b'] }],
    [{ a: { b: 'c' } }, { a: { b: 'd', c: null } }, { a: { b: 'd' } }],
    [{ a: [{ b: 'c' }] }, { a: [1] }, { a: [1] }],
    [{ e: null }, { a: 1 }, { e: null, a: 1 }],
    [{}, { a: { bb: { ccc: null } } }, { a: { bb: {} } }],
  ])('%j with %j is %j', (shipped, change, merged) => {
    expect(laidOver(shipped, change)).toEqual(merged);
  });

  it('replaces the source as a whole: its parts belong together', () => {
    const source = { kind: 'from memory', note: 'y' };
    expect(laidOver({ source: { kind: 'published', citation: 'x' } }, { source })).toEqual({ source });
  });

  it('changes nothing more the second time', () => {
    fc.assert(
      fc.property(json, json, (shipped, change) => {
        const once = laidOver(shipped, change);
        expect(laidOver(once, change)).toEqual(once);
      }),
    );
  });

  it('touches neither its inputs nor any prototype', () => {
    fc.assert(
      fc.property(json, json, (shipped, change) => {
        const [before, patch] = [JSON.stringify(shipped), JSON.stringify(change)];
        const merged = laidOver(shipped, change);
        expect([JSON.stringify(shipped), JSON.stringify(change)]).toEqual([before, patch]);
        expect(Object.getPrototypeOf(merged)).toBe(Object.prototype);
      }),
    );
    expect(laidOver({}, JSON.parse('{"__proto__":{"polluted":true}}'))).not.toHaveProperty('polluted');
    expect({}).not.toHaveProperty('polluted');
  });
});
