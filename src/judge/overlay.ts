type Fields = Readonly<Record<string, unknown>>;

/** The fields of a file without the note that tells an editor which schema it follows. */
export function withoutSchema(file: object): Fields {
  return Object.fromEntries(Object.entries(file).filter(([name]) => name !== '$schema'));
}

/** Fields whose parts belong together: a change replaces them whole. */
const whole: ReadonlySet<string> = new Set(['source']);

/**
 * Lays a file over the rule of the same id: fields by name, lists and the source as a whole, null takes
 * a field away (JSON Merge Patch, RFC 7396). Laying the same file over twice changes nothing more.
 */
export function laidOver(shipped: Fields, change: Fields): Fields {
  const merged = new Map(Object.entries(shipped));
  for (const [name, value] of Object.entries(change)) {
    if (value === null) merged.delete(name);
    else if (isFields(value) && !whole.has(name)) {
      const before = merged.get(name);
      merged.set(name, laidOver(isFields(before) ? before : {}, value));
    } else merged.set(name, value);
  }
  return Object.fromEntries(merged);
}

function isFields(value: unknown): value is Fields {
  return value !== null && typeof value === 'object' && !Array.isArray(value);
}
