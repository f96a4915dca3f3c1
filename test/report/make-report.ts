import type {
  Chart,
  Finding,
  Level,
  Reading,
  Report,
  ReportMeasurement,
  ReportRecording,
  Rule,
  Source,
  TracesChart,
} from '../../src/types.ts';

/** Uniform numbers in [0, 1), the same for the same seed. */
export function draws(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export const hex = (digit: string) => digit.repeat(64);
const code = 'b1b1b1b1';
const pair = `pair:${code}`;
const second = `second:${code}`;

const measuredSource: Source = {
  kind: 'measured',
  falseAlarm: {
    command: 'npm run limits',
    withinClaims: {
      submissions: 8520,
      query: { share: 0.0005, atMost: 0.001 },
      refer: { share: 0, atMost: 0.0004 },
    },
    asFound: {
      submissions: 8520,
      query: { share: 0.012, atMost: 0.014 },
      refer: { share: 0.0001, atMost: 0.0006 },
    },
  },
  note: '20,000 simulated honest submissions.',
};

export function makeRule(parts: Partial<Rule> & { readonly id: string }): Rule {
  return {
    title: parts.id,
    family: 'agreement',
    question: 'Is anything unusual?',
    measure: 'mean-difference',
    subjects: 'pairs',
    options: { blockSeconds: 60 },
    needs: ['a second recording'],
    limits: { query: { 'at least': 1.6, of: 'field spread', end: 'cautious' } },
    highest: 'refer',
    ceilings: [],
    claims: { above: 'The primary reads {value} above the second.', fine: 'The two agree within {value}.' },
    innocent: ['The second meter reads low.'],
    settles: ['A third recording of one ride.'],
    source: measuredSource,
    examples: [{ value: 0, interval: [-1, 1], count: 100, level: 'none' }],
    ...parts,
  };
}

const rules: readonly Rule[] = [
  makeRule({
    id: 'sprint-overshoot',
    title: 'Sprints read higher',
    question: 'Are sprints higher beyond the steady difference?',
    measure: 'sprint-excess',
    options: { leadSeconds: 5, bestSeconds: 5, longestSeconds: 30 },
    claims: {
      above:
        'In {efforts|sprint|sprints} the primary reads {value} above the second, beyond the steady difference.',
      fine: 'Sprints differ by {value} beyond the steady difference.',
    },
    innocent: [
      'The second meter reads low in sprints: single-sided pedals do when one leg pushes harder.',
      'The second recorder averages over several seconds, which flattens a short peak.',
      'Wheel speed changed fast: some trainers need it steady.',
    ],
    settles: [
      'A second recording of three sprints by the same meters, after a zero offset of the pedals.',
      'The original file from the head unit.',
    ],
  }),
  makeRule({
    id: 'late-drift',
    title: 'The difference grows through the ride',
    question: 'Does the difference grow through the ride?',
    measure: 'drift',
    options: { blockSeconds: 30 },
    claims: {
      above: 'From start to finish the primary comes to read {value} further above the second.',
      fine: 'The difference changes by {value} from start to finish.',
    },
    innocent: [
      'The trainer warmed up: many read higher as their belt and oil warm.',
      'The pedals cooled, which shifts their zero.',
    ],
    settles: [
      'A spin-down after ten minutes of riding, before the next race.',
      'A second recording of three sprints by the same meters, after a zero offset of the pedals.',
    ],
    source: {
      kind: 'common practice',
      note: 'organisers look at means over 5 min; warm-up drift often crosses zero 20 to 25 min in.',
    },
  }),
  makeRule({
    id: 'above-history',
    title: 'Beyond what earlier rides allow',
    family: 'physiology',
    question: 'Is the power–duration curve beyond what this history allows?',
    measure: 'ability-excess',
    subjects: 'rider',
    claims: {
      above: 'The best {duration} is {value} above what the earlier rides allow.',
      fine: 'The ride stays within what the earlier rides allow; the nearest is {duration} at {value}.',
    },
    innocent: ['The rider has improved.', 'The earlier rides hold few hard efforts.'],
    settles: ['More of the rider’s own recordings.'],
    source: { kind: 'published', citation: 'Maturana et al. 2018, J Sci Med Sport 21:1.' },
  }),
  makeRule({
    id: 'heart-rate-unresponsive',
    title: 'Heart rate does not answer to power',
    family: 'physiology',
    measure: 'heart-rate-fit',
    subjects: 'primary',
    needs: ['heart rate'],
    claims: {
      below: 'Power explains {value} of the changes of heart rate.',
      fine: 'Power explains {value} of the changes of heart rate; the strap read {mean} on average.',
    },
    source: { kind: 'from memory', note: 'typical share for a strap worn well.' },
  }),
  makeRule({ id: 'mean-bias', title: 'One meter reads higher overall', measure: 'mean-difference' }),
  makeRule({
    id: 'dead-cadence',
    title: 'Cadence stays at zero',
    family: 'trace',
    subjects: 'primary',
    needs: ['cadence'],
    claims: {
      above: 'Cadence is zero in {value} of the seconds in which power flows.',
      fine: 'Cadence is zero in {value} of the seconds in which power flows.',
    },
  }),
  makeRule({
    id: 'implied-mass',
    title: 'Speed on climbs implies another mass',
    family: 'physiology',
    subjects: 'rider',
    needs: ['body mass'],
  }),
  makeRule({
    id: 'rescaled-series',
    title: 'Whole watts multiplied afterwards',
    family: 'recording',
    subjects: 'recordings',
  }),
  makeRule({ id: 'odd-one-out', title: 'Which of three meters is off', subjects: 'submission' }),
];

/** A ride of `seconds` seconds on two meters, the primary drifting and high in sprints. */
export function makeTraces(seconds: number): TracesChart {
  const next = draws(7);
  const primary: Reading[] = [];
  const other: Reading[] = [];
  const cadence: Reading[] = [];
  const heartRate: Reading[] = [];
  let beat = 110;
  for (let at = 0; at < seconds; at++) {
    const sprint = at % 1500 > 1470;
    const lost = at > 4000 && at < 4030;
    const base = 215 + 45 * Math.sin(at / 240) + 25 * Math.sin(at / 37);
    const truth = sprint ? 780 + 60 * next() : Math.max(0, base + 60 * (next() - 0.5));
    const drift = 1 + 0.05 * (at / seconds);
    primary.push(lost ? null : Math.round(truth * drift * (sprint ? 1.15 : 1)));
    other.push(at > 7000 && at < 7012 ? null : Math.round(truth + 14 * (next() - 0.5)));
    cadence.push(lost ? null : Math.round(sprint ? 112 : 88 + 5 * Math.sin(at / 50) + 3 * next()));
    beat += (105 + truth * 0.22 - beat) / 45;
    heartRate.push(lost ? null : Math.round(beat + 2 * next()));
  }
  return {
    kind: 'traces',
    id: 'traces',
    start: 1_773_514_800,
    primary,
    seconds: [{ subject: second, power: other }],
    cadence,
    heartRate,
  };
}

/** Every kind of chart there is, the names of their ids being their kinds. */
export function makeCharts(seconds: number): readonly Chart[] {
  const traces = makeTraces(seconds);
  const next = draws(11);
  const blocks = Array.from({ length: Math.floor(seconds / 60) }, (_, index) => ({
    at: index * 60 + 30,
    percent: Math.round((98 + (5 * index * 60) / seconds + 2.5 * (next() - 0.5)) * 10) / 10,
    watts: Math.round(200 + 60 * next()),
  }));
  const trend = [0, 0.25, 0.5, 0.75, 1].map((share) => ({
    at: share * seconds,
    percent: 98 + 5 * share,
    low: 97.2 + 5 * share,
    high: 98.8 + 5 * share,
  }));
  const slice = (from: number, length: number, values = traces.primary) => values.slice(from, from + length);
  const durations = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 2400, 3600];
  return [
    traces,
    { kind: 'ratio', id: 'ratio', subject: pair, blocks, trend },
    {
      kind: 'dependence',
      id: 'dependence',
      subject: pair,
      of: 'power',
      unit: 'W',
      points: blocks.map(({ watts, percent }) => ({ x: watts, percent })),
      bands: [200, 220, 240].map((from) => ({
        from,
        to: from + 20,
        count: 20,
        percent: 100 + from / 100,
        low: 99.2 + from / 100,
        high: 100.8 + from / 100,
      })),
    },
    {
      kind: 'agreement',
      id: 'agreement',
      subject: pair,
      points: blocks.map(({ watts, percent }) => ({ watts, percent: Math.round((percent - 100) * 10) / 10 })),
      mean: 0.5,
      low: -3,
      high: 4,
      half: { mean: 0.4, low: 0.7, high: 0.7 },
      concordance: { value: 0.972, low: 0.951, high: 0.984, honest: 0.871 },
    },
    {
      kind: 'meters',
      id: 'meters',
      meters: [
        { subject: 'primary', watts: 224.3, percent: 3.1, scatter: 1.2 },
        { subject: pair, watts: 215.9, percent: -1.4, scatter: 0.9 },
        { subject: 'pair:c2c2c2c2', watts: 214, percent: -1.7, scatter: null },
      ],
      pairs: [{ a: 'primary', b: pair, percent: 4.2 }],
    },
    {
      kind: 'efforts',
      id: 'efforts',
      subject: pair,
      efforts: [1460, 2960, 4460, 5960]
        .filter((from) => from + 50 < seconds)
        .map((from, index) => ({
          from,
          primary: slice(from, 50),
          second: slice(from, 50, traces.seconds[0]!.power),
          peakPrimary: 965.4 + index,
          peakSecond: 822.6 - index,
          excess: 13.4 + index,
          seconds: 29,
        })),
    },
    {
      kind: 'curve',
      id: 'curve',
      points: durations.map((duration) => {
        const power = 240 + 900 / (1 + duration / 18);
        return {
          duration,
          race: duration === 3600 ? null : Math.round(power * (duration === 300 ? 1.14 : 1)),
          best: duration < 5 ? null : Math.round(power * 0.98),
          allowed: duration < 5 ? null : Math.round(power * 1.07),
        };
      }),
    },
    {
      kind: 'response',
      id: 'response',
      blocks: blocks.map(({ at, watts }) => ({
        at,
        watts,
        heartRate: Math.round(105 + watts * 0.22 + 3 * next()),
        predicted: Math.round((105 + watts * 0.22) * 10) / 10,
      })),
    },
    {
      kind: 'close-ups',
      id: 'close-ups',
      closeUps: [200, 900].map((from) => ({
        from,
        power: slice(from, 60),
        cadence: slice(from, 60, traces.cadence!),
        heartRate: slice(from, 60, traces.heartRate!),
        marked: [from + 20, from + 32] as const,
      })),
    },
    {
      kind: 'coverage',
      id: 'coverage',
      recording: [0, seconds],
      window: [300, seconds - 60],
      lost: [[4000, 4030]],
      paused: [[5000, 5200]],
    },
    {
      kind: 'totals',
      id: 'totals',
      rows: [
        {
          total: 'mean power',
          unit: 'W',
          stated: 251,
          fromSamples: [
            { definition: 'with zeros', value: 224.1 },
            { definition: 'without zeros', value: 231.8 },
          ],
          off: -8,
        },
        {
          total: 'work',
          unit: 'kJ',
          stated: 2420,
          fromSamples: [{ definition: 'all seconds', value: 2419.3 }],
          off: 0,
        },
      ],
    },
    {
      kind: 'comb',
      id: 'comb',
      from: 60,
      counts: Array.from({ length: 420 }, (_, index) =>
        (index + 60) % 21 === 10 ? 0 : Math.round(60 * Math.exp(-(((index - 150) / 80) ** 2)) + 8 * next()),
      ),
      expected: Array.from({ length: 420 }, (_, index) => 60 * Math.exp(-(((index - 150) / 80) ** 2)) + 4),
      factor: 1.05,
      marked: Array.from({ length: 420 }, (_, index) => index + 60).filter((watts) => watts % 21 === 10),
      stretch: [0, seconds],
    },
    {
      kind: 'copies',
      id: 'copies',
      copies: [{ at: [600, 3000], seconds: 150, first: slice(600, 150), second: slice(600, 150) }],
    },
    {
      kind: 'plateaus',
      id: 'plateaus',
      power: traces.primary,
      plateaus: [
        { stretch: [600, 1200], watts: 200 },
        { stretch: [1800, 2400], watts: 260 },
      ],
    },
    {
      kind: 'averaging',
      id: 'averaging',
      correlation: [-0.5, -0.1, 0.02, 0.01, -0.42, 0.03, 0, 0.01, -0.02, 0.01],
      scatter: [
        { span: 2, watts: 4.1 },
        { span: 4, watts: 7.3 },
        { span: 8, watts: 11.6 },
        { span: 16, watts: 12.9 },
      ],
      seconds: 5,
      from: 700,
      power: slice(700, 60),
    },
    {
      kind: 'speed-curve',
      id: 'speed-curve',
      inertia: 12.5,
      points: Array.from({ length: 300 }, () => {
        const speed = 3 + 10 * next();
        return { speed, watts: 3 * speed + 0.25 * speed ** 3 + 2 * next() };
      }),
      curve: Array.from({ length: 30 }, (_, index) => ({
        speed: 3 + index / 3,
        watts: 3 * (3 + index / 3) + 0.25 * (3 + index / 3) ** 3,
      })),
    },
    {
      kind: 'sections',
      id: 'sections',
      rows: [
        {
          section: 'first third',
          count: 1,
          watts: 214.2,
          differences: [{ subject: pair, percent: 1.2, low: 0.4, high: 2 }],
        },
        {
          section: 'climb',
          count: 3,
          watts: 288,
          differences: [{ subject: pair, percent: 1.9, low: null, high: null }],
        },
        {
          section: 'sprint',
          count: 4,
          watts: 702.5,
          differences: [{ subject: pair, percent: 15.4, low: 12.1, high: 18.7 }],
        },
      ],
    },
    {
      kind: 'climbs',
      id: 'climbs',
      declared: 58,
      implied: { kg: 66.2, low: 64.9, high: 67.4 },
      climbs: Array.from({ length: 24 }, (_, index) => ({
        at: 300 + 60 * index,
        watts: 280 + 20 * next(),
        kg: 66.2 + 3 * next(),
      })),
    },
    {
      kind: 'traits',
      id: 'traits',
      traits: [
        {
          trait: 'cadence varies from second to second',
          value: 0.2,
          unit: 'rpm',
          atLeast: 0.6,
          atMost: null,
          shown: false,
        },
        { trait: 'heart rate lags power', value: 24, unit: 's', atLeast: 5, atMost: 90, shown: true },
      ],
    },
  ];
}

