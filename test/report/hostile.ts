import type { Report } from '../../src/types.ts';

/** Fields that a stranger, or the author of a rule file, fills with words. */
const open = new Set([
  'name',
  'maker',
  'product',
  'serial',
  'sport',
  'why',
  'file',
  'text',
  'title',
  'question',
  'above',
  'below',
  'fine',
  'innocent',
  'settles',
  'needs',
  'note',
  'citation',
  'command',
  'message',
  'trait',
  'total',
  'definition',
  'ceiling',
  'role',
  'column',
  'type',
  'off',
]);

/** The report with one string in every such field, or with several in turn. */
export function withName(report: Report, name: string | readonly string[]): Report {
  let turn = 0;
  const next = () => (typeof name === 'string' ? name : name[turn++ % name.length]!);
  const walk = (value: unknown, key: string): unknown => {
    if (typeof value === 'string') return open.has(key) ? next() : value;
    if (Array.isArray(value)) return value.map((one) => walk(one, key));
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(Object.entries(value).map(([inner, one]) => [inner, walk(one, inner)]));
  };
  const made = walk(report, '') as Report;
  // Roles and the tool are ours; recordings keep the role by which forms tell them apart.
  return {
    ...made,
    tool: report.tool,
    submission: {
      ...made.submission,
      primary: { ...made.submission.primary, role: 'primary' },
      seconds: made.submission.seconds.map((one) => ({ ...one, role: 'second' as const })),
      unreadable: [{ name: next(), sha256: null, why: next() }],
    },
  };
}
