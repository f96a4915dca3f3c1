import type { ErrorObject, ValidateFunction } from 'ajv';
import { nearest } from './math/nearest.ts';
import { Problem, type ProblemCode } from './problem.ts';

/** One thing that is wrong with a JSON value, before it is known in which file it stands. */
export interface Fault {
  /** Names of the fields that lead to it; items of a list by their place, counted from 1. */
  readonly path: readonly string[];
  /** A full sentence without the final stop. */
  readonly what: string;
  readonly hint?: string;
}

/** The schema of one kind of file: JSON Schema 2020-12. Its descriptions are part of the sentences. */
export type Schema = Readonly<Record<string, unknown>>;

/** How much of a stranger's value is quoted back. */
const quoted = 60;

const compiled = new WeakMap<Schema, Promise<ValidateFunction>>();

/** Every fault that a schema finds in a value; none when it fits. Each schema is compiled once. */
export async function faultsOf(schema: Schema, value: unknown): Promise<Fault[]> {
  let ready = compiled.get(schema);
  if (ready === undefined) {
    ready = compile(schema);
    compiled.set(schema, ready);
  }
  const validate = await ready;
  if (validate(value)) return [];
  const faults = (validate.errors ?? [])
    .map((error) => faultOf(error, value))
    .filter((fault) => fault !== null);
  const seen = new Set<string>();
  return faults.filter((fault) => {
    const key = JSON.stringify(fault);
    return !seen.has(key) && seen.add(key);
  });
}

/** The value, when it fits; otherwise a problem that says every fault. */
export async function fitting<T>(
  schema: Schema,
  value: unknown,
  code: ProblemCode,
  file: string,
): Promise<T> {
  const faults = await faultsOf(schema, value);
  if (faults.length > 0) throw problemOf(faults, code, file);
  return value as T;
}

/** One problem for each fault. */
export function problemsOf(faults: readonly Fault[], code: ProblemCode, file: string): Problem[] {
  return faults.map(
    ({ path, what, hint }) =>
      new Problem({
        code,
        what,
        where: [file, ...path].join(' › '),
        ...(hint === undefined ? {} : { hint }),
      }),
  );
}

/** All faults of one file as one problem: the first in full, the rest counted. */
export function problemOf(faults: readonly Fault[], code: ProblemCode, file: string): Problem {
  const [first, ...rest] = problemsOf(faults, code, file);
  if (first === undefined) throw new Error('no fault to make a problem of');
  if (rest.length === 0) return first;
  const others = rest.map((problem) => `${problem.where}: ${problem.message}`).join('; ');
  return new Problem({
    code,
    what: `${first.message}; ${others}`,
    ...(first.where === undefined ? {} : { where: first.where }),
    ...(first.hint === undefined ? {} : { hint: first.hint }),
  });
}

async function compile(schema: Schema): Promise<ValidateFunction> {
  const { Ajv2020 } = await import('ajv/dist/2020.js');
  const ajv = new Ajv2020({
    allErrors: true,
    verbose: true,
    discriminator: true,
    allowUnionTypes: true,
    strictTypes: false,
    strictRequired: false,
    validateSchema: false,
  });
  return ajv.compile(schema);
}

