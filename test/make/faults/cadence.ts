import { toldOtherwise } from './edit.ts';
import { type Fault, practice, withPrimaryMeter } from './fault.ts';

/** The cadence sensor is there and tells zero all the time. */
export const deadCadence: Fault = {
  name: 'dead cadence',
  rules: ['dead-cadence'],
  measure: 'always the whole ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['cadence'],
  source: practice,
  before(draft) {
    const { cadence } = draft.meters[draft.recordings[0]!.meter]!;
    return withPrimaryMeter(draft, { cadence: { ...cadence, state: 'dead' } });
  },
};

/** The magnet slips away in the first minute: some turns are told, then zero. */
export const magnetLost: Fault = {
  name: 'cadence lost in the first minute',
  rules: ['dead-cadence'],
  measure: 'always the rest of the ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: ['cadence'],
  source: practice,
  after(submission, _, random) {
    const cadence = submission.primary.channels.cadence?.slice();
    if (cadence === undefined) return submission;
    const { time } = submission.primary;
    const lost = time[0]! + random.integer(5, 60);
    cadence.fill(
      0,
      time.findIndex((clock) => clock >= lost),
    );
    return toldOtherwise(submission, { cadence });
  },
};
