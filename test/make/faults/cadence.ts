import { type Fault, withPrimaryMeter } from './fault.ts';

/** The cadence sensor is there and tells zero all the time. */
export const deadCadence: Fault = {
  name: 'dead cadence',
  rules: ['dead-cadence'],
  measure: 'always the whole ride',
  strengths: { borderline: 1, moderate: 1, clear: 1 },
  needs: [],
  before(draft) {
    const { cadence } = draft.meters[draft.recordings[0]!.meter]!;
    return withPrimaryMeter(draft, { cadence: { ...cadence, state: 'dead' } });
  },
};