function faultOf(error: ErrorObject, root: unknown): Fault | null {
  const path = placeOf(error.instancePath, root);
  const { params } = error;
  const described = describe(error.parentSchema);
  switch (error.keyword) {
    case 'additionalProperties':
      return unknownField(path, String(params.additionalProperty), Object.keys(shapeOf(error)));
    case 'required': {
      const field = String(params.missingProperty);
      const about = describe(shapeOf(error)[field]);
      return { path, what: `“${field}” is missing${about}` };
    }
    case 'enum':
      return oneOf(path, error.data, params.allowedValues as unknown[]);
    case 'discriminator':
      return oneOf([...path, String(params.tag)], params.tagValue, tagsOf(error));
    case 'const':
      return oneOf(path, error.data, [params.allowedValue]);
    case 'type':
      return { path, what: `${quote(error.data)} is not ${typeWords(params.type)}${described}` };
    case 'pattern':
      return { path, what: `${quote(error.data)} does not fit${described || ': it must not be blank'}` };
    case 'minimum':
    case 'exclusiveMinimum':
    case 'maximum':
    case 'exclusiveMaximum':
      return {
        path,
        what: `${quote(error.data)} is out of range: it must be ${rangeWords(error)}${described}`,
      };
    case 'minItems':
    case 'maxItems':
    case 'maxLength':
    case 'minLength':
    case 'maxProperties':
    case 'minProperties':
      return { path, what: `${sizeWords(error.keyword, Number(params.limit))}${described}` };
    case 'uniqueItems':
      return { path, what: 'the same item stands twice' };
    default:
      return null;
  }
}

function unknownField(path: readonly string[], field: string, known: readonly string[]): Fault {
  const near = nearest(field, known);
  return {
    path: [...path, shorten(field)],
    what: 'there is no such field',
    hint:
      near === null
        ? `Known here: ${known.filter((name) => name !== '$schema').join(', ')}`
        : `Did you mean “${near}”?`,
  };
}

function oneOf(path: readonly string[], value: unknown, allowed: readonly unknown[]): Fault {
  const words = allowed.map(String);
  const near = typeof value === 'string' ? nearest(value, words) : null;
  return {
    path,
    what: `${value === undefined ? 'nothing' : quote(value)} stands where one of these must: ${words.join(', ')}`,
    ...(near === null ? {} : { hint: `Did you mean “${near}”?` }),
  };
}

function placeOf(pointer: string, root: unknown): string[] {
  const path: string[] = [];
  let at: unknown = root;
  for (const segment of pointer.split('/').slice(1)) {
    const name = segment.replaceAll('~1', '/').replaceAll('~0', '~');
    path.push(Array.isArray(at) ? String(Number(name) + 1) : shorten(name));
    at = (at as Record<string, unknown>)[name];
  }
  return path;
}

function shapeOf(error: ErrorObject): Record<string, unknown> {
  return (error.parentSchema?.properties ?? {}) as Record<string, unknown>;
}

function tagsOf(error: ErrorObject): string[] {
  const branches = (error.parentSchema?.oneOf ?? []) as { properties: Record<string, { const: string }> }[];
  return branches.map((branch) => branch.properties[String(error.params.tag)]?.const ?? '');
}

function describe(schema: unknown): string {
  const description = (schema as { description?: unknown } | undefined)?.description;
  return typeof description === 'string' ? `: ${description}` : '';
}

const typeNames: Readonly<Record<string, string>> = {
  number: 'a number',
  integer: 'a whole number',
  string: 'a text in quotation marks',
  object: 'a group of fields in braces',
  array: 'a list in square brackets',
  boolean: 'true or false',
  null: 'null',
};

function typeWords(type: unknown): string {
  const names = (Array.isArray(type) ? type : [type]).map((name) => typeNames[String(name)] ?? String(name));
  return names.join(' or ');
}

function rangeWords({ keyword, params }: ErrorObject): string {
  const words = {
    minimum: 'at least',
    exclusiveMinimum: 'above',
    maximum: 'at most',
    exclusiveMaximum: 'below',
  };
  return `${words[keyword as keyof typeof words]} ${params.limit}`;
}

function sizeWords(keyword: string, limit: number): string {
  const bound = keyword.startsWith('min') ? 'at least' : 'at most';
  const unit = keyword.endsWith('Items') ? 'item' : keyword.endsWith('Length') ? 'character' : 'field';
  return `there must be ${bound} ${limit} ${unit}${limit === 1 ? '' : 's'}`;
}

function quote(value: unknown): string {
  return shorten(JSON.stringify(value) ?? String(value));
}

function shorten(text: string): string {
  return text.length > quoted ? `${text.slice(0, quoted)}…` : text;
}
