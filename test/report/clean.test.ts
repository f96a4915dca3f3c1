import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clean, shorten, showable } from '../../src/report/clean.ts';
import { payloads } from './payloads.ts';

const anything = fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom(...payloads));

describe('clean', () => {
  it('leaves no control, separator, direction or surrogate character', () => {
    fc.assert(
      fc.property(anything, (text) => {
        expect(clean(text)).not.toMatch(/[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/u);
      }),
    );
  });

  it('leaves nothing that a log takes for a command, wherever a line may break', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(':', '#', '[', ' ', 'x') }), (text) => {
        expect(clean(text)).not.toMatch(/::|##\[/);
      }),
    );
  });

  it('leaves ordinary names as they are', () => {
    for (const name of ['race.fit', 'é 测试 🚴🏽 ñ', 'a: b', '#1', '17:05:03'])
      expect(clean(name)).toBe(name);
  });

  it('is done after one pass', () => {
    fc.assert(
      fc.property(anything, (text) => {
        expect(clean(clean(text))).toBe(clean(text));
      }),
    );
  });
});

describe('showable', () => {
  it('replaces one character by one, so that nothing vanishes unseen', () => {
    expect(showable('a\u0000\r\n\u202eb')).toBe('a\ufffd\ufffd\ufffd\ufffdb');
  });
});

describe('shorten', () => {
  it('keeps what fits and marks a cut', () => {
    expect(shorten('abc', 3)).toBe('abc');
    expect(shorten('abcd', 3)).toBe('ab…');
    expect([...shorten('🚴'.repeat(1e6), 10)]).toHaveLength(10);
  });
});
