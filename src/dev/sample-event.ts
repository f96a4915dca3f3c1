import * as faults from '../../test/make/faults/index.ts';
import { writeFit } from '../../test/make/fit-writer.ts';
import {
  type Draft,
  drawDraft,
  drawSubmission,
  type Planted,
  realise,
  type Submission,
  type SubmissionWish,
} from '../../test/make/submission.ts';

/** One rider of the invented event. What became of them is told in samples/README.md. */
interface Entry {
  readonly number: string;
  /** Chosen so that the ride shows what its story tells; another draw would ride another race. */
  readonly seed?: number;
  readonly wish: SubmissionWish;
  /** Trouble with clocks and radios that no fault of a meter explains. */
  readonly trouble?: (draft: Draft) => Draft;
}

const race: SubmissionWish = {
  kind: 'bunch race',
  race: 'Skerrow Sound Circuit, round 3',
  minutes: 45,
  places: ['trainer', 'pedal'],
};
const men = { recordClass: 'open', standard: 'racer' } as const;
const women = { recordClass: 'women', standard: 'racer' } as const;
const history = { rides: 14, days: 150, firstForm: 0.95, hard: 0.5, minutes: 24 };
const planted = (fault: Planted['fault'], strength: number): readonly Planted[] => [{ fault, strength }];

const entries: readonly Entry[] = [
  { number: '11', wish: { ...race, rider: women } },
  { number: '14', wish: { ...race, rider: men, faults: planted(faults.drift, 0.14) } },
  { number: '17', wish: { ...race, rider: men, faults: planted(faults.sprintHigh, 0.27) } },
  { number: '23', wish: { ...race, rider: men, seconds: 0, faults: planted(faults.reportsTarget, 1) } },
  { number: '28', wish: { ...race, rider: women, seconds: 0, faults: planted(faults.deadCadence, 1) } },
  {
    number: '31',
    seed: 0,
    wish: { ...race, rider: men, history, faults: planted(faults.strongerThanHistory, 0.2) },
  },
  { number: '35', seed: 43, wish: { ...race, rider: women, history, form: 1.025 } },
  { number: '42', seed: 5, wish: { ...race, rider: men }, trouble: awkward },
];

/** A head unit on another island's time, started late, with a lost minute and a few lost seconds. */
function awkward(draft: Draft): Draft {
  const [from, to] = draft.demand.window;
  const middle = Math.round((from + to) / 2);
  const recordings = draft.recordings.map(({ recorder, meter }, index) => ({
    meter,
    recorder:
      index === 0
        ? {
            ...recorder,
            dropouts: [
              { from: middle - 400, to: middle - 397, as: 'zero' as const },
              { from: middle + 300, to: middle + 304, as: 'no record' as const },
            ],
          }
        : {
            ...recorder,
            offset: 3600 + 7.4,
            driftPpm: 45,
            from: from - 45,
            dropouts: [{ from: middle, to: middle + 60, as: 'no record' as const }],
          },
  }));
  return { ...draft, recordings };
}

/** Every file of the invented event by its path under samples/, the same bytes each time. */
export function sampleEvent(): ReadonlyMap<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  const json = (path: string, value: unknown) =>
    files.set(path, new TextEncoder().encode(`${JSON.stringify(value, null, 2)}\n`));
  for (const entry of entries) {
    const submission = enter(entry);
    const folder = `event/riders/${entry.number}`;
    files.set(`${folder}/primary.fit`, writeFit(submission.primary));
    for (const second of submission.seconds) files.set(`${folder}/${second.name}`, writeFit(second));
    for (const past of submission.history) files.set(`${folder}/history/${past.name}`, writeFit(past));
    json(`${folder}/rider.json`, submission.rider);
    // One race: the same facts whoever tells them.
    json('event/race.json', { ...submission.race, required: ['power', 'heartRate'] });
  }
  return files;
}

function enter({ number, seed: draw, wish, trouble }: Entry): Submission {
  const seed = draw === undefined ? `Skerrow rider ${number}` : `Skerrow rider ${number} ${draw}`;
  return trouble === undefined ? drawSubmission(seed, wish) : realise(trouble(drawDraft(seed, wish)));
}
