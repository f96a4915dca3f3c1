import FitParser from 'fit-file-parser';
import { undecodable } from './damage.ts';
import type { Part } from './parts.ts';
import { freshAllowance, kinds, timeInHeader, walk } from './walk.ts';

/** A decoded message: field names of the FIT Profile, values in SI units. Trust no type in it. */
export type Message = Readonly<Record<string, unknown>>;

/** All messages of a part but its records. */
export interface Decoded {
  readonly fileIds: readonly Message[];
  readonly deviceInfos: readonly Message[];
  readonly sports: readonly Message[];
  readonly sessions: readonly Message[];
  readonly laps: readonly Message[];
  readonly events: readonly Message[];
}

/**
 * Decodes the whole messages of one part, without its records.
 *
 * @throws Problem `format-damaged` when the decoder refuses them.
 */
export function decode(bytes: Uint8Array, part: Part): Decoded {
  const fit = parse(withoutRecords(bytes, part));
  const list = (name: string) => (fit[name] ?? []) as Message[];
  return {
    fileIds: list('file_ids'),
    deviceInfos: list('device_infos'),
    sports: list('sports'),
    sessions: list('sessions'),
    laps: list('laps'),
    events: list('events'),
  };
}

/**
 * A part of the file as it would be without its records. They stay where the compressed header of another
 * message continues the time of the messages before it.
 */
function withoutRecords(bytes: Uint8Array, { start, headerSize, end }: Part): Uint8Array {
  const kept = new Uint8Array(end - start);
  let length = 0;
  let from = start;
  let continued = false;
  walk(bytes, start + headerSize, end, freshAllowance(), ({ kind }, at, messageEnd) => {
    const header = at - 1;
    if (kind === kinds.record) {
      if (header > from) kept.set(bytes.subarray(from, header), length);
      length += header - from;
      from = messageEnd;
    } else continued ||= timeInHeader(bytes[header]!) !== null;
  });
  if (continued) [length, from] = [0, start];
  kept.set(bytes.subarray(from, end), length);
  length += end - from;
  new DataView(kept.buffer).setUint32(4, length - headerSize, true);
  return kept.subarray(0, length);
}

function parse(content: Uint8Array): Message {
  let result: Message | undefined;
  // `force` skips the decoder's own check of header, size and checksum. findParts has made it already, and
  // decides more finely what a failure costs.
  const parser = new FitParser({ force: true, mode: 'list' });
  try {
    // It reads any view by its buffer and offset, though its types name two kinds only.
    parser.parse(content as unknown as ArrayBuffer, (_, data) => {
      result = data as unknown as Message;
    });
  } catch {
    result = undefined;
  }
  if (result === undefined) throw undecodable();
  return result;
}