export function makeFinding(
  parts: Partial<Finding> & { readonly rule: string; readonly level: Level },
): Finding {
  return {
    subject: pair,
    value: 4.2,
    unit: '%',
    interval: [3.1, 5.3],
    count: 120,
    limits: {
      note: { atLeast: 5, atMost: null, end: 'cautious' },
      query: { atLeast: 8, atMost: null, end: 'cautious' },
    },
    expected: { declared: { centre: -2.1, spread: 2.3 }, field: { centre: -2.1, spread: 4.7 } },
    ceiling: null,
    remarks: [],
    explainedBy: null,
    stretches: [],
    summary: { id: parts.level === 'none' ? 'fine' : 'above', values: {} },
    chance: null,
    charts: [],
    ...parts,
  };
}

function makeRecording(parts: Partial<ReportRecording>): ReportRecording {
  return {
    subject: 'primary',
    role: 'primary',
    name: 'race-primary.fit',
    field: null,
    sha256: hex('a'),
    format: 'fit',
    device: { maker: 'Maker One', product: 'Trainer 5', serial: '3912345678' },
    declared: { name: 'primary', place: 'trainer', sides: 2, tolerancePercent: 2 },
    sport: 'cycling',
    indoors: true,
    start: 1_773_514_800,
    seconds: 10_800,
    recordedSeconds: 10_770,
    meanPower: 224.3,
    maxPower: 1012,
    channels: ['power', 'cadence', 'heartRate', 'speed', 'distance'],
    defects: [],
    ...parts,
  };
}

