/**
 * The nouns, in pipeline order: files → recording → series → aligned set → sections → measurement
 * → finding → report. Stages never import one another; they meet here.
 *
 * Conventions held everywhere:
 * - Clock times are seconds since 1970-01-01T00:00:00Z; positions in a ride are seconds from the
 *   start of the primary's series.
 * - A stretch `[from, to]` is half open: it holds the seconds from, from+1, …, to-1.
 * - In columns (typed arrays) a missing or invalid sample is NaN, never 0. In a report it is null.
 */
/** One file as handed in. The name is a stranger's: escape it wherever it is shown. */
export interface NamedBytes {
    readonly name: string;
    readonly bytes: Uint8Array;
}
export type Place = 'crank' | 'pedal' | 'hub' | 'trainer';
/** A meter as its owner declares it. */
export interface DeviceFacts {
    /** Matches the device of a recording: by role ("primary", "second", "second 2") or by file name. */
    readonly name: string;
    readonly place: Place;
    /** 1: one leg is measured and doubled; 2: both legs (or the sum at the wheel). */
    readonly sides: 1 | 2;
    /** The maker's claim, ± percent. */
    readonly tolerancePercent: number;
}
export interface RiderFacts {
    /** Body mass, kg. Health data. */
    readonly massKg?: number;
    readonly recordClass?: 'women' | 'open';
    readonly devices?: readonly DeviceFacts[];
}
export type RaceKind = 'race' | 'time trial' | 'workout';
export interface RaceFacts {
    /** ISO 8601 with offset. */
    readonly start?: string;
    readonly finish?: string;
    readonly kind?: RaceKind;
    /** What the event requires of a submission. */
    readonly required?: readonly Requirement[];
}
export type Requirement = 'power' | 'cadence' | 'heartRate' | 'second recording' | 'history';
export declare const channels: readonly ['power', 'cadence', 'heartRate', 'speed', 'altitude', 'distance', 'temperature', 'balance'];
export type Channel = (typeof channels)[number];
/** Columns of equal length; a channel is absent when the file holds not one valid value of it. */
export type Columns = {
    readonly [C in Channel]?: Float64Array;
};
/** Who made the file: as it says itself, or null where it does not. */
export interface Device {
    readonly maker: string | null;
    readonly product: string | null;
    readonly serial: string | null;
}
/** The file's own totals, as it states them; undefined where it states none. */
export interface Totals {
    readonly meanPower?: number;
    readonly maxPower?: number;
    readonly meanCadence?: number;
    readonly meanHeartRate?: number;
    readonly maxHeartRate?: number;
    readonly workJ?: number;
    readonly elapsedS?: number;
    readonly timerS?: number;
    readonly distanceM?: number;
}
export interface Lap {
    /** Clock times. */
    readonly from: number;
    readonly to: number;
    readonly meanPower?: number;
}
/** A further power meter found inside the same file (a developer field). Same length as `time`. */
export interface ExtraMeter {
    /** The field's name: a stranger's string. */
    readonly name: string;
    readonly power: Float64Array;
}
/** What was wrong with the bytes, and what reading did about it. Shown in the report. */
export interface Defect {
    readonly id: DefectId;
    readonly values: Values;
}
export type DefectId = 'truncated' | 'size-impossible' | 'checksum-wrong' | 'never-closed' | 'chained' | 'several-sessions' | 'colliding-field' | 'odd-power-type' | 'markup-ends-early' | 'unreadable-values' | 'trailing-bytes' | 'power-in-developer-field' | 'zone-assumed' | 'no-clock' | 'unit-assumed';
/** One device's file, read into columns as it stands: file order, nothing repaired, nothing resampled. */
export interface Recording {
    readonly name: string;
    /** Hex digest of the bytes as handed in (before unpacking). */
    readonly sha256: string;
    readonly format: 'fit' | 'tcx' | 'gpx' | 'csv';
    /** Lower case, e.g. "cycling", "running"; null when not stated. */
    readonly sport: string | null;
    /** True: stated as indoor or virtual; false: stated as outdoor or positions present; null: unknown. */
    readonly indoors: boolean | null;
    readonly device: Device;
    /** The power sensor, as the file lists it; absent where it does not: a head unit is not a meter. */
    readonly meter?: Device;
    /** Clock time of each record, s, as recorded: may repeat, go back or leap. */
    readonly time: Float64Array;
    readonly channels: Columns;
    readonly extraMeters: readonly ExtraMeter[];
    readonly balanceSide: 'left' | 'right' | 'unknown' | null;
    /** Pauses that the file states by its own events, as clock times. */
    readonly pauses: readonly Stretch[];
    readonly laps: readonly Lap[];
    readonly totals: Totals;
    readonly defects: readonly Defect[];
}
/** Half-open [from, to). */
export type Stretch = readonly [from: number, to: number];
/** How each second of a series came to be. */
export declare const SecondState: {
    /** At least one record fell into it. */
    readonly recorded: 0;
    /** Between two records of a recorder that writes irregularly; carried over from the last record. */
    readonly bridged: 1;
    /** Inside a pause that the file states, or one that began at a standstill. */
    readonly paused: 2;
    /** No record where there should be one. */
    readonly missing: 3;
};
/** A recording on a regular 1 s grid. Index i is the second start + i. */
export interface Series {
    readonly recording: Recording;
    /** Clock time of index 0: a whole second. */
    readonly start: number;
    readonly length: number;
    readonly channels: Columns;
    /** One `SecondState` a second. */
    readonly state: Uint8Array;
    /** Further meters of the same file on the same grid. */
    readonly extraMeters: readonly ExtraMeter[];
}
/** One thing that was done to the data, in order. */
export interface Step {
    /** Which recording it was done to. */
    readonly subject: Subject;
    readonly id: StepId;
    readonly values: Values;
}
export type StepId = 'read' | 'doubled-seconds' | 'backward-steps' | 'far-records-dropped' | 'gaps' | 'pauses' | 'bridged' | 'aligned' | 'extra-meter' | 'window-given' | 'window-proposed';
export interface Estimate {
    readonly value: number;
    /** 95 % interval. */
    readonly low: number;
    readonly high: number;
}
/** How a second recording was put on the primary's clock, with the evidence for it. */
export interface Alignment {
    readonly subject: Subject;
    readonly secure: boolean;
    /** Why it is secure, or why not. */
    readonly reason: AlignmentReason;
    /** Seconds to add to the second's clock to get the primary's; null when nothing fits. */
    readonly offset: Estimate | null;
    /** Whole hours and quarters in `offset` that look like a time-zone slip, s; 0 when none. */
    readonly zoneSlip: number;
    /** How the two clocks run apart, parts per million; null when not estimated. */
    readonly driftPpm: Estimate | null;
    /** One entry per stretch of the second with a clock of its own; positions in the primary's series. */
    readonly segments: readonly {
        readonly stretch: Stretch;
        readonly offset: number;
    }[];
    /** Correlation of the whitened power at the best lag, of all stretches at theirs where it is secure. */
    readonly peak: number;
    /** The correlation at the lag where the second turned round in time, which can only agree by chance, fits best. */
    readonly surrogatePeak: number;
    /** Δ log-likelihood of the best lag over every lag more than 3 s away. */
    readonly margin: number;
    /** Plain correlation of 1 Hz power at the chosen lag. */
    readonly correlation: number;
    /** Best lag of each channel beyond the chosen offset, s, with its correlation. */
    readonly byChannel: readonly {
        readonly channel: Channel;
        readonly lag: number;
        readonly correlation: number;
    }[];
    /** Share of the race window in which both recorded, 0–1. */
    readonly coverage: number;
    /** Whether the second is a measurement of its own. */
    readonly origin: Origin;
    readonly originEvidence: OriginEvidence | null;
    /** The pair of an earlier second that this one repeats: no opinion beside it. Null where there is none. */
    readonly sameAs: Subject | null;
}
/** How a second follows from the primary by the best gain, offset and short filter. */
export interface OriginEvidence {
    /** Share of the second's second-to-second detail that the primary does not explain, the wildest tenth aside. */
    readonly left: number;
    /** What it does not explain as the noise of single readings, a share of mean power. */
    readonly noise: number;
    /** Work of the second over that of the primary. */
    readonly gain: number;
    /** Mean square misfit where power moves fast over that where it hardly moves. */
    readonly dynamics: number;
}
/**
 * `independent`: another meter. `same sensor`: one sensor on two recorders, no second opinion. `derived`:
 * computed from the primary, as no radio and rounding would make it. `unknown`: cannot be told.
 */
