import type { OptionValue, Report, ReportMeasurement, Rule } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import { levelWords } from '../words/grade.ts';
import { number, quantity, range } from '../words/number.ts';
import { reasonInFull } from '../words/reasons.ts';
import { foreign } from '../words/sentence.ts';
import { falseAlarmSaid, sourceSaid } from '../words/source.ts';
import { subjectName } from '../words/subject.ts';
import { said, table, terms } from './said.ts';

/** For whoever wants to redo the sums: every rule, every option, every result. */
export function workings(report: Report): Markup {
  return html`<section aria-labelledby="workings"><h2 id="workings">How each number was worked out</h2>${report.rules.items.map((rule) => ruleOf(report, rule))}</section>`;
}

function ruleOf(report: Report, rule: Rule): Markup {
  const results = report.measurements.filter((one) => one.rule === rule.id);
  return html`<details><summary>${rule.title} <span class="code">${rule.id}</span></summary><div class="flow">${terms(
    [
      ['Asks', rule.question],
      ['Measure', html`<span class="code">${rule.measure}</span>`],
      ['Needs', rule.needs.join(', ')],
      ['Limits', limits(rule)],
      ['Highest level', rule.highest],
      ['Lowered when', rule.ceilings.map((one) => one.why).join(' ')],
      ['Where the limits come from', sourceSaid(rule)],
      ['False alarms', falseAlarmSaid(rule)],
      [
        'Measured with',
        rule.source.kind === 'measured' ? html`<span class="code">${rule.source.command}</span>` : null,
      ],
      ['Switched off', rule.off ?? null],
    ],
  )}${
    results.length > 0 &&
    table(
      'Results',
      ['about', 'result', '95 % interval', 'rests on', 'options'],
      results.map((one) => [
        subjectName(report, one.subject),
        result(one),
        interval(one),
        one.count === null ? '' : number(one.count),
        options(one.options),
      ]),
    )
  }</div></details>`;
}

function limits({ limits }: Rule): string {
  return (['note', 'query', 'refer'] as const)
    .flatMap((level) => {
      const one = limits[level];
      if (one === undefined) return [];
      const sides = (['at least', 'at most'] as const).flatMap((side) =>
        one[side] === undefined ? [] : [`${side} ${number(one[side])}`],
      );
      return [
        `${levelWords[level]}: ${sides.join(' or ')}, of the ${one.of}, by the ${one.end === 'cautious' ? 'cautious end of the interval' : 'estimate itself'}`,
      ];
    })
    .join('; ');
}

function result(one: ReportMeasurement) {
  if (one.value !== null && one.unit !== null) return quantity(one.value, one.unit);
  return one.reason === null ? 'withheld' : said(reasonInFull(one.reason));
}

function interval({ interval, unit }: ReportMeasurement): string {
  return interval === null || unit === null ? '' : (range(interval, unit) ?? 'exact');
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
  return html`<section aria-labelledby="checksums"><h2 id="checksums">Checksums, to run it again</h2><p>${tool.name} ${tool.version}; ${said([foreign(rules.name)])}, checksum <span class="code">${rules.sha256}</span>.</p>${table(
    'Files used',
    ['role', 'name', 'checksum (SHA-256)'],
    inputs.map((input) => [
      input.role,
      said([foreign(input.name)]),
      html`<span class="code">${input.sha256}</span>`,
    ]),
  )}${
    rules.overlaid.length > 0 &&
    html`<h3>Rules of this event that differ from the shipped ones</h3>${rules.overlaid.map(
      ({ file, text }) =>
        html`<details><summary>${said([foreign(file)])}</summary><pre class="code">${text}</pre></details>`,
    )}`
  }</section>`;
}
