import type { Report, UnreadableFile } from '../../types.ts';
/** What the organiser puts into a letter; every part may be left out. */
export interface LetterFrame {
    /** Who is written to, and from whom. */
    readonly rider?: string;
    readonly organiser?: string;
    readonly event?: string;
    /** Until when an answer is asked for, as it is to be said: "Friday, 20 March". */
    readonly by?: string;
    /** Where an answer goes. */
    readonly reply?: string;
    /** Words of the organiser's own, before the closing. */
    readonly note?: string;
}
/** The letter's fixed words, paragraph by paragraph. */
export declare const letter: {
    readonly greeting: ({ rider }: LetterFrame) => string;
    readonly opening: ({ submission, reach }: Report, { event }: LetterFrame) => string;
    readonly nothing: 'They raised nothing that needs an answer from you. Thank you for handing in your recording.';
    readonly questions: (count: number) => string;
    readonly missing: ({ missing }: Report) => string;
    readonly unreadable: ({ why }: UnreadableFile) => string;
    readonly seen: 'What was seen:';
    readonly innocent: 'What it may innocently be:';
    readonly settles: 'What would settle it; any one of these helps:';
    readonly asAbove: 'What it may innocently be, and what would settle it, are the same as above.';
    readonly asking: ({ by, reply }: LetterFrame) => string;
    readonly rights: 'People decide about your result, under the organiser’s own rules, and they will have your answer before them. How often honest riders show such values is stated in the report; it does not say how likely you are honest.';
    readonly enclosed: 'The full report is enclosed. It shows the evidence for every question, says where every limit comes from, and names the checksums with which anyone can run the same checks again. Heart rate and body mass in it are health data; only those who decide see them.';
    readonly closing: ({ organiser }: LetterFrame) => string;
};
