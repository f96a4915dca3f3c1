import type { OptionValue, Report, ReportMeasurement, Rule, Unit } from '../../types.ts';
import { type Hole, html, type Markup } from '../markup.ts';
import { levelWords } from '../words/grade.ts';
import { ruleLimitSaid } from '../words/limit.ts';
import { number, quantity, range } from '../words/number.ts';
import { workingsNotPrinted } from '../words/paper.ts';
import { reasonInFull } from '../words/reasons.ts';
import { foreign } from '../words/sentence.ts';
import { falseAlarmSaid, sourceSaid } from '../words/source.ts';
import { subjectName } from '../words/subject.ts';
import { folded, said, section, table, terms } from './said.ts';

/** For whoever wants to redo the sums: every rule, every option, every result. */
export function workings(report: Report): Markup {
  return section(
    'workings',
    'How each number was worked out',
    html`${report.rules.items.map((rule) => ruleOf(report, rule))}<p class="paper">${workingsNotPrinted(report.rules.items.length)}</p>`,
    'workings',
  );
}

function ruleOf(report: Report, rule: Rule): Markup {
  const results = report.measurements.filter((one) => one.rule === rule.id);
  return html`<details><summary>${rule.title} <code>${rule.id}</code></summary><div class="flow">${terms([
    ['Asks', rule.question],
    ['Measure', html`<code>${rule.measure}</code>`],
    ['Needs', rule.needs.join(', ')],
    ['Limits', limits(rule, results.find((one) => one.unit !== null)?.unit ?? null)],
    ['Highest level', rule.highest],
    ['Lowered when', rule.ceilings.map((one) => one.why).join(' ')],
    ['Where the limits come from', sourceSaid(rule)],
    ['False alarms', falseAlarmSaid(rule)],
    [
      'Measured with',
      rule.source.falseAlarm === undefined ? null : html`<code>${rule.source.falseAlarm.command}</code>`,
    ],
    ['Switched off', rule.off ?? null],
    ['Options', results.length === 0 ? null : options(results[0]!.options)],
    ...results.map((one) => [`Result, ${subjectName(report, one.subject)}`, resultSaid(one)] as const),
  ])}</div></details>`;
}

/** The number, its interval and how many pieces it rests on; or why there is none. */
function resultSaid(one: ReportMeasurement): Hole {
  const { count, interval, unit } = one;
  if (one.value === null || unit === null) return result(one);
  const between = interval === null ? null : (range(interval, unit) ?? 'exact');
  return [
    result(one),
    ` (${[between, count === null ? null : `rests on ${number(count)}`].filter((part) => part !== null).join('; ')})`,
  ];
}

function limits({ limits }: Rule, unit: Unit | null): string {
  return (['note', 'query', 'refer'] as const)
    .flatMap((level) => {
      const one = limits[level];
      return one === undefined ? [] : [`${levelWords[level]}: ${ruleLimitSaid(one, unit)}`];
    })
    .join('; ');
}

function result(one: ReportMeasurement): Hole {
  if (one.value !== null && one.unit !== null) return quantity(one.value, one.unit);
  return one.reason === null ? 'withheld' : said(reasonInFull(one.reason));
}

function options(all: Readonly<Record<string, OptionValue>>): string {
  return Object.entries(all)
    .map(
      ([name, value]) =>
        `${name} = ${typeof value === 'number' ? number(value) : value.map(number).join(', ')}`,
    )
    .join('; ');
}

/** What is needed to run the same audit again. */
export function checksums(report: Report): Markup {
  const { inputs, rules, tool } = report;
  const files = table(
    'Files used',
    ['role', 'name', 'checksum (SHA-256)'],
    inputs.map((input) => [input.role, said([foreign(input.name)]), html`<code>${input.sha256}</code>`]),
  );
  const overlaid = rules.overlaid.map(({ file, text }) =>
    folded(said([foreign(file)]), html`<pre><code>${text}</code></pre>`),
  );
  return section(
    'checksums',
    'Checksums, to run it again',
    html`<p>${tool.name} ${tool.version}; ${said([foreign(rules.name)])}, checksum <code>${rules.sha256}</code>.</p>${files}${overlaid.length > 0 && html`<h3>Rules of this event that differ from the shipped ones</h3>${overlaid}`}`,
  );
}
