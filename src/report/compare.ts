import { type Difference, differences } from '../differences.ts';
import type { Rule } from '../types.ts';
import { restsOnMass } from './health.ts';

/** One thing in which a report differs from the one that its files give: a finding, a chart, a field. */
export interface Unlike {
  /** "findings", "grade" … and which of them, where there are several. */
  readonly kind: string;
  readonly item: string | null;
  readonly fields: readonly Difference[];
}

type Fields = Readonly<Record<string, unknown>>;

/** What tells the members of a report's lists apart, so that each is compared with its own counterpart. */
const keys: Readonly<Record<string, (item: Fields) => string>> = {
  inputs: ({ role, name }) => `${role} ${name}`,
  findings: ({ rule, subject }) => `${rule} of ${subject}`,
  measurements: ({ rule, subject }) => `${rule} of ${subject}`,
  alignment: ({ subject }) => String(subject),
  charts: ({ id }) => String(id),
};
/** In this order people want to know. */
const first = ['grade', 'missing', 'findings', 'measurements', 'reach'];

/** Where a report, which may be anybody's, differs from ours: item by item, what weighs most in front. */
export function compare(stated: unknown, ours: unknown): readonly Unlike[] {
  const found = new Map<string, { kind: string; item: string | null; fields: Difference[] }>();
  for (const { path, before, after } of differences(keyed(stated), keyed(ours))) {
    const [kind = '', ...rest] = path;
    const item = Object.hasOwn(keys, kind) ? (rest.shift() ?? null) : null;
    const key = JSON.stringify([kind, item]);
    const known = found.get(key) ?? { kind, item, fields: [] };
    known.fields.push({ path: rest, before, after });
    found.set(key, known);
  }
  const rank = ({ kind }: Unlike) => (first.includes(kind) ? first.indexOf(kind) : first.length);
  return [...found.values()].sort((a, b) => rank(a) - rank(b));
}

/** The same with the members of its lists under their keys; whatever is no such list stays as it is. */
function keyed(report: unknown): unknown {
  if (report === null || typeof report !== 'object' || Array.isArray(report)) return report;
  const fields = Object.entries(report).map(([name, value]) => {
    const keyOf = Object.hasOwn(keys, name) ? keys[name] : undefined;
    return [name, keyOf !== undefined && Array.isArray(value) ? byKey(value, keyOf) : value];
  });
  return Object.fromEntries(fields);
}

function byKey(list: readonly unknown[], keyOf: (item: Fields) => string): Fields {
  const seen = new Map<string, number>();
  const members = list.map((item) => {
    const key = keyOf((item ?? {}) as Fields);
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return [times === 1 ? key : `${key} (${times})`, item] as const;
  });
  return Object.fromEntries(members);
}

/** What a check that rests on body mass has a hand in besides its own result. */
const restsOnAll = ['grade', 'reach', 'missing', 'charts'];

/**
 * Whether a difference may come from body mass, which a redacted report leaves out: then the checks that need it
 * can be made only by whoever knows it.
 */
export function mayRestOnMass(rules: readonly Rule[]): (unlike: Unlike) => boolean {
  const ids = new Set(rules.filter(restsOnMass).map(({ id }) => id));
  return ({ kind, item }) =>
    kind === 'findings' || kind === 'measurements'
      ? item !== null && ids.has(item.slice(0, item.indexOf(' of ')))
      : restsOnAll.includes(kind);
}
