import { readsHigh } from '../../test/make/faults/bias.ts';
import { blockCopied } from '../../test/make/faults/copies.ts';
import { recorderStops } from '../../test/make/faults/gaps.ts';
import * as faults from '../../test/make/faults/index.ts';
import { headUnitAverages } from '../../test/make/faults/smoothed.ts';
import { otherDay } from '../../test/make/faults/window.ts';
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
import type { Recording } from '../types.ts';

/** One rider of the invented event. What became of them is told in samples/README.md. */
interface Entry {
  readonly number: string;
  readonly category: 'open' | 'women';
  readonly place: number;
  /** Chosen so that the ride shows what its story tells; another draw would ride another race. */
  readonly seed?: number;
  readonly wish: SubmissionWish;
  /** Trouble with clocks and radios that no fault of a meter explains. */
  readonly trouble?: (draft: Draft) => Draft;
  /** What happened to the files after the ride. */
  readonly after?: (files: RiderFiles) => RiderFiles;
}

/** A rider's recordings by the names under which they were handed in. */
type RiderFiles = ReadonlyMap<string, Uint8Array | Recording>;

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
const open = (number: string, place: number, more: Partial<SubmissionWish> = {}): Entry => ({
  number,
  category: 'open',
  place,
  wish: { ...race, rider: men, ...more },
});
const ofWomen = (number: string, place: number, more: Partial<SubmissionWish> = {}): Entry => ({
  number,
  category: 'women',
  place,
  wish: { ...race, rider: women, ...more },
});

/** A head unit that two riders of one house used. */
const sharedUnit = { maker: 'development', product: 'Tern 40', serial: '704215' };

const entries: readonly Entry[] = [
  open('2', 1),
  open('5', 12, { seconds: 0 }),
  open('8', 3, { seconds: 0 }),
  ofWomen('11', 1),
  open('14', 2, { faults: planted(faults.drift, 0.14) }),
  open('17', 4, { faults: planted(faults.sprintHigh, 0.27) }),
  open('19', 5, { faults: planted(readsHigh, 0.09) }),
  open('20', 13, { oneSensor: true }),
  ofWomen('22', 5, { seconds: 0, faults: planted(headUnitAverages, 10) }),
  open('23', 14, { seconds: 0, faults: planted(faults.reportsTarget, 1) }),
  open('25', 15, { faults: planted(recorderStops, 240) }),
  { ...ofWomen('26', 6), after: (files) => only(files, 'primary.fit') },
  ofWomen('28', 7, { seconds: 0, faults: planted(faults.deadCadence, 1) }),
  open('30', 16, { seconds: 0, faults: planted(otherDay, 1) }),
  { ...open('31', 6, { history, faults: planted(faults.strongerThanHistory, 0.2) }), seed: 0 },
  open('33', 17, { seconds: 0, faults: planted(faults.spikes, 18) }),
  { ...ofWomen('35', 2, { history, form: 1.025 }), seed: 43 },
  open('37', 9, { seconds: 0, faults: planted(blockCopied, 300) }),
  { ...open('42', 7), seed: 5, trouble: awkward },
  { ...open('44', 18, { seconds: 0 }), after: () => new Map([['primary.fit', loginPage]]) },
  { ...ofWomen('46', 8, { seconds: 0 }), after: () => new Map() },
  { ...ofWomen('48', 3, { seconds: 0 }), after: (files) => edited(files, 'primary.fit', withoutStrap) },
  { ...ofWomen('51', 4), after: (files) => edited(files, 'second.fit', onSharedUnit) },
  { ...open('52', 8), after: (files) => edited(files, 'second.fit', onSharedUnit) },
];

/** A page that asks for a login, saved under the name of the recording. */
const loginPage = new TextEncoder().encode(
  '<!doctype html>\n<title>Sign in</title>\n<p>Please sign in to download this file.</p>\n',
);

function only(files: RiderFiles, name: string): RiderFiles {
  return new Map([...files].filter(([one]) => one === name));
}

function edited(files: RiderFiles, name: string, edit: (recording: Recording) => Recording): RiderFiles {
  return new Map([...files].map(([one, file]) => [one, one === name ? edit(file as Recording) : file]));
}

function withoutStrap(recording: Recording): Recording {
  const { heartRate: _, ...channels } = recording.channels;
  const { meanHeartRate: __, maxHeartRate: ___, ...totals } = recording.totals;
  return { ...recording, channels, totals };
}

function onSharedUnit(recording: Recording): Recording {
  return { ...recording, device: sharedUnit };
}

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
  const text = (path: string, content: string) => files.set(path, new TextEncoder().encode(content));
  const json = (path: string, value: unknown) => text(path, `${JSON.stringify(value, null, 2)}\n`);
  let facts: Submission['race'] = {};
  for (const entry of entries) {
    const submission = enter(entry);
    const folder = `event/riders/${entry.number}`;
    for (const [name, file] of handedIn(entry, submission)) {
      files.set(`${folder}/${name}`, file instanceof Uint8Array ? file : writeFit(file));
    }
    for (const past of submission.history) files.set(`${folder}/history/${past.name}`, writeFit(past));
    json(`${folder}/rider.json`, submission.rider);
    // One race: the same facts whoever tells them.
    if (entry === entries[0]) facts = submission.race;
  }
  // Two files mixed up on receipt.
  files.set('event/riders/26/primary.fit', files.get('event/riders/11/primary.fit')!);
  const required = ['power', 'heartRate'];
  json('event/race.json', { ...facts, required });
  json('event/skerrow-3.event.json', {
    name: 'Skerrow Sound Circuit, round 3',
    ...facts,
    required,
    secondRecordings: { top: 3 },
    results: 'results.csv',
    submissions: 'riders',
  });
  text('event/results.csv', results());
  json('event/decisions.json', { decisions });
  return files;
}

function handedIn({ after }: Entry, { primary, seconds }: Submission): RiderFiles {
  const named: RiderFiles = new Map(
    [primary, ...seconds].map((recording, i) => [i === 0 ? 'primary.fit' : recording.name, recording]),
  );
  return after === undefined ? named : after(named);
}

function results(): string {
  const lines = entries.map(({ number, category, place }) => `${number},${place},${category}`);
  return `number,place,category\n${lines.join('\n')}\n`;
}

/** What the organiser of the invented event has asked and decided so far. */
const decisions = [
  {
    rider: '14',
    rule: 'late-drift',
    event: 'Skerrow Sound Circuit, round 3',
    asked: '2025-08-24',
    due: '2025-08-27',
  },
  {
    rider: '28',
    rule: 'dead-cadence',
    event: 'Skerrow Sound Circuit, round 3',
    asked: '2025-08-24',
    answered: '2025-08-25',
    answer: 'The magnet fell off in the warm-up; a photograph is enclosed.',
    decision: 'explained',
    by: 'chief commissaire',
    decidedOn: '2025-08-26',
    why: 'Power does not rest on that sensor.',
    until: '2025-12-31',
  },
];

function enter({ number, seed: draw, wish, trouble }: Entry): Submission {
  const seed = draw === undefined ? `Skerrow rider ${number}` : `Skerrow rider ${number} ${draw}`;
  return trouble === undefined ? drawSubmission(seed, wish) : realise(trouble(drawDraft(seed, wish)));
}
