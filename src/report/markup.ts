import { showable } from './clean.ts';

/**
 * Markup that this module made. The brand is kept privately: no string and no parsed JSON can claim to
 * be markup, and nothing exported here turns a bare string into it.
 */
export interface Markup {
  toString(): string;
}
export type Hole = string | number | Markup | null | undefined | false | readonly Hole[];

class Made implements Markup {
  readonly #text: string;

  constructor(text: string) {
    this.#text = text;
  }

  toString(): string {
    return this.#text;
  }

  /** Only what this class constructed has the private field. */
  static holds(value: object): value is Made {
    return #text in value;
  }
}

/** What most holes hold, paths and numbers among them: nothing to escape, seen at one glance. */
const harmless = /^[ !#-%(-;=?-~]*$/;

export function escaped(text: string): string {
  if (harmless.test(text)) return text;
  return showable(text).replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** What may stand in a hole: `text` anything, `attribute` strings and numbers. */
type Context = 'text' | 'attribute';

/** Attributes whose value is code, markup, style or an address: closed to holes, but for addresses below. */
const closed = /^(on.*|style|srcdoc|src|srcset|action|formaction|data|poster|ping|background|cite|xmlns.*)$/i;
const address = /^(href|xlink:href)$/i;
/** An address may hold a hole behind "#", or behind a folder's fixed name, where no scheme can stand any more. */
const fixedStart = /^(#|[a-z][a-z-]*\/)/;
/** Elements whose content is not text. */
const raw = /^(script|style|iframe|noscript|xmp|noembed|noframes|plaintext)$/i;

/** Walks the fixed parts of a template once and says in which context each hole stands; throws if in none. */
function contexts(parts: readonly string[]): readonly Context[] {
  const found: Context[] = [];
  let state: 'text' | 'tag' | 'name' | 'value' = 'text';
  let attribute = '';
  let quote = '';
  let value = '';
  let rawElement = '';
  for (const [index, part] of parts.entries()) {
    let at = 0;
    while (at < part.length) {
      const rest = part.slice(at);
      if (state === 'text') {
        const tag = /^<(\/?)([a-zA-Z][\w:-]*)/.exec(rest);
        if (rest[0] === '<' && tag === null) throw new Error(`neither tag nor text: ${rest.slice(0, 20)}`);
        if (tag !== null) {
          rawElement = tag[1] === '/' ? '' : raw.test(tag[2]!) ? tag[2]! : rawElement;
          state = 'tag';
          at += tag[0].length;
        } else at++;
      } else if (state === 'tag') {
        const name = /^[\w:.-]+(?==)/.exec(rest);
        if (rest[0] === '>') state = 'text';
        if (name !== null) {
          attribute = name[0];
          state = 'name';
          at += name[0].length + 1;
        } else at++;
      } else if (state === 'name') {
        if (rest[0] !== '"' && rest[0] !== "'") throw new Error(`attribute ${attribute} is not quoted`);
        quote = rest[0];
        value = '';
        state = 'value';
        at++;
      } else {
        if (rest[0] === quote) state = 'tag';
        else value += rest[0];
        at++;
      }
    }
    if (index === parts.length - 1) break;
    if (state === 'text' && rawElement === '') found.push('text');
    else if (
      state === 'value' &&
      !closed.test(attribute) &&
      (!address.test(attribute) || fixedStart.test(value))
    ) {
      found.push('attribute');
    } else throw new Error(`no value may stand after …${part.slice(-40)}`);
  }
  if (state !== 'text') throw new Error(`a template ends inside a tag: …${parts.at(-1)!.slice(-40)}`);
  return found;
}

const known = new WeakMap<TemplateStringsArray, readonly Context[]>();

function contextsOf(parts: TemplateStringsArray): readonly Context[] {
  let found = known.get(parts);
  if (found === undefined) {
    found = contexts(parts);
    known.set(parts, found);
  }
  return found;
}

function put(hole: Hole, context: Context): string {
  if (hole === null || hole === undefined || hole === false) return '';
  if (typeof hole === 'string') return escaped(hole);
  if (typeof hole === 'number') {
    if (!Number.isFinite(hole)) throw new Error(`not a number to print: ${hole}`);
    return String(hole);
  }
  if (context === 'text') {
    if (Array.isArray(hole)) return hole.map((one: Hole) => put(one, context)).join('');
    if (Made.holds(hole)) return hole.toString();
  }
  throw new Error(`neither text nor markup in ${context}: ${typeof hole}`);
}

/**
 * Markup from a template: every hole is escaped, and may stand only in text or in a quoted attribute that
 * is not code, style or address. A hole anywhere else is a fault of the program and throws at once.
 */
export function html(parts: TemplateStringsArray, ...holes: readonly Hole[]): Markup {
  const where = contextsOf(parts);
  let out = parts[0]!;
  for (const [index, hole] of holes.entries()) out += put(hole, where[index]!) + parts[index + 1]!;
  return new Made(out);
}

/** The same tag under the name that fits drawings. */
export const svg = html;

/** Data for the page's own script: nothing in it can end the element or start markup. */
export function jsonBlock(id: string, data: unknown): Markup {
  const text = JSON.stringify(data).replace(
    /[<>&\u2028\u2029]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return new Made(`<script type="application/json" id="${escaped(id)}">${text}</script>`);
}