/** A submission with two meters whose sprints and drift are flagged; `seconds` long. */
export function makeReport(parts: Partial<Report> = {}, seconds = 10_800): Report {
  const charts = makeCharts(seconds);
  const findings: readonly Finding[] = [
    makeFinding({
      rule: 'sprint-overshoot',
      level: 'refer',
      value: 15.2,
      interval: [12.4, 18.1],
      count: 4,
      limits: {
        query: { atLeast: 8, atMost: null, end: 'cautious' },
        refer: { atLeast: 12, atMost: null, end: 'cautious' },
      },
      stretches: [
        [1471, 1500],
        [2971, 3000],
        [4471, 4500],
        [5971, 6000],
      ],
      summary: { id: 'above', values: { efforts: 4 } },
      chance: 0.00008,
      charts: ['efforts', 'traces'],
    }),
    makeFinding({
      rule: 'late-drift',
      level: 'query',
      value: 5.1,
      interval: [4.2, 6],
      limits: {
        query: { atLeast: 4, atMost: null, end: 'cautious' },
        refer: { atLeast: 8, atMost: null, end: 'cautious' },
      },
      expected: { declared: { centre: 0, spread: 1.2 }, field: { centre: 0, spread: 1.4 } },
      ceiling: 'The meters were declared with a warm-up of under ten minutes.',
      stretches: [[9000, 10_800]],
      charts: ['ratio'],
      remarks: ['the ride is shorter than an hour, so that warming up weighs more'],
      explainedBy: 'sprint-overshoot',
    }),
    makeFinding({
      rule: 'above-history',
      subject: 'rider',
      level: 'note',
      value: 6.4,
      interval: [2.3, 10.4],
      expected: null,
      summary: { id: 'above', values: { duration: { value: 300, unit: 's' } } },
      charts: ['curve'],
      chance: 0.02,
    }),
    makeFinding({
      rule: 'heart-rate-unresponsive',
      subject: 'primary',
      level: 'none',
      unit: 'share',
      value: 0.812,
      interval: [0.74, 0.87],
      limits: { query: { atLeast: null, atMost: 0.2, end: 'cautious' } },
      expected: null,
      summary: { id: 'fine', values: { mean: { value: 147.3, unit: 'bpm' } } },
      charts: ['response'],
    }),
    makeFinding({ rule: 'mean-bias', level: 'none' }),
    makeFinding({
      rule: 'dead-cadence',
      subject: 'primary',
      level: 'none',
      unit: 'share',
      value: 0.011,
      interval: [0.011, 0.011],
      expected: null,
      limits: { query: { atLeast: 0.98, atMost: null, end: 'cautious' } },
    }),
  ];
  const judged = findings.map(
    (finding): ReportMeasurement => ({
      measure: rules.find((rule) => rule.id === finding.rule)!.measure,
      rule: finding.rule,
      subject: finding.subject,
      state: 'measured',
      value: finding.value,
      unit: finding.unit,
      interval: finding.interval,
      count: finding.count,
      options: { blockSeconds: 60, durations: [5, 60, 300] },
      reason: null,
    }),
  );
  const open = (
    rule: string,
    subject: string,
    reason: ReportMeasurement['reason'],
    state: ReportMeasurement['state'] = 'not applicable',
  ): ReportMeasurement => ({
    measure: 'some-measure',
    rule,
    subject,
    state,
    value: null,
    unit: null,
    interval: null,
    count: null,
    options: {},
    reason,
  });
  return {
    schemaVersion: 1,
    tool: { name: 'wattassay', version: '0.1.0' },
    inputs: [
      { role: 'primary', name: 'race-primary.fit', sha256: hex('a') },
      { role: 'second', name: 'race-second.fit', sha256: `${code}${hex('c').slice(8)}` },
      { role: 'history', name: 'profile.json', sha256: hex('d') },
    ],
    settings: {
      rider: {
        massKg: 68.4,
        recordClass: 'open',
        devices: [{ name: 'primary', place: 'trainer', sides: 2, tolerancePercent: 2 }],
      },
      race: {
        start: '2026-03-14T19:00:00Z',
        finish: '2026-03-14T22:00:00Z',
        kind: 'race',
        required: ['power', 'second recording'],
      },
      redacted: false,
    },
    rules: {
      name: 'shipped rules',
      sha256: hex('e'),
      overlaid: [{ file: 'late-drift.rule.json', text: '{ "id": "late-drift" }' }],
      items: rules,
    },
    submission: {
      primary: makeRecording({ seconds, recordedSeconds: seconds - 30 }),
      seconds: [
        makeRecording({
          subject: second,
          role: 'second',
          name: 'race-second.fit',
          sha256: `${code}${hex('c').slice(8)}`,
          device: { maker: 'Maker Two', product: 'Pedals 3', serial: null },
          declared: null,
          indoors: null,
          start: 1_773_514_797,
          meanPower: 215.9,
          maxPower: 871,
          seconds,
          recordedSeconds: seconds - 12,
          defects: [{ id: 'truncated', values: { kept: 10_788, lostBytes: 312 } }],
        }),
      ],
      unreadable: [],
      window: { stretch: [300, seconds - 60], given: true },
      history: { rides: 24, notBefore: 2, leftOut: { 'other sport': 3, unreadable: 1 } },
    },
    grade: 'refer',
    reach: {
      judged: findings.length,
      notApplicable: 2,
      failed: 1,
      because: [
        { id: 'failed', count: 1 },
        { id: 'no-fact', count: 1 },
        { id: 'too-few-blocks', count: 1 },
      ],
    },
    missing: [],
    findings,
    measurements: [
      ...judged,
      open('implied-mass', 'rider', { id: 'no-fact', values: { fact: 'massKg' } }),
      open('rescaled-series', 'primary', { id: 'too-few-blocks', values: { blocks: 9, needed: 15 } }),
      open(
        'odd-one-out',
        'submission',
        { id: 'failed', values: { message: 'not a finite measurement: NaN' } },
        'failed',
      ),
    ],
    sections: [
      {
        kind: 'sprint',
        stretch: [1471, 1500],
        watts: 640,
        differences: [{ subject: second, percent: 21.4, low: null, high: null }],
      },
      { kind: 'sprint', stretch: [2971, 3000], watts: 655, differences: [] },
      {
        kind: 'steady',
        stretch: [600, 1200],
        watts: 231.5,
        differences: [{ subject: second, percent: 1.2, low: 0.8, high: 1.6 }],
      },
    ],
    setPoints: {
      steadiest: second,
      blocks: [
        {
          stretch: [600, 900],
          target: 230,
          cadence: 88.4,
          speed: null,
          meters: [
            { subject: 'primary', over: 14.2, low: 11.8, high: 16.6, rise: null },
            { subject: second, over: -0.3, low: null, high: null, rise: 4.8 },
          ],
        },
      ],
      trends: [{ subject: 'primary', of: 'cadence', value: -2.4, low: -3.9, high: -0.9 }],
    },
    alignment: [
      {
        subject: second,
        secure: true,
        reason: 'power-agrees',
        offset: { value: 3, low: 2.8, high: 3.2 },
        zoneSlip: 3600,
        driftPpm: { value: 12, low: -3, high: 27 },
        segments: [{ stretch: [0, seconds], offset: 3 }],
        peak: 0.81,
        surrogatePeak: 0.06,
        margin: 1843.2,
        correlation: 0.944,
        byChannel: [
          { channel: 'power', lag: 0, correlation: 0.944 },
          { channel: 'heartRate', lag: -4, correlation: 0.991 },
        ],
        coverage: 0.997,
        origin: 'independent',
        originEvidence: { left: 0.42, noise: 0.08, gain: 1.04, dynamics: 3.1 },
        sameAs: null,
      },
    ],
    steps: [
      { subject: 'primary', id: 'read', values: { format: 'fit', records: 10_770 } },
      { subject: 'primary', id: 'gaps', values: { missing: 30, longest: 30 } },
      { subject: second, id: 'read', values: { format: 'fit', records: 10_788 } },
      { subject: second, id: 'extra-meter', values: { name: 'Left Pedal' } },
      { subject: second, id: 'aligned', values: { offset: { value: 3, unit: 's' }, segments: 1 } },
      { subject: 'submission', id: 'window-given', values: { from: 300, to: seconds - 60 } },
    ],
    charts,
    ...parts,
  };
}
