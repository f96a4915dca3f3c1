import { raisedLevels } from '../judge/limit.ts';
import { clean } from '../report/index.ts';
import { ruleLimitSaid, ruleNumber, spreadSaid } from '../report/words/limit.ts';
import { number, unitMark } from '../report/words/number.ts';
import { falseAlarmSaid, sourceSaid } from '../report/words/source.ts';
import { wrap } from '../report/wrap.ts';
import type { MeasureInfo, OptionValue, Rule, RuleExample, Unit } from '../types.ts';
import type { painter } from './say.ts';

type Paint = ReturnType<typeof painter>;

const subjects: Readonly<Record<Rule['subjects'], string>> = {
  primary: 'the primary recording',
  recordings: 'every recording',
  pairs: 'the primary beside each second recording',
  rider: 'the rider',
  submission: 'the submission as a whole',
};

/** All that a rule says, for a reader: question, limits, numbers, words, source, examples. */
export function showRule(rule: Rule, measure: MeasureInfo, width: number, paint: Paint): string {
  const lines: string[] = [];
  const put = (text: string, indent = 0, lead = '') => {
    const pad = ' '.repeat(indent);
    wrap(clean(text), Math.max(30, width - indent - lead.length)).forEach((line, i) => {
      lines.push(`${pad}${i === 0 ? lead : ' '.repeat(lead.length)}${line}`.trimEnd());
    });
  };
  const part = (heading: string, items: readonly string[]) => {
    if (items.length === 0) return;
    lines.push('', paint('underline', heading));
    for (const item of items) put(item, 2, '· ');
  };

  lines.push(`${paint('bold', rule.id)}  ${clean(rule.title)}`);
  put(rule.question);
  if (rule.off !== undefined) put(`Switched off: ${rule.off}`);
  lines.push('');
  put(
    `Put to ${subjects[rule.subjects]}; family ${rule.family}; highest level ${rule.highest}; measure ${measure.id}${inUnit(measure.unit)}.`,
  );
  if (rule.needs.length > 0) put(`Needs ${rule.needs.join(', ')}.`);
  part('Limits', limitLines(rule, measure.unit));
  part(
    'Held down',
    rule.ceilings.map(({ when, level, why }) => {
      const words = measure.circumstances[when];
      const repeated = words === undefined || why.toLowerCase().includes(words.toLowerCase());
      return `to ${level} when ${when}${repeated ? '' : ` (${words})`}: ${why}`;
    }),
  );
  part(
    'Numbers of the measure (options)',
    Object.entries(rule.options).map(
      ([name, value]) => `${name} = ${said(value)}: ${measure.options[name]?.what ?? 'not known'}`,
    ),
  );
  part(
    'What it says',
    Object.entries(rule.claims).map(([side, claim]) => `${side}: ${claim}`),
  );
  part('It may be innocent', rule.innocent);
  part('It would be settled by', rule.settles);
  part('Where the limits come from', [sourceSaid(rule)]);
  const { falseAlarm } = rule.source;
  part('How often it asks honest riders', [
    falseAlarmSaid(rule) ?? (rule.highest === 'note' ? 'Never: what it finds is a remark.' : 'Not measured.'),
    ...(falseAlarm === undefined ? [] : [`Measure it again: ${falseAlarm.command}`]),
  ]);
  part(
    'Examples, judged whenever the rule is loaded',
    rule.examples.map((example) => exampleLine(example, measure.unit)),
  );
  return `${lines.join('\n')}\n`;
}

/** What the measure's value is counted in; a count or a ratio bears no unit. */
function inUnit(unit: Unit): string {
  if (unit === 'share') return ', a share';
  const mark = unitMark(unit);
  return mark === '' ? '' : `, in ${mark}`;
}

function limitLines({ limits }: Rule, unit: Unit): string[] {
  const set = raisedLevels.flatMap((level) => {
    const limit = limits[level];
    return limit === undefined ? [] : [{ level, limit }];
  });
  const lines = set.map(({ level, limit }) => `${level}: ${ruleLimitSaid(limit, unit)}`);
  return set.some(({ limit }) => limit.of !== 'value') ? [...lines, spreadSaid] : lines;
}

function said(value: OptionValue): string {
  return typeof value === 'number' ? String(value) : `[${value.join(', ')}]`;
}

function exampleLine({ value, interval, count, circumstances = [], level }: RuleExample, unit: Unit): string {
  const when = circumstances.length === 0 ? '' : `, ${circumstances.join(', ')}`;
  return `${ruleNumber(value, unit)} [${interval.map(number).join(', ')}] from ${count}${when}: ${level}`;
}
