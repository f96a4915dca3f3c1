import { raisedLevels } from '../judge/limit.ts';
import { clean } from '../report/index.ts';
import { falseAlarmSaid, sourceSaid } from '../report/words/source.ts';
import { wrap } from '../report/wrap.ts';
import type { Limit, MeasureInfo, OptionValue, Rule, RuleExample } from '../types.ts';
import type { painter } from './say.ts';

type Paint = ReturnType<typeof painter>;

const subjects: Readonly<Record<Rule['subjects'], string>> = {
  primary: 'the primary recording',
  recordings: 'every recording',
  pairs: 'the primary beside each second recording',
  rider: 'the rider',
  submission: 'the submission as a whole',
};

const spreads: Readonly<Record<Limit['of'], string>> = {
  value: '',
  'declared spread': ' spreads as declared',
  'field spread': ' spreads as found in the field',
};

const ends: Readonly<Record<Limit['end'], string>> = {
  cautious: 'by the cautious end of the range',
  estimate: 'by the value itself',
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
    `Put to ${subjects[rule.subjects]}; family ${rule.family}; highest level ${rule.highest}; measure ${measure.id}.`,
  );
  if (rule.needs.length > 0) put(`Needs ${rule.needs.join(', ')}.`);
  part('Limits', limitLines(rule));
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
  part('Examples, judged whenever the rule is loaded', rule.examples.map(exampleLine));
  return `${lines.join('\n')}\n`;
}

function limitLines(rule: Rule): string[] {
  return raisedLevels.flatMap((level) => {
    const limit = rule.limits[level];
    if (limit === undefined) return [];
    const numbers = (['at least', 'at most'] as const)
      .filter((bound) => limit[bound] !== undefined)
      .map((bound) => `${bound} ${limit[bound]}${spreads[limit.of]}`);
    return [`${level}: ${numbers.join(' or ')}, ${ends[limit.end]}`];
  });
}

function said(value: OptionValue): string {
  return typeof value === 'number' ? String(value) : `[${value.join(', ')}]`;
}

function exampleLine({ value, interval, count, circumstances = [], level }: RuleExample): string {
  const when = circumstances.length === 0 ? '' : `, ${circumstances.join(', ')}`;
  return `${value} [${interval.join(', ')}] from ${count}${when}: ${level}`;
}
