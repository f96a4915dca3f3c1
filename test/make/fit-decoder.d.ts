/** The second decoder ships no types of its own. */
declare module 'fit-decoder' {
  interface RawField {
    readonly recordNumber?: number;
    readonly data: unknown;
  }
  interface ReadableMessage {
    readonly type: string;
    readonly data: Readonly<Record<string, unknown>>;
  }
  interface Decoder {
    fit2json(bytes: ArrayBuffer): { readonly records: readonly { readonly fields: readonly RawField[] }[] };
    parseRecords(raw: unknown): { readonly records: readonly ReadableMessage[] };
  }
  const decoder: Decoder;
  export default decoder;
}