export type Origin = 'independent' | 'same sensor' | 'derived' | 'unknown';
export type AlignmentReason = 'power-agrees' | 'clock-chose' | 'channel-chose' | 'no-overlap' | 'too-short' | 'nothing-fits' | 'several-lags-fit' | 'only-surges-agree' | 'same-recorder' | 'no-power';
/** A second recording resampled onto the primary's grid: same start and length as the primary's series. */
export interface AlignedSecond {
    readonly subject: Subject;
    /** The file's name, or that of the field in which a further meter of a file was found. */
    readonly name: string;
    /** Whether it is a further meter of a file that the primary or another second stands for. */
    readonly further: boolean;
    readonly series: Series;
    readonly alignment: Alignment;
}
export interface AlignedSet {
    readonly primary: Series;
    readonly seconds: readonly AlignedSecond[];
}
export type SectionKind = 'steady' | 'sprint' | 'over-under' | 'set-point block' | 'climb' | 'coasting' | 'first third' | 'last third';
export interface Section {
    readonly kind: SectionKind;
    readonly stretch: Stretch;
}
/** "primary" | "second:<sha8>" | "pair:<sha8>" | "rider" | "submission" */
export type Subject = string;
export type Unit = '%' | 'W' | 'W/kg' | 'rpm' | 'km/h' | 'bpm' | 'N·m' | 'kJ' | 'kg' | 's' | 'min' | 'count' | 'share' | 'ratio' | 'r';
export interface Quantity {
    readonly value: number;
    readonly unit: Unit;
}
export type Value = number | string | Quantity;
/** Named values that a sentence fills in. Strings may be a stranger's. */
export type Values = {
    readonly [name: string]: Value;
};
/** Where honest submissions lie, in the measurement's own unit, sampling error included. */
export interface HonestRange {
    readonly centre: number;
    /** One standard deviation. */
    readonly spread: number;
}
export interface Measured {
    readonly state: 'measured';
    readonly value: number;
    readonly unit: Unit;
    /** 95 % interval in the same unit; [value, value] for an exact count. */
    readonly interval: readonly [low: number, high: number];
    /** How many independent pieces (blocks, efforts, seconds …) it rests on. */
    readonly count: number;
    /** The seconds it argues from, on the primary's series. */
    readonly stretches: readonly Stretch[];
    readonly expected?: {
        readonly declared: HonestRange;
        readonly field: HonestRange;
    };
    /** Facts about this measurement that a rule may answer to, from the measure's own list. */
    readonly circumstances: readonly string[];
    /** Share of honest submissions that would show at least this value, where the measure knows it. */
    readonly chance?: number;
    readonly details: Values;
    readonly charts: readonly Chart[];
}
export interface NotApplicable {
    readonly state: 'not applicable';
    readonly reason: ReasonId;
    readonly values: Values;
}
/** The measure itself broke: a fault of this program, never of the rider. */
export interface Failed {
    readonly state: 'failed';
    readonly message: string;
}
export type Outcome = Measured | NotApplicable | Failed;
export type ReasonId = 'no-third' | 'no-second' | 'second-unreadable' | 'no-detail' | 'not-secure' | 'different-ride' | 'not-independent' | 'too-short' | 'too-few-readings' | 'too-few-blocks' | 'too-few-efforts' | 'no-channel' | 'mostly-invalid' | 'no-power-flow' | 'dead-channel' | 'decimal-power' | 'coarse-steps' | 'irregular-recorder' | 'no-totals' | 'no-event' | 'no-history' | 'history-too-thin' | 'no-heart-rate-range' | 'no-overlap-of-power' | 'no-drift' | 'no-crossing' | 'narrow-range' | 'no-one-line' | 'rises-with-power' | 'cannot-separate' | 'speed-not-tied' | 'no-fact' | 'nothing-required' | 'not-a-race' | 'outdoors' | 'switched-off';
/** Another rider's submission to the same event, as far as content is compared; on its own 1 s grid. */
export interface OtherSubmission {
    /** As the event names it: a stranger's string. */
    readonly name: string;
    readonly power?: Float64Array;
    readonly cadence?: Float64Array;
}
/** Everything a measure may look at. */
export interface Subjects {
    readonly primary: Series;
    readonly seconds: readonly AlignedSecond[];
    readonly sections: readonly Section[];
    /** The race on the primary's series. */
    readonly window: Stretch;
    readonly rider: RiderFacts;
    readonly race: RaceFacts;
    /** Only rides before the race; null when no history was handed in. */
    readonly history: History | null;
    /** Other submissions of the event that share marks of content with this one; undefined without an event. */
    readonly others?: readonly OtherSubmission[];
}
/** One tunable number (or list of numbers) of a measure; its value stands in the rule file. */
export interface OptionSpec {
    readonly what: string;
    readonly list: boolean;
}
export type OptionValue = number | readonly number[];
export type SubjectKind = 'recording' | 'pair' | 'rider' | 'submission';
export interface MeasureInfo {
    readonly id: string;
    readonly of: SubjectKind;
    /** Of its value, its interval, its honest range, and of the limits that are set to the value. */
    readonly unit: Unit;
    readonly options: Readonly<Record<string, OptionSpec>>;
    /** The circumstances it may report, each with the words that explain it. */
    readonly circumstances: Readonly<Record<string, string>>;
}
export interface Measurement {
    readonly measure: string;
    readonly rule: string;
    readonly subject: Subject;
    readonly options: Readonly<Record<string, OptionValue>>;
    readonly outcome: Outcome;
    /** The measure's own words for the circumstances it found, one for each and in their order. */
    readonly remarks: readonly string[];
}
/** The best mean power of one past recording at each of `Profile.durations`; null where too short. */
export interface PastRide {
    readonly sha256: string;
    /** Clock time of its first and last record. */
    readonly from: number;
    readonly to: number;
    readonly device: Device;
    /** The power sensor, where the file lists it. */
    readonly meter?: Device;
    /** Where its meter sits, as far as declared. */
    readonly place?: Place | null;
    readonly indoors: boolean | null;
    readonly bests: readonly (number | null)[];
    /** Mean heart rate of each best window, bpm; null where none was recorded. Health data. */
    readonly heartRates?: readonly (number | null)[];
    /** Share of the pedalling in which something other than the rider held the power to a target, 0–1. */
    readonly controlled?: number;
    /** Mass that its climbs show. Health data. */
    readonly climbed?: Climbed;
}
/** What the climbs of a ride say of the mass that moved: rider and bicycle, if the chain lost nothing. */
export interface Climbed {
    readonly kg: number;
    /** How many steep stretches say so, and how far they are apart (median deviation, share). */
    readonly stretches: number;
    readonly scatter: number;
}
/** A rider's mean-maximal power history, as kept in a file. */
export interface Profile {
    readonly profileVersion: 1;
    /** s, ascending. */
    readonly durations: readonly number[];
    readonly rides: readonly PastRide[];
    /** What was left out while compiling. */
    readonly leftOut: readonly LeftOutFile[];
}
/** How far a profile can be trusted to show what its rider can do. */
export interface Completeness {
    readonly rides: number;
    /** Days from the first ride to the last, both counted, and the longest time between two. */
    readonly days: number;
    readonly longestPause: number;
    /** Rides with heart rate, which tells an effort that was held back; rides whose files list their meter. */
    readonly heartRate: number;
    readonly meters: number;
    /** Durations (s) at which other rides come near the best, and at which it stands alone. */
    readonly confirmed: readonly number[];
    readonly alone: readonly number[];
}
export interface LeftOutFile {
    /** A stranger's string. */
    readonly name: string;
    readonly why: LeftOut;
    /** Digest of the file: one that was left out once is not read again. */
    readonly sha256?: string;
    readonly flaw?: Flaw;
}
export type LeftOut = 'other sport' | 'no power' | 'unreadable' | 'duplicate' | 'flawed' | 'too short';
/** Why a recording is no evidence of what its rider can do. */
export type Flaw = 'impossible power' | 'clock astray' | 'mostly missing' | 'frozen power';
/** The part of a profile that may speak about this race. */
export interface History {
    readonly profile: Profile;
    readonly rides: readonly PastRide[];
    /** Rides that overlap or follow the race, not used. */
    readonly notBefore: number;
    /** Those of them that overlap it: perhaps the race itself. */
    readonly overlapping?: number;
}
export declare const levels: readonly ['none', 'note', 'query', 'refer'];
export type Level = (typeof levels)[number];
export type Raised = Exclude<Level, 'none'>;
export type Family = 'recording' | 'trace' | 'agreement' | 'physiology';
/**
 * One limit. With `of: "value"` the numbers are in the measurement's unit; with a spread they are
 * multiples of the honest spread around the honest centre (`Measured.expected`).
 */
