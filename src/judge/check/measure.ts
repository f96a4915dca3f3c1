import { nearest } from '../../math/nearest.ts';
import type { Fault } from '../../schema.ts';
import type { MeasureInfo, Rule, SubjectKind } from '../../types.ts';

/** Which kind of measure may answer a question put to these subjects. */
const kinds: Readonly<Record<Rule['subjects'], SubjectKind>> = {
  primary: 'recording',
  recordings: 'recording',
  pairs: 'pair',
  rider: 'rider',
  submission: 'submission',
};

/** The measure exists, looks at what the rule is put to, and gets the options that it declares. */
export function measureFaults(rule: Rule, measures: ReadonlyMap<string, MeasureInfo>): Fault[] {
  const measure = measures.get(rule.measure);
  if (measure === undefined) {
    const near = nearest(rule.measure, [...measures.keys()]);
    return [
      {
        path: ['measure'],
        what: `there is no measure “${rule.measure}”`,
        hint: near === null ? 'wattassay rules lists every rule with its measure' : `Did you mean “${near}”?`,
      },
    ];
  }
  return [...subjectFaults(rule, measure), ...optionFaults(rule, measure), ...ceilingFaults(rule, measure)];
}

function subjectFaults(rule: Rule, measure: MeasureInfo): Fault[] {
  if (kinds[rule.subjects] === measure.of) return [];
  const fitting = Object.entries(kinds).filter(([, kind]) => kind === measure.of);
  const names = fitting.map(([subjects]) => subjects).join(' or ');
  return [
    {
      path: ['subjects'],
      what: `“${rule.subjects}” does not fit the measure ${measure.id}, which looks at a ${measure.of}`,
      hint: `Write ${names}`,
    },
  ];
}

function optionFaults(rule: Rule, measure: MeasureInfo): Fault[] {
  const faults: Fault[] = [];
  const declared = Object.keys(measure.options);
  for (const [name, value] of Object.entries(rule.options)) {
    const spec = Object.hasOwn(measure.options, name) ? measure.options[name] : undefined;
    if (spec === undefined) {
      const near = nearest(name, declared);
      const known = declared.length === 0 ? 'it has none' : `it has ${declared.join(', ')}`;
      faults.push({
        path: ['options', name],
        what: `the measure ${measure.id} has no such option`,
        hint: near === null ? `Known: ${known}` : `Did you mean “${near}”?`,
      });
    } else if (Array.isArray(value) !== spec.list) {
      const wanted = spec.list ? 'a list of numbers in square brackets' : 'one number';
      faults.push({ path: ['options', name], what: `it must be ${wanted}: ${spec.what}` });
    }
  }
  for (const name of declared) {
    if (Object.hasOwn(rule.options, name)) continue;
    faults.push({ path: ['options'], what: `“${name}” is missing: ${measure.options[name]!.what}` });
  }
  return faults;
}

function ceilingFaults(rule: Rule, measure: MeasureInfo): Fault[] {
  const known = Object.keys(measure.circumstances);
  const named = [
    ...rule.ceilings.map(({ when }, i) => ({ when, path: ['ceilings', `${i + 1}`, 'when'] })),
    ...rule.examples.flatMap(({ circumstances = [] }, i) =>
      circumstances.map((when) => ({ when, path: ['examples', `${i + 1}`, 'circumstances'] })),
    ),
  ];
  return named
    .filter(({ when }) => !known.includes(when))
    .map(({ when, path }) => {
      const near = nearest(when, known);
      const list = known.length === 0 ? 'none' : known.join(', ');
      return {
        path,
        what: `the measure ${measure.id} never reports the circumstance “${when}”`,
        hint: near === null ? `It reports: ${list}` : `Did you mean “${near}”?`,
      };
    });
}
