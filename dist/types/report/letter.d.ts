import type { Report } from '../types.ts';
import { type LetterFrame } from './words/letter.ts';
/**
 * A letter to the rider in plain words and plain text: what was seen, what it may innocently be, what to
 * send, by when and where, and that nothing is decided yet.
 */
export declare function renderLetter(report: Report, frame?: LetterFrame): string;
