import type { Channel, Place, Recording, Requirement, SectionKind } from '../../types.ts';

export const channelNames: Readonly<Record<Channel, string>> = {
  power: 'power',
  cadence: 'cadence',
  heartRate: 'heart rate',
  speed: 'speed',
  altitude: 'altitude',
  distance: 'distance',
  temperature: 'temperature',
  balance: 'left–right balance',
};

export const factNames: Readonly<Record<string, string>> = {
  massKg: 'body mass',
  recordClass: 'record class',
  devices: 'the meters as declared',
  start: 'the start of the race',
  finish: 'the finish of the race',
  kind: 'the kind of race',
  required: 'what the event requires',
};

export const formatNames: Readonly<Record<Recording['format'], string>> = {
  fit: 'FIT',
  tcx: 'TCX',
  gpx: 'GPX',
  csv: 'CSV',
};

export const placeNames: Readonly<Record<Place, string>> = {
  crank: 'crank',
  pedal: 'pedals',
  hub: 'hub',
  trainer: 'trainer',
};

export const requirementNames: Readonly<Record<Requirement, string>> = {
  power: 'power',
  cadence: 'cadence',
  heartRate: 'heart rate',
  'second recording': 'a second recording',
  history: 'earlier rides',
};

export const sectionNames: Readonly<Record<SectionKind, readonly [one: string, many: string]>> = {
  steady: ['steady stretch', 'steady stretches'],
  sprint: ['sprint', 'sprints'],
  'over-under': ['over-under', 'over-unders'],
  'set-point block': ['set-point block', 'set-point blocks'],
  climb: ['climb', 'climbs'],
  coasting: ['stretch of coasting', 'stretches of coasting'],
  'first third': ['first third', 'first thirds'],
  'last third': ['last third', 'last thirds'],
};
