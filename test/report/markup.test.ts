import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Hole, html, jsonBlock, svg } from '../../src/report/markup.ts';
import { payloads } from './payloads.ts';

const text = fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom(...payloads));

describe('html', () => {
  it('escapes text and attributes, and puts markup of its own through', () => {
    const inner = html`<b>${'<i>'}</b>`;
    expect(`${html`<p title="${'"<&>\''}">${inner}${[1, 'a', null, false, [inner]]}</p>`}`).toBe(
      '<p title="&#34;&#60;&#38;&#62;&#39;"><b>&#60;i&#62;</b>1a<b>&#60;i&#62;</b></p>',
    );
  });

  it('lets no string out of its place', () => {
    fc.assert(
      fc.property(text, (name) => {
        const made = `${html`<p title="${name}" id='${name}'>${name}</p>`}`;
        expect(made.match(/[<>]/g)).toHaveLength(4);
        expect(made.match(/["']/g)).toHaveLength(4);
        expect(made).not.toMatch(/[\p{Cc}\p{Cs}]/u);
      }),
    );
  });

  it('refuses a value where it could become code, style, address or a name', () => {
    const bad: (() => unknown)[] = [
      () => html`<${'b'}>`,
      () => html`<p ${'x'}>`,
      () => html`<p ${'x'}="1">`,
      () => html`<p title=${'x'}>`,
      () => html`<p onclick="${'x'}">`,
      () => html`<p style="${'x'}">`,
      () => html`<a href="${'x'}">`,
      () => html`<a href="https://example.org/${'x'}">`,
      () => html`<img src="${'x'}">`,
      () => html`<iframe srcdoc="${'x'}"></iframe>`,
      () => html`<script>${'x'}</script>`,
      () => html`<style>${'x'}</style>`,
      () => html`<!-- ${'x'} -->`,
      () => html`<use xlink:href="${'x'}"/>`,
    ];
    for (const make of bad) expect(make).toThrow();
  });

  it('lets a fragment be linked to', () => {
    expect(`${html`<a href="#${'finding-1'}">x</a>`}`).toBe('<a href="#finding-1">x</a>');
  });

  it('refuses objects that only look like markup', () => {
    const forged: unknown[] = [
      { toString: () => '<b>' },
      { markup: '<b>' },
      JSON.parse('{"text":"<b>","made":true}'),
      new String('<b>'),
      () => '<b>',
      Number.NaN,
      Number.POSITIVE_INFINITY,
    ];
    for (const one of forged) expect(() => html`<p>${one as Hole}</p>`).toThrow();
    expect(() => html`<p title="${html`<b></b>`}"></p>`).toThrow();
    expect(() =>
      html(['<p>', '</p>'] as unknown as TemplateStringsArray, { raw: '<b>' } as unknown as Hole),
    ).toThrow();
  });

  it('is the same tag for drawings', () => {
    expect(svg).toBe(html);
  });
});

describe('jsonBlock', () => {
  it('keeps data apart from markup and gives it back unchanged', () => {
    fc.assert(
      fc.property(fc.array(text), (data) => {
        const block = `${jsonBlock('data', data)}`;
        const [, inside] = /^<script type="application\/json" id="data">(.*)<\/script>$/s.exec(block)!;
        expect(inside).not.toMatch(/[<>&\u2028\u2029]/);
        expect(JSON.parse(inside!)).toEqual(data);
      }),
    );
  });
});
