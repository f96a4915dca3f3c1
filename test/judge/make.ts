import type { Ground } from '../../src/judge/load.ts';
import type { Finding, Measured, MeasureInfo, Measurement, Rule } from '../../src/types.ts';

/** A rule that is right in every respect; tests change what they are about. */
export const rule: Rule = {
  id: 'wobble',
  title: 'The front wheel wobbles',
  family: 'trace',
  question: 'Does it wobble?',
  measure: 'wobble-size',
  subjects: 'primary',
  options: { windowSeconds: 30, bands: [1, 2, 3] },
  needs: ['power'],
  limits: {
    note: { 'at least': 2, of: 'value', end: 'estimate' },
    query: { 'at least': 5, of: 'value', end: 'cautious' },
    refer: { 'at least': 10, of: 'value', end: 'cautious' },
  },
  highest: 'refer',
  ceilings: [{ when: 'cobbles', level: 'note', why: 'Cobbles make every wheel wobble.' }],
  claims: { above: 'It wobbles by {value} in {times|place|places}.', fine: 'It runs true.' },
  innocent: ['A spoke is loose.'],
  settles: ['A look at the wheel.'],
  source: { kind: 'common practice', note: 'Invented.' },
  examples: [
    { value: 1, interval: [0, 2], count: 9, level: 'none' },
    { value: 3, interval: [1, 5], count: 9, level: 'note' },
    { value: 7, interval: [6, 8], count: 9, level: 'query' },
    { value: 12, interval: [11, 13], count: 9, level: 'refer' },
    { value: 12, interval: [11, 13], count: 9, circumstances: ['cobbles'], level: 'note' },
  ],
};

export const measure: MeasureInfo = {
  id: 'wobble-size',
  of: 'recording',
  unit: 's',
  options: {
    windowSeconds: { what: 'length of a window, s', list: false },
    bands: { what: 'edges of the bands, Hz', list: true },
  },
  circumstances: { cobbles: 'the road is paved with cobbles' },
};

const pairMeasure: MeasureInfo = { id: 'hub-gap', of: 'pair', unit: '%', options: {}, circumstances: {} };

export const ground: Ground = {
  rules: [rule],
  grades: { queriesThatRefer: null, why: 'Questions do not add up.' },
  measures: [measure, pairMeasure],
};

export function outcome(value: number, extras: Partial<Measured> = {}): Measured {
  return {
    state: 'measured',
    value,
    unit: '%',
    interval: [value, value],
    count: 10,
    stretches: [],
    circumstances: [],
    details: {},
    charts: [],
    ...extras,
  };
}

export function measurement(outcome: Measurement['outcome'], from: Rule = rule): Measurement {
  return {
    measure: from.measure,
    rule: from.id,
    subject: 'primary',
    options: from.options,
    outcome,
    remarks: [],
  };
}

export function finding(level: Finding['level'], from = 'wobble'): Finding {
  return {
    rule: from,
    subject: 'primary',
    level,
    value: 1,
    unit: '%',
    interval: [1, 1],
    count: 1,
    limits: {},
    expected: null,
    ceiling: null,
    remarks: [],
    explainedBy: null,
    stretches: [],
    summary: { id: 'above', values: {} },
    chance: null,
    charts: [],
  };
}
