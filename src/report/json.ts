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

function follow(node: Node | undefined): Node {
  const name = node?.$ref?.replace('#/$defs/', '');
  return name === undefined ? (node ?? {}) : follow(definitions[name]);
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
  const chosen = choose(node, value);
  const free = typeof chosen.additionalProperties === 'object' ? chosen.additionalProperties : undefined;
  const properties = chosen.properties ?? {};
  const known = Object.keys(properties).filter((key) => Object.hasOwn(value, key));
  const others = Object.keys(value)
    .filter((key) => !Object.hasOwn(properties, key))
    .sort();
  const lines = [...known, ...others]
    .filter((key) => value[key] !== undefined)
    .map((key) => `${inner}${JSON.stringify(key)}: ${write(value[key]!, properties[key] ?? free, inner)}`);
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n${indent}}`;
}

function isList(value: Json): value is readonly Json[] {
  return Array.isArray(value);
}
