import type { Report } from '../types.ts';
import schema from './report.schema.json' with { type: 'json' };

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
interface Node {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly prefixItems?: readonly Node[];
  readonly additionalProperties?: boolean | Node;
  readonly oneOf?: readonly Node[];
}

const definitions = schema.$defs as unknown as Readonly<Record<string, Node>>;

/**
 * The report as JSON: keys in the order of the schema, names of free maps sorted, lists of plain values on
 * one line. One report has one text, byte for byte, however the object was put together.
 */
export function renderJson(report: Report): string {
  return `${write(report as unknown as Json, schema as unknown as Node, '')}\n`;
}

/** What a node says of an object's keys: worked out once, for a report holds thousands of objects of a few kinds. */
interface Lay {
  readonly fields: readonly {
    readonly key: string;
    /** The key as it stands before its value. */
    readonly label: string;
    readonly node: Node | undefined;
  }[];
  readonly known: ReadonlySet<string>;
  /** Of the values of a free map. */
  readonly free: Node | undefined;
}

const lays = new WeakMap<Node, Lay>();

function layOf(node: Node): Lay {
  const there = lays.get(node);
  if (there !== undefined) return there;
  const { properties = {}, additionalProperties } = node;
  const lay: Lay = {
    fields: Object.entries(properties).map(([key, below]) => ({ key, label: labelOf(key), node: below })),
    known: new Set(Object.keys(properties)),
    free: typeof additionalProperties === 'object' ? additionalProperties : undefined,
  };
  lays.set(node, lay);
  return lay;
}

const labelOf = (key: string) => `${JSON.stringify(key)}: `;

const nothing: Node = {};
const beforeName = '#/$defs/'.length;

function follow(node: Node | undefined): Node {
  return node?.$ref === undefined ? (node ?? nothing) : follow(definitions[node.$ref.slice(beforeName)]);
}

/** Of alternatives, the one whose `kind` is the value's own, else the first that has properties. */
function choose(node: Node, value: { readonly [key: string]: Json }): Node {
  const options = node.oneOf?.map(follow);
  if (options === undefined) return node;
  const kind = value.kind;
  return (
    options.find((one) => (one.properties?.kind as { const?: string } | undefined)?.const === kind) ??
    options.find((one) => one.properties !== undefined) ??
    node
  );
}

function write(value: Json, at: Node | undefined, indent: string): string {
  if (typeof value === 'number') return Number.isFinite(value) ? JSON.stringify(value) : 'null';
  if (value === null || typeof value !== 'object') return JSON.stringify(value ?? null);
  const node = follow(at);
  const inner = `${indent} `;
  if (isList(value)) {
    if (value.every((one) => one === null || typeof one !== 'object')) {
      return JSON.stringify(value); // What is not finite is null there too.
    }
    const items = value.map(
      (one, index) => inner + write(one, node.prefixItems?.[index] ?? node.items, inner),
    );
    return `[\n${items.join(',\n')}\n${indent}]`;
  }
  const { fields, known, free } = layOf(choose(node, value));
  const lines: string[] = [];
  for (const { key, label, node: below } of fields) {
    const one = Object.hasOwn(value, key) ? value[key] : undefined;
    if (one !== undefined) lines.push(inner + label + write(one, below, inner));
  }
  const others = Object.keys(value).filter((key) => !known.has(key));
  for (const key of others.sort()) {
    if (value[key] !== undefined) lines.push(inner + labelOf(key) + write(value[key], free, inner));
  }
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n${indent}}`;
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