export interface Limit {
    readonly 'at least'?: number;
    readonly 'at most'?: number;
    readonly of: 'value' | 'declared spread' | 'field spread';
    /** Which end of the interval must pass: the cautious one (nearer to innocence), or the estimate itself. */
    readonly end: 'cautious' | 'estimate';
}
/** Where a rule's limits come from, and what came of them on submissions whose truth is known. */
export type Source = ({
    readonly kind: 'published';
    readonly citation: string;
} | {
    readonly kind: 'common practice' | 'from memory' | 'measured';
    readonly note: string;
}) & {
    /** Missing where nobody measured it: in a rule of an event's own, or one whose limits an event changed. */
    readonly falseAlarm?: FalseAlarm;
};
/** How often a rule asked honest riders. */
export interface FalseAlarm {
    /** The command that measures it again. */
    readonly command: string;
    readonly withinClaims: HonestShares;
    readonly asFound: HonestShares;
}
/** Honest submissions with meters of one sort, and the shares that the rule brought to a level. */
export interface HonestShares {
    readonly submissions: number;
    /** Query or worse. */
    readonly query: BoundedShare;
    readonly refer: BoundedShare;
}
/** A measured share, and what the true one does not exceed with 95 % confidence. */
export interface BoundedShare {
    readonly share: number;
    readonly atMost: number;
}
export interface RuleExample {
    readonly value: number;
    readonly interval: readonly [number, number];
    readonly count: number;
    readonly expected?: {
        readonly declared: HonestRange;
        readonly field: HonestRange;
    };
    readonly circumstances?: readonly string[];
    readonly level: Level;
}
/** `rules/<id>.rule.json`. */
export interface Rule {
    readonly id: string;
    readonly title: string;
    readonly family: Family;
    readonly question: string;
    readonly measure: string;
    /** Which subjects it is put to: a recording rule may look at the primary alone or at every recording. */
    readonly subjects: 'primary' | 'recordings' | 'pairs' | 'rider' | 'submission';
    readonly options: Readonly<Record<string, OptionValue>>;
    /** Evidence it cannot do without, as said to a reader. */
    readonly needs: readonly string[];
    readonly limits: {
        readonly [L in Raised]?: Limit;
    };
    readonly highest: Raised | 'incomplete';
    /** Circumstances that cap the level, each with its reason. */
    readonly ceilings: readonly {
        readonly when: string;
        readonly level: Level;
        readonly why: string;
    }[];
    /**
     * One sentence per outcome, placeholders in braces filled by the report's one formatter: {value},
     * {low}, {high}, and the measurement's details by name. `above`: beyond an "at least" limit; `below`:
     * beyond an "at most" limit; `fine`: within.
     */
    readonly claims: {
        readonly above?: string;
        readonly below?: string;
        readonly fine: string;
    };
    readonly innocent: readonly string[];
    readonly settles: readonly string[];
    readonly source: Source;
    readonly examples: readonly RuleExample[];
    /** Rules whose findings about the same subject this one accounts for, so that one fault is told once. */
    readonly explains?: readonly string[];
    /** Set only by an overlaid file that switches the rule off. */
    readonly off?: string;
}
export interface Grades {
    /** How many queries from independent families make a referral; null: never add up. */
    readonly queriesThatRefer: number | null;
    readonly why: string;
}
export interface RuleSet {
    readonly name: string;
    readonly sha256: string;
    readonly rules: readonly Rule[];
    readonly grades: Grades;
    /** Full text of each overlaid file. */
    readonly overlaid: readonly {
        readonly file: string;
        readonly text: string;
    }[];
}
/** A limit as it stood for this subject, in the unit of the value. */
export interface EffectiveLimit {
    readonly atLeast: number | null;
    readonly atMost: number | null;
    readonly end: Limit['end'];
}
export interface Finding {
    readonly rule: string;
    readonly subject: Subject;
    readonly level: Level;
    /** Null, like the interval, only in a redacted report: the number would give health data away. */
    readonly value: number | null;
    readonly unit: Unit;
    readonly interval: readonly [number, number] | null;
    readonly count: number;
    readonly limits: {
        readonly [L in Raised]?: EffectiveLimit;
    };
    readonly expected: {
        readonly declared: HonestRange;
        readonly field: HonestRange;
    } | null;
    /** Why the level is lower than the limits alone would make it; null otherwise. */
    readonly ceiling: string | null;
    /** What a reader should know beside the number, in the measure's own words. */
    readonly remarks: readonly string[];
    /** The rule whose finding about the same subject accounts for this one as well; null: stands on its own. */
    readonly explainedBy: string | null;
    readonly stretches: readonly Stretch[];
    /** Which claim of the rule holds, and what fills it in. */
    readonly summary: {
        readonly id: 'above' | 'below' | 'fine';
        readonly values: Values;
    };
    readonly chance: number | null;
    /** Ids into Report.charts. */
    readonly charts: readonly string[];
}
/** Grades from best to worst. What was not all there cannot be better than what was and needs no answer. */
export declare const grades: readonly ['clear', 'incomplete', 'query', 'refer'];
export type Grade = (typeof grades)[number];
export interface ReportMeasurement {
    readonly measure: string;
    readonly rule: string;
    readonly subject: Subject;
    readonly state: Outcome['state'];
    readonly value: number | null;
    readonly unit: Unit | null;
    readonly interval: readonly [number, number] | null;
    readonly count: number | null;
    readonly options: Readonly<Record<string, OptionValue>>;
    readonly reason: {
        readonly id: ReasonId | 'failed';
        readonly values: Values;
    } | null;
}
export interface ReportRecording {
    readonly subject: Subject;
    readonly role: 'primary' | 'second';
    readonly name: string;
    /** The added field of the file that holds its power, where that is a further meter: a stranger's string. */
    readonly field: string | null;
    readonly sha256: string;
    readonly format: Recording['format'];
    readonly device: Device;
    readonly declared: DeviceFacts | null;
    readonly sport: string | null;
    readonly indoors: boolean | null;
    /** Clock time of the first second, and seconds to the last. */
    readonly start: number;
    readonly seconds: number;
    readonly recordedSeconds: number;
    readonly meanPower: number | null;
    readonly maxPower: number | null;
    readonly channels: readonly Channel[];
    readonly defects: readonly Defect[];
}
/** A section with what it shows. */
export interface ReportSection extends Section {
    /** Mean power of the primary; null where it has none. */
    readonly watts: number | null;
    /** Primary against each other meter, %, with its 95 % interval where the section is long enough. */
    readonly differences: readonly {
        readonly subject: Subject;
        readonly percent: number;
        readonly low: number | null;
        readonly high: number | null;
    }[];
}
/** What one set-point block shows. */
export interface SetPoint {
    readonly stretch: Stretch;
    /** The level held, W, as the steadiest meter shows it: no file says what was asked for. */
    readonly target: number;
    /** Means of the settled part: rpm, km/h. */
    readonly cadence: number | null;
    readonly speed: number | null;
    readonly meters: readonly {
        readonly subject: Subject;
        /** Mean of the settled part over the target, W, with its 95 % interval where the block is long enough. */
        readonly over: number;
        readonly low: number | null;
        readonly high: number | null;
        /** Where the block follows another in a step: seconds from 10 to 90 % of it. */
        readonly rise: number | null;
    }[];
}
/** What the meters hold where the ride keeps to levels. */
export interface SetPoints {
    /** The meter that keeps closest to its own levels: the targets are taken from it. */
    readonly steadiest: Subject;
    readonly blocks: readonly SetPoint[];
    /** How what another meter holds beyond the target changes from block to block, % of it for 10 rpm or 10 km/h. */
    readonly trends: readonly ({
        readonly subject: Subject;
        readonly of: 'cadence' | 'speed';
    } & Estimate)[];
}
/** A second recording that was handed in and could not be read. Its name is a stranger's. */
export interface UnreadableFile {
    readonly name: string;
    /** Null where the file could not even be opened. */
    readonly sha256: string | null;
    /** A full sentence. */
    readonly why: string;
}
export interface Report {
    readonly schemaVersion: 1;
    readonly tool: {
        readonly name: string;
        readonly version: string;
    };
    readonly inputs: readonly {
        readonly role: string;
        readonly name: string;
        readonly sha256: string;
    }[];
    readonly settings: {
        readonly rider: RiderFacts;
        readonly race: RaceFacts;
        readonly redacted: boolean;
    };
    readonly rules: {
        readonly name: string;
        readonly sha256: string;
        readonly overlaid: RuleSet['overlaid'];
        /** Every rule that was put to this submission, in full: a report explains itself. */
        readonly items: readonly Rule[];
    };
    readonly submission: {
        readonly primary: ReportRecording;
        readonly seconds: readonly ReportRecording[];
        /** Second recordings that could not be read, with the sentence that says why. */
        readonly unreadable: readonly UnreadableFile[];
        readonly window: {
            readonly stretch: Stretch;
            readonly given: boolean;
        };
        readonly history: {
            readonly rides: number;
            readonly notBefore: number;
            readonly leftOut: Readonly<Record<string, number>>;
        } | null;
    };
    readonly grade: Grade;
    readonly reach: {
        readonly judged: number;
        readonly notApplicable: number;
        readonly failed: number;
        /** Why much could not be judged, the weightiest first. */
        readonly because: readonly {
            readonly id: ReasonId | 'failed';
            readonly count: number;
        }[];
    };
    /** Requirements of the event that are not met. */
    readonly missing: readonly Requirement[];
    readonly findings: readonly Finding[];
    readonly measurements: readonly ReportMeasurement[];
    readonly sections: readonly ReportSection[];
    /** Null where the ride keeps to no levels. */
    readonly setPoints: SetPoints | null;
    readonly alignment: readonly Alignment[];
    readonly steps: readonly Step[];
    readonly charts: readonly Chart[];
}
/** Who must hand in a second recording although the event does not ask everybody for one. */
export interface SecondsAsked {
    /** The best so many by place, in each category. */
    readonly top?: number;
    /** Whoever held at least this, W/kg, for `minutes`. */
    readonly aboveWattsPerKg?: number;
    readonly minutes?: number;
}
/** A race, and by which rules it is judged; a category of an event states what differs for it. */
export interface EventTerms extends RaceFacts {
    /** A folder of rule files, laid over the shipped rules; paths start at the event file. */
    readonly rules?: string;
    readonly secondRecordings?: SecondsAsked;
}
/** A rider as the event file or the results list them. */
export interface EventRider {
    /** As on the start list: letters, digits, - and _. Names the rider in every output. */
    readonly number: string;
    readonly name?: string;
    /** The same at every event, like a licence number. */
    readonly id?: string;
    readonly category?: string;
    readonly place?: number;
    /** Paths from the event file; where there is none, files are matched by the rider's number. */
    readonly primary?: string;
    readonly seconds?: readonly string[];
    readonly history?: string;
    /** A file of facts about the rider, or the facts themselves. */
    readonly facts?: string | RiderFacts;
}
/** An event as its organiser writes it down. */
export interface EventFile extends EventTerms {
    readonly name: string;
    readonly categories?: Readonly<Record<string, EventTerms>>;
    /** The folder whose files are matched to riders by number. */
    readonly submissions?: string;
    /** A results list: CSV with number, place and whatever else of a rider. */
    readonly results?: string;
    readonly riders?: readonly EventRider[];
}
/** One submission of an event, ready to be audited. Paths start at the event's folder. */
export interface Entry {
    readonly number: string;
    readonly name: string | null;
    readonly id: string | null;
    readonly category: string | null;
    readonly place: number | null;
    readonly race: RaceFacts;
    readonly rider: RiderFacts;
    /** Files that the facts came from. */
    readonly factInputs: Report['inputs'];
    readonly rules: string | null;
    /** Null: nothing was handed in, or nothing that could be matched for certain. */
    readonly primary: string | null;
    readonly seconds: readonly string[];
    readonly history: string | null;
    /** Why none of the rider's recordings could be taken for the primary. */
    readonly doubt: string | null;
    /** From this power on a second recording is required. */
    readonly secondsAbove: {
        readonly wattsPerKg: number;
        readonly minutes: number;
    } | null;
}
/** A file of an event that nobody could be matched with, and why. */
export interface Unmatched {
    readonly file: string;
    readonly why: string;
    readonly hint: string;
}
/** An event with everything that is known before a recording is opened. */
export interface EventPlan {
    readonly name: string;
    readonly race: RaceFacts;
    readonly entries: readonly Entry[];
    readonly unmatched: readonly Unmatched[];
}
/** A number that a check measured, as the event keeps it. */
export interface EventNumber {
    readonly rule: string;
    /** "primary", "second", "second 2", "pair", "pair 2", "rider" or "submission". */
    readonly subject: string;
    readonly value: number;
    readonly unit: Unit;
    readonly interval: readonly [low: number, high: number];
}
/** A finding that asks for something, or is worth knowing, as the event keeps it. */
export interface EventFinding {
    readonly rule: string;
    readonly subject: string;
    readonly level: Raised;
    /** Null where the number is withheld. */
    readonly value: number | null;
    readonly unit: Unit;
    readonly interval: readonly [low: number, high: number] | null;
    readonly limits: Finding['limits'];
    readonly expected: HonestRange | null;
    readonly explainedBy: string | null;
    /** What was seen, in a sentence. Holds strangers' words. */
    readonly claim: string;
}
/** A recording as the event keeps it: what tells it from others, and nothing that it holds. */
export interface EventRecording {
    readonly role: string;
    readonly file: string;
    readonly sha256: string;
    /** Clock times. */
    readonly from: number;
    readonly to: number;
    /** Maker, product and serial number as the file states them; null without a serial number. */
    readonly device: string | null;
    /** Marks of content: see src/event/fingerprint.ts. The record of a whole event has them in a file beside it. */
    readonly marks: string;
}
/** What became of one submission. */
export interface EventRow {
    readonly number: string;
    readonly name: string | null;
    readonly id: string | null;
    readonly category: string | null;
    readonly place: number | null;
    readonly state: 'audited' | 'not audited';
    /** Why it was not audited. */
    readonly why: string | null;
    readonly grade: Grade;
    readonly reach: Pick<Report['reach'], 'judged' | 'notApplicable' | 'failed'>;
    readonly missing: readonly Requirement[];
    readonly findings: readonly EventFinding[];
    readonly numbers: readonly EventNumber[];
    readonly recordings: readonly EventRecording[];
    /** The folder of the report, from the folder of the record; null when there is none. */
    readonly report: string | null;
}
/** A stretch that recordings of two riders, or of this event and an earlier one, have in common. */
export interface SharedContent {
    readonly rule: string;
    readonly level: Level;
    /** Seconds that are certainly the same in what agrees for longest. */
    readonly seconds: number;
    /** That, and what agrees for a third as long, each with its own seconds. */
    readonly alike: readonly Alike[];
    readonly a: {
        readonly number: string;
        readonly role: string;
    };
    /** Of an earlier event, only the code of the recording is known: the start of its checksum. */
    readonly b: {
        readonly event: string | null;
        readonly number: string | null;
        readonly role: string;
    };
}
/** What two recordings have in common sample by sample; power that was multiplied still rises and falls alike. */
export interface Alike {
    readonly what: 'power' | 'cadence' | 'rises and falls';
    readonly seconds: number;
}
/** One device that recorded for several riders at the same time. */
export interface SharedDevice {
    readonly device: string;
    readonly riders: readonly string[];
}
/** Where the field lies in one check of one category. */
export interface FieldRange {
    readonly category: string | null;
    readonly rule: string;
    readonly subject: string;
    readonly unit: Unit;
    readonly count: number;
    readonly median: number;
    /** From the 5th to the 95th percentile. */
    readonly low: number;
    readonly high: number;
    /** 1.4826 times the median absolute deviation. */
    readonly spread: number;
}
/** A finding of so many at once that the event explains it better than the riders. */
export interface FieldEffect {
    readonly category: string | null;
    readonly rule: string;
    readonly of: number;
    readonly riders: readonly string[];
}
/** A rider whose meters differ in the same direction at event after event. */
export interface RepeatedDifference {
    readonly number: string;
    readonly rule: string;
    readonly values: readonly {
        readonly event: string;
        readonly value: number;
        readonly unit: Unit;
    }[];
}
/** What only an event can show; it changes no rider's own report. */
export interface CrossChecks {
    readonly shared: readonly SharedContent[];
    readonly devices: readonly SharedDevice[];
    readonly field: readonly FieldRange[];
    readonly effects: readonly FieldEffect[];
    readonly repeated: readonly RepeatedDifference[];
}
/** An event as it was audited: grades, numbers, fingerprints and paths, never charts. */
export interface EventRecord {
    readonly eventVersion: 1;
    readonly tool: Report['tool'];
    readonly event: {
        readonly name: string;
        readonly race: RaceFacts;
    };
    /** Digest of everything that the parts of an event must have in common. */
    readonly plan: string;
    /** Which part this is; null: the whole. */
    readonly part: {
        readonly index: number;
        readonly of: number;
    } | null;
    /** Of how many submissions these are some, where only some were asked for; null: nobody was left out. */
    readonly selected: {
        readonly of: number;
    } | null;
    readonly rules: readonly {
        readonly folder: string | null;
        readonly name: string;
        readonly sha256: string;
    }[];
    /** Titles and families of the rules that rows name. */
    readonly titles: Readonly<Record<string, {
        readonly title: string;
        readonly family: Family;
    }>>;
    readonly rows: readonly EventRow[];
    readonly unmatched: readonly Unmatched[];
    /** Null in a part. */
    readonly crossChecks: CrossChecks | null;
}
/** The marks of an event's recordings, to be kept where later events can be compared with it. */
export interface EventMarks {
    readonly marksVersion: 1;
    readonly event: string;
    readonly recordings: readonly {
        readonly code: string;
        readonly marks: string;
    }[];
}
/**
 * What a decision may be about beside findings: what the event requires and does not have, and a device that
 * recorded for several riders at the same time.
 */
