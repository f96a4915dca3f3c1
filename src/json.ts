import { sha256 } from './math/digest.ts';
import { Problem, type ProblemCode } from './problem.ts';

/** How deep the fields of any file that is wanted lie, with room to spare: what walks through values calls itself. */
const mostDepth = 64;

/**
 * Parses the JSON text of a file; a byte-order mark before it is passed over.
 *
 * @throws Problem that names the line at which it stops being JSON, or where it is nested too deeply
 */
export function parseJson(text: string, code: ProblemCode, file: string): unknown {
  const json = text.replace(/^\uFEFF/, '');
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch {
    const offset = offsetOfFault(json);
    const line = json.slice(0, offset).split('\n').length;
    const ended = json.slice(offset).trim() === '';
    throw new Problem({
      code,
      what: ended ? 'this is not JSON: it is empty or breaks off' : 'this is not JSON',
      where: `${file} › line ${line}`,
      hint: 'Look there and just before for a comma, quotation mark or brace that is missing or too many',
    });
  }
  if (depthOf(json) > mostDepth) {
    throw new Problem({
      code,
      what: `it is nested more than ${mostDepth} deep`,
      where: file,
      hint: 'No file that is wanted here is',
    });
  }
  return value;
}

/**
 * JSON text with the keys of every object in order and no spaces: the same value gives the same text,
 * however its file was laid out.
 */
export function canonical(value: unknown): string {
  return JSON.stringify(ordered(value));
}

function ordered(value: unknown): unknown {
  if (value === null || typeof value !== 'object') return value;
  if (Array.isArray(value)) return value.map(ordered);
  const parts = value as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    Object.keys(parts)
      .sort()
      .map((key) => [key, ordered(parts[key])]),
  );
}

/** Digest of a JSON value, however its file was laid out. */
export function digestOf(value: unknown): Promise<string> {
  return sha256(new TextEncoder().encode(canonical(value)));
}

/** How deep brackets and braces lie in one another, strings left out: asked before anything descends into them. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const character = text[at];
    if (quoted) {
      if (character === '\\') at++;
      else if (character === '"') quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === '{' || character === '[') deepest = Math.max(deepest, ++depth);
    else if (character === '}' || character === ']') depth--;
  }
  return deepest;
}

/** What may stand next. */
type State = 'value' | 'value or ]' | 'name' | 'name or }' | ':' | ', or end' | 'nothing';

/** A string, another scalar, or a mark. */
const token =
  /(?<string>"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(?<scalar>-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)|(?<mark>[{}[\],:])/y;

/** Where text stops being JSON. The engines' own messages differ from version to version in saying so. */
function offsetOfFault(text: string): number {
  const open: ('{' | '[')[] = [];
  let state: State = 'value';
  let at = 0;
  for (;;) {
    while (' \t\r\n'.includes(text[at] ?? 'x')) at++;
    token.lastIndex = at;
    const found = token.exec(text);
    const next: State | null = found === null ? null : follow(state, found.groups!, open);
    if (next === null) return at;
    state = next;
    at = token.lastIndex;
  }
}

/** The state after a token, or null when the token may not stand there. Keeps `open` up to date. */
function follow(
  state: State,
  { string, scalar, mark }: Readonly<Record<string, string | undefined>>,
  open: ('{' | '[')[],
): State | null {
  const afterValue = (): State => (open.length === 0 ? 'nothing' : ', or end');
  if (state === 'value' || state === 'value or ]') {
    if (string !== undefined || scalar !== undefined) return afterValue();
    if (mark === '{' || mark === '[') {
      open.push(mark);
      return mark === '{' ? 'name or }' : 'value or ]';
    }
  }
  if (string !== undefined) return state === 'name' || state === 'name or }' ? ':' : null;
  if (mark === ':') return state === ':' ? 'value' : null;
  if (mark === ',') return state !== ', or end' ? null : open.at(-1) === '{' ? 'name' : 'value';
  const closes = mark === '}' ? '{' : mark === ']' ? '[' : null;
  const mayClose = state === ', or end' || state === `${closes === '{' ? 'name or }' : 'value or ]'}`;
  if (closes === null || !mayClose || open.at(-1) !== closes) return null;
  open.pop();
  return afterValue();
}
