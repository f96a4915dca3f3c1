import FitParser from 'fit-file-parser';
import { Problem } from '../../problem.ts';
import { type DeveloperFields, renameDeveloperFields } from './developer.ts';
import type { Part } from './parts.ts';

/** A decoded message: field names of the FIT Profile, values in SI units. Trust no type in it. */
export type Message = Readonly<Record<string, unknown>>;

export interface Decoded {
  readonly fileIds: readonly Message[];
  readonly deviceInfos: readonly Message[];
  readonly sports: readonly Message[];
  readonly sessions: readonly Message[];
  readonly laps: readonly Message[];
  readonly events: readonly Message[];
  readonly records: readonly Message[];
}

/**
 * Decodes the whole messages of one part. Developer fields appear under the keys that `known` notes.
 *
 * @throws Problem `format-damaged` when the decoder refuses them.
 */
export function decode(bytes: Uint8Array, part: Part, known: DeveloperFields): Decoded {
  const mended = !part.intact || part.fieldDescriptions.length > 0;
  const content = mended ? mend(bytes, part) : bytes.subarray(part.start);
  if (mended) renameDeveloperFields(content, part, known);
  const fit = parse(content);
  const list = (name: string) => (fit[name] ?? []) as Message[];
  return {
    fileIds: list('file_ids'),
    deviceInfos: list('device_infos'),
    sports: list('sports'),
    sessions: list('sessions'),
    laps: list('laps'),
    events: list('events'),
    records: list('records'),
  };
}

/** A copy of the part's whole messages under a header that states their size. */
function mend(bytes: Uint8Array, part: Part): Uint8Array {
  const copy = bytes.slice(part.start, part.end);
  new DataView(copy.buffer).setUint32(4, copy.length - part.headerSize, true);
  return copy;
}

function parse(content: Uint8Array): Message {
  let result: Message | undefined;
  // `force` skips the decoder's own check of header, size and checksum. findParts has made it already, and
  // decides more finely what a failure costs; made twice, it would take a tenth of the time again.
  const parser = new FitParser({ force: true, mode: 'list' });
  try {
    // It reads any view by its buffer and offset, though its types name two kinds only.
    parser.parse(content as unknown as ArrayBuffer, (_, data) => {
      result = data as unknown as Message;
    });
  } catch {
    result = undefined;
  }
  if (result !== undefined) return result;
  throw new Problem({
    code: 'format-damaged',
    what: 'the messages in this FIT file cannot be decoded',
    hint: 'Copy the file from the head unit again',
  });
}