export declare const besideRules: readonly ['missing', 'shared-device'];
/** What people asked, heard and decided about a finding. Dates are calendar days, like 2026-03-14. */
export interface Decision {
    readonly rider: string;
    /** A rule, or what no rule says: see `besideRules`. */
    readonly rule: string;
    /** The event it was made at, where one file serves several. */
    readonly event?: string;
    /** The rider at every event: lets an accepted explanation speak at a later one. */
    readonly id?: string;
    readonly asked?: string;
    readonly due?: string;
    readonly answered?: string;
    readonly answer?: string;
    readonly decision?: 'stands' | 'explained' | 'does not stand' | 'withdrawn';
    /** A role, never a name: "chief commissaire". */
    readonly by?: string;
    readonly decidedOn?: string;
    readonly why?: string;
    readonly appeal?: 'open' | 'upheld' | 'dismissed';
    /** Until when an explanation that was accepted is taken for granted. */
    readonly until?: string;
}
/** Where a finding stands between people: what has waited too long first, what needs nobody last. */
export declare const standings: readonly ['overdue', 'to decide', 'to ask', 'asked', 'decided', 'explained'];
export type Standing = (typeof standings)[number];
/** One matter of a rider that people have to deal with. */
export interface Matter {
    /** A rule, or one of `besideRules`. */
    readonly rule: string;
    readonly standing: Standing;
    readonly decision: Decision | null;
}
/** What became of a rider since an earlier run. */
export type Change = 'new' | 'better' | 'worse' | 'same' | 'gone';
/** Why all submissions are audited although only what changed was asked for. */
export type AllBecause = 'no change' | 'no repository' | 'first push' | 'no base' | 'too much' | 'workflow' | 'event new' | 'event was wrong' | 'part';
/** A run of an event on a repository: what its summary says beside the record. */
export interface EventRun {
    /** Whose submissions were audited. */
    readonly scope: {
        readonly kind: 'all';
        readonly because: AllBecause | null;
    } | {
        readonly kind: 'changed';
        /** The commit that was compared with. */
        readonly since: string;
        /** Riders who are no longer in the event. */
        readonly gone: readonly string[];
        /** Links that the change brings: they are never followed. */
        readonly links: number;
    };
    /** Where the event file, the results and the rules are from. */
    readonly terms: {
        readonly from: 'checkout';
        readonly because: TermsBecause | null;
    } | {
        readonly from: 'base';
        readonly commit: string;
        /** Whether the change would alter them; null: not known. */
        readonly altered: boolean | null;
    };
    /** Rule sets, and each thing in them that differs from what is shipped. Holds strangers' words. */
    readonly rules: readonly {
        readonly name: string;
        readonly sha256: string;
        readonly differs: readonly string[];
    }[];
    /** Submissions of the event. */
    readonly entries: number;
    /** Submissions of those audited that came without a second recording. */
    readonly single: number;
    /** What the event cannot ask for, since something is not known. Holds strangers' words. */
    readonly remarks: readonly string[];
    /** Files that nobody was matched with. */
    readonly unmatched: number;
    /** Whether some submissions could be compared with all others; null: all were there. */
    readonly compared: boolean | null;
    /** Where everything was written, from the top of the checkout. */
    readonly folder: string;
}
/** Why the event file and rules of the checkout are used although those of the base branch were asked for. */
export type TermsBecause = 'no base' | 'event new' | 'rules new' | 'too much';
/** A record with what people did about it: everything that an overview is made from. */
export interface EventView {
    readonly record: EventRecord;
    /** By rider's number. */
    readonly matters: ReadonlyMap<string, readonly Matter[]>;
    /** By rider's number; null without an earlier run to compare with. */
    readonly changes: ReadonlyMap<string, Change> | null;
    /** The calendar day by which an answer is overdue, like 2026-03-14: no clock is asked. */
    readonly today: string;
}
export type Reading = number | null;
/** Data that a chart is drawn from; never a drawing. `id` is unique in a report. */
export type Chart = TracesChart | SectionsChart | RatioChart | DependenceChart | AgreementChart | MetersChart | EffortsChart | CurveChart | ResponseChart | CloseUpsChart | CoverageChart | TotalsChart | CombChart | CopiesChart | PlateausChart | AveragingChart | SpeedCurveChart | ClimbsChart | TraitsChart;
/** Every second of the ride: the meters, cadence and heart rate on the primary's clock. */
export interface TracesChart {
    readonly kind: 'traces';
    readonly id: string;
    readonly start: number;
    readonly primary: readonly Reading[];
    readonly seconds: readonly {
        readonly subject: Subject;
        readonly power: readonly Reading[];
    }[];
    readonly cadence: readonly Reading[] | null;
    readonly heartRate: readonly Reading[] | null;
}
/** Where the meters agree and where not: all sections of a kind together, in the ride's usual order of kinds. */
export interface SectionsChart {
    readonly kind: 'sections';
    readonly id: string;
    readonly rows: readonly {
        readonly section: SectionKind;
        readonly count: number;
        /** Mean power of the primary; null where it has none. */
        readonly watts: Reading;
        readonly differences: ReportSection['differences'];
    }[];
}
/** Ratio of two meters in blocks over time, with a fitted trend and its 95 % band. */
export interface RatioChart {
    readonly kind: 'ratio';
    readonly id: string;
    readonly subject: Subject;
    /** Block middle (s), primary over second (%; 100 where they agree), mean power of the block (W). */
    readonly blocks: readonly {
        readonly at: number;
        readonly percent: number;
        readonly watts: number;
    }[];
    readonly trend: readonly {
        readonly at: number;
        readonly percent: number;
        readonly low: number;
        readonly high: number;
    }[];
}
/** Difference of two meters in blocks against power or cadence, with means of bands and their intervals. */
export interface DependenceChart {
    readonly kind: 'dependence';
    readonly id: string;
    readonly subject: Subject;
    readonly of: 'power' | 'cadence' | 'speed';
    readonly unit: 'W' | 'rpm' | 'km/h';
    /** Primary over second, %, of each block. */
    readonly points: readonly {
        readonly x: number;
        readonly percent: number;
    }[];
    readonly bands: readonly {
        readonly from: number;
        readonly to: number;
        readonly count: number;
        readonly percent: number;
        readonly low: number;
        readonly high: number;
    }[];
}
/** Difference of two meters in blocks against their mean, with the limits of agreement, %, and concordance. */
export interface AgreementChart {
    readonly kind: 'agreement';
    readonly id: string;
    readonly subject: Subject;
    readonly points: readonly {
        readonly watts: number;
        readonly percent: number;
    }[];
    readonly mean: number;
    readonly low: number;
    readonly high: number;
    /** Half the 95 % interval of each, %. */
    readonly half: {
        readonly mean: number;
        readonly low: number;
        readonly high: number;
    };
    /**
     * Concordance of the blocks, 1 where both meters read alike in each, and its 95 % interval; `honest` is what
     * 95 of 100 honest pairs as found in the field have at least in a ride whose power varies as much. Null where
     * nothing varies, or nothing differs.
     */
    readonly concordance: {
        readonly value: number;
        readonly low: number;
        readonly high: number;
        readonly honest: number;
    } | null;
}
/** Three meters or more on one ride: each against the mean of the others, and every pair. */
export interface MetersChart {
    readonly kind: 'meters';
    readonly id: string;
    readonly meters: readonly {
        readonly subject: Subject;
        readonly watts: number;
        /** From the mean of the others, %, places allowed for. */
        readonly percent: number;
        /** Scatter of its single blocks by Grubbs' estimator, %; null where the data cannot tell it from nothing. */
        readonly scatter: Reading;
    }[];
    readonly pairs: readonly {
        readonly a: Subject;
        readonly b: Subject;
        readonly percent: number;
    }[];
}
/** Each sprint second by second on both meters. */
export interface EffortsChart {
    readonly kind: 'efforts';
    readonly id: string;
    readonly subject: Subject;
    readonly efforts: readonly {
        /** First second shown, on the primary's series. */
        readonly from: number;
        readonly primary: readonly Reading[];
        readonly second: readonly Reading[];
        readonly peakPrimary: number;
        readonly peakSecond: number;
        /** Excess over the steady difference, %. */
        readonly excess: number;
        readonly seconds: number;
    }[];
}
/** Power–duration curve of the race against what the history allows. */
export interface CurveChart {
    readonly kind: 'curve';
    readonly id: string;
    readonly points: readonly {
        readonly duration: number;
        readonly race: Reading;
        /** Best of the history, and the upper end of what it allows; null where it says nothing. */
        readonly best: Reading;
        readonly allowed: Reading;
    }[];
}
/** Heart rate as measured and as power predicts it, in blocks; and power at equal heart rate. */
export interface ResponseChart {
    readonly kind: 'response';
    readonly id: string;
    readonly blocks: readonly {
        readonly at: number;
        readonly watts: number;
        readonly heartRate: number;
        readonly predicted: number;
    }[];
}
/** Close-ups of single stretches, second by second, with what is meant marked in each. */
export interface CloseUpsChart {
    readonly kind: 'close-ups';
    readonly id: string;
    readonly closeUps: readonly {
        /** First second shown, on the primary's series. */
        readonly from: number;
        readonly power: readonly Reading[];
        readonly cadence: readonly Reading[] | null;
        readonly heartRate: readonly Reading[] | null;
        /** The seconds meant, on the primary's series. */
        readonly marked: Stretch;
    }[];
}
/** What became of each second around the race: recorded, lost, paused. */
export interface CoverageChart {
    readonly kind: 'coverage';
    readonly id: string;
    /** The recording, from its first second to its last; positions on the primary's series. */
    readonly recording: Stretch;
    readonly window: Stretch;
    readonly lost: readonly Stretch[];
    readonly paused: readonly Stretch[];
}
/** The file's own totals beside what its samples give under each usual definition. */
export interface TotalsChart {
    readonly kind: 'totals';
    readonly id: string;
    readonly rows: readonly {
        readonly total: string;
        readonly unit: Unit;
        readonly stated: number;
        readonly fromSamples: readonly {
            readonly definition: string;
            readonly value: number;
        }[];
        /** Distance to the nearest of them, % of it. */
        readonly off: number;
    }[];
}
/** How often each whole watt occurs, and where a factor would leave gaps or doubles. */
export interface CombChart {
    readonly kind: 'comb';
    readonly id: string;
    /** Watts of the first count. */
    readonly from: number;
    readonly counts: readonly number[];
    /** What neighbouring watts lead to expect, for each count. */
    readonly expected: readonly number[];
    readonly factor: number;
    /** Watts that whole numbers times the factor never reach (factor above 1) or reach twice (below 1). */
    readonly marked: readonly number[];
    /** The seconds counted, on the primary's series. */
    readonly stretch: Stretch;
}
/** Stretches of samples that occur twice, side by side. */
export interface CopiesChart {
    readonly kind: 'copies';
    readonly id: string;
    readonly copies: readonly {
        /** First second of each, on the primary's series. */
        readonly at: readonly [first: number, second: number];
        readonly seconds: number;
        readonly first: readonly Reading[];
        readonly second: readonly Reading[];
    }[];
}
/** The levels that a trace keeps to, with the ride around them. */
export interface PlateausChart {
    readonly kind: 'plateaus';
    readonly id: string;
    readonly power: readonly Reading[];
    readonly plateaus: readonly {
        readonly stretch: Stretch;
        readonly watts: number;
    }[];
}
/** How much of a change a second later is undone: the mark that averaging leaves. */
export interface AveragingChart {
    readonly kind: 'averaging';
    readonly id: string;
    /** Correlation of the second differences of power at lags of 1, 2, … s: a plain mean dips. Empty for others. */
    readonly correlation: readonly number[];
    /** How far neighbouring means over each span lie apart, W. */
    readonly scatter: readonly {
        readonly span: number;
        readonly watts: number;
    }[];
    /** Seconds of averaging found. */
    readonly seconds: number;
    /** A typical minute of the ride as recorded, from its first second. */
    readonly from: number;
    readonly power: readonly Reading[];
}
/** Power against speed with the curve that it keeps to. */
export interface SpeedCurveChart {
    readonly kind: 'speed-curve';
    readonly id: string;
    /** kg that the power less their change of speed keeps to the curve with; null: power as recorded. */
    readonly inertia: number | null;
    /** m/s and W: a regular choice of seconds. */
    readonly points: readonly {
        readonly speed: number;
        readonly watts: number;
    }[];
    readonly curve: readonly {
        readonly speed: number;
        readonly watts: number;
    }[];
}
/** The rider's mass as each steep stretch implies it, beside the declared one. Health data throughout. */
export interface ClimbsChart {
    readonly kind: 'climbs';
    readonly id: string;
    readonly declared: number;
    /** The middle of the stretches, with its 95 % interval, kg. */
    readonly implied: {
        readonly kg: number;
        readonly low: number;
        readonly high: number;
    };
    /** First second of each stretch on the primary's series, mean power (W), and the mass it implies (kg). */
    readonly climbs: readonly {
        readonly at: number;
        readonly watts: number;
        readonly kg: number;
    }[];
}
/** Things that every rider shows, how much of each this recording shows, and from where on people lie. */
export interface TraitsChart {
    readonly kind: 'traits';
    readonly id: string;
    readonly traits: readonly {
        readonly trait: string;
        readonly value: number;
        readonly unit: Unit;
        readonly atLeast: number | null;
        readonly atMost: number | null;
        readonly shown: boolean;
    }[];
}
