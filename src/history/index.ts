export { historyFor } from './before.ts';
export { collect, emptyProfile, knownBefore, type Taken } from './collect.ts';
export { completenessOf } from './completeness.ts';
export { parseProfile } from './parse.ts';
export { pastRide } from './past-ride.ts';
export { placeOf } from './place.ts';
export { printProfile } from './print.ts';
export { flaw, tooShort, unfit } from './sift.ts';
