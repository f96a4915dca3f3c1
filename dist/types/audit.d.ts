/**
 * THE function: read → normalise → align → find sections → measure → judge. Start reading here.
 */
import { type NamedBytes, type Profile, type RaceFacts, type Recording, type Report, type RiderFacts, type RuleSet, type UnreadableFile } from './types.ts';
/** What one rider hands in for one race, as files. */
export interface Submission extends Facts {
    readonly primary: NamedBytes;
    readonly seconds: readonly NamedBytes[];
    /** Seconds that could not even be opened, each with the sentence that says why. */
    readonly unopened?: readonly Pick<UnreadableFile, 'name' | 'why'>[];
}
/** The same once its files are read. */
export interface ReadSubmission extends Facts {
    readonly primary: Recording;
    readonly seconds: readonly Recording[];
    /** Seconds that could not be read, each with the sentence that says why. */
    readonly unreadable: readonly UnreadableFile[];
}
export interface Facts {
    readonly rider: RiderFacts;
    readonly race: RaceFacts;
    /** The rider's past rides; null when none were handed in. */
    readonly profile: Profile | null;
    /** Files beside the recordings that the answer depends on: facts, profile. */
    readonly otherInputs: Report['inputs'];
}
export type Stage = 'reading' | 'aligning' | 'measuring' | 'judging';
type Watch = (stage: Stage) => void;
/**
 * Audits one submission.
 *
 * @param onStage told before each stage begins
 * @throws Problem when the primary cannot be read; a second that cannot be read is stated in the report
 */
export declare function audit(submission: Submission, rules: RuleSet, onStage?: Watch): Promise<Report>;
/**
 * Reads what was handed in; nothing is compared yet.
 *
 * @throws Problem when the primary cannot be read, or holds no power
 */
export declare function readSubmission(submission: Submission): Promise<ReadSubmission>;
/** Audits recordings that are read already. */
export declare function auditRecordings(submission: ReadSubmission, rules: RuleSet, onStage?: Watch): Report;
export {};
