import { auditRecordings, type ReadSubmission } from '../../src/audit.ts';
import type { Channel, RuleSet } from '../../src/types.ts';
import type { Evidence, Fault } from '../make/faults/fault.ts';
import { honestKinds, honestWish } from '../make/honest.ts';
import { Random } from '../make/random.ts';
import type { RideKind } from '../make/ride.ts';
import { type Draft, drawDraft, realise, type Submission, type SubmissionWish } from '../make/submission.ts';
import { handedIn } from './evidence.ts';
import { comparedInEvent } from './field.ts';
import { checkPair } from './lag.ts';
import { faultNamed, type Lot, type Plan, type StrengthName } from './plan.ts';
import { answersOf, type Row } from './row.ts';

/** Draws and audits: one row for an honest draw, one for each strength of a fault. */
export function rowsOf(plan: Plan, lot: number, draw: number, rules: RuleSet): Row[] {
  const what = plan.lots[lot]! as Exclude<Lot, { sort: 'coverage' }>;
  return submissionsOf(plan, what, draw).map(({ submission, strength, dose }) => {
    const read = handedIn(submission);
    const report = auditRecordings(read, rules);
    const compared = comparedInEvent(submission, rules);
    const { draft } = submission.truth;
    return {
      lot,
      draw,
      strength,
      dose,
      ride: draft.demand.kind,
      minutes: Math.round((draft.demand.window[1] - draft.demand.window[0]) / 60),
      evidence: evidenceOf(read),
      grade: report.grade,
      answers: answersOf(report).map((answer) => (answer.rule === compared?.rule ? compared : answer)),
      pairs: what.sort === 'honest' ? report.alignment.map((one, k) => checkPair(submission, k, one)) : [],
    };
  });
}

export interface Drawn {
  readonly submission: Submission;
  readonly strength: StrengthName | null;
  readonly dose: number | null;
}

export function submissionsOf(
  { build, seed }: Plan,
  lot: Exclude<Lot, { sort: 'coverage' }>,
  draw: number,
): Drawn[] {
  const key = `${build} ${seed} ${lot.sort === 'honest' ? `${lot.cohort} ${lot.kind}` : lot.fault} ${draw}`;
  const random = new Random(key);
  if (lot.sort === 'honest') {
    const kind = honestKinds.find(({ name }) => name === lot.kind)!;
    const draft = drawDraft(key, { ...honestWish(kind, random.fork('wish')), cohort: lot.cohort, build });
    const submission = realise(withShortPast(kind.change?.(draft, random.fork('change')) ?? draft));
    return [{ submission, strength: null, dose: null }];
  }
  const fault = faultNamed(lot.fault);
  const drawn = drawDraft(key, { ...faultWish(fault, random.fork('wish')), build });
  return planted(fault, drawn, random, lot.strengths);
}

/** The same rider, ride and meters with the fault at each of these strengths; what it leaves alone is drawn once. */
function planted(fault: Fault, drawn: Draft, random: Random, strengths: readonly StrengthName[]): Drawn[] {
  const base = withShortPast(withEvidence(drawn, fault.needs));
  const doses = dosesOf(fault, random.fork('dose'));
  let last: Submission | undefined;
  return strengths.map((strength) => {
    const dose = doses[strength];
    const draft = fault.before?.(base, dose, base.random.fork('fault 0')) ?? base;
    const submission = realise(draft, undefined, last);
    last = submission;
    return {
      submission: fault.after?.(submission, dose, base.random.fork('fault 0 after')) ?? submission,
      strength,
      dose,
    };
  });
}

/** What a profile makes use of. */
const pastChannels: readonly Channel[] = ['power', 'heartRate', 'speed', 'altitude', 'temperature'];

/** Of past rides no more is recorded than that. */
function withShortPast(draft: Draft): Draft {
  const { history } = draft;
  return history === null ? draft : { ...draft, history: { ...history, channels: pastChannels } };
}

function dosesOf({ strengths }: Fault, random: Random): { readonly [S in StrengthName]: number } {
  const { borderline, moderate, clear } = strengths;
  const any = Math.exp(random.between(Math.log(borderline / 4), Math.log(clear)));
  return { borderline, moderate, clear, any };
}

const races: readonly RideKind[] = ['bunch race', 'bunch race', 'time trial', 'long climb', 'short race'];

/** An indoor race of up to an hour on recorders as riders use them, with the evidence that the fault needs. */
function faultWish(fault: Fault, random: Random): SubmissionWish {
  const kind = random.pick(races);
  return {
    kind,
    ...(kind === 'short race' ? {} : { minutes: random.integer(20, 60) }),
    recorders: 'varied',
    seconds: fault.needs.includes('third recording')
      ? 2
      : fault.needs.includes('second recording') || random.chance(0.3)
        ? 1
        : 0,
    ...(fault.needs.includes('event') ? { others: 1 } : {}),
    ...(fault.needs.includes('history')
      ? { history: { rides: random.integer(14, 26), days: 150, hard: random.between(0.25, 0.5) } }
      : {}),
    ...fault.wish?.(random.fork('fault')),
  };
}

/** Without what the fault cannot be seen by, nobody is asked to see it. */
function withEvidence(draft: Draft, needs: readonly Evidence[]): Draft {
  const wanted: Channel[] = [
    ...(needs.includes('cadence') ? (['cadence'] as const) : []),
    ...(needs.includes('heart rate') ? (['heartRate'] as const) : []),
  ];
  return {
    ...draft,
    others: draft.others.map((other) => withEvidence(other, needs)),
    history:
      draft.history !== null && needs.includes('sprints in history')
        ? { ...draft.history, sprints: true }
        : draft.history,
    meters: needs.includes('single watts')
      ? draft.meters.map((meter) => ({ ...meter, stepWatts: 0 }))
      : draft.meters,
    recordings: draft.recordings.map(({ recorder, meter }) => ({
      meter,
      recorder: {
        ...recorder,
        channels: [...new Set([...recorder.channels, ...wanted])],
        smart: needs.includes('every second') ? 0 : recorder.smart,
        strap: needs.includes('heart rate') ? [] : recorder.strap,
      },
    })),
  };
}

function evidenceOf({ primary, seconds, profile }: ReadSubmission): Row['evidence'] {
  return {
    seconds: seconds.length,
    history: profile?.rides.length ?? 0,
    heartRate: primary.channels.heartRate !== undefined,
    cadence: primary.channels.cadence !== undefined,
  };
}
