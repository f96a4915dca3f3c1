import type { DeviceFacts, NamedBytes, Profile } from './types.ts';
export interface ProfileOptions {
    /** A profile to carry on: files it knows are not read again, rides it holds stay. */
    readonly previous?: Profile;
    /** The rider's meters, matched by file name or by maker and product. */
    readonly devices?: readonly DeviceFacts[];
    /** Told before each file, counted from 0. */
    readonly onFile?: (name: string, index: number) => void;
}
/**
 * Compiles a rider's mean-maximal power history. No file stops it: what cannot serve is left out and
 * counted with its reason. The order of the files does not change the rides.
 */
export declare function compileProfile(files: AsyncIterable<NamedBytes> | Iterable<NamedBytes>, options?: ProfileOptions): Promise<Profile>;
