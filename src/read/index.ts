import { sha256 } from '../math/digest.ts';
import { Problem } from '../problem.ts';
import type { NamedBytes, Recording } from '../types.ts';
import type { Parsed } from './format.ts';
import type { Content, Unreadable } from './sniff.ts';
import { type Unpacked, unpack } from './unpack.ts';

export { decodeText } from './text.ts';
export { holdsOtherTable, isArchive, memberNames, openArchive, openMember } from './unpack.ts';

/**
 * Every format that is read; `sniff` tells them apart by content. Each is loaded when the first file of its
 * kind comes: a decoder takes 10 to 30 ms to load, and most runs need one.
 */
const formats: Readonly<Record<Recording['format'], () => Promise<(bytes: Uint8Array) => Parsed>>> = {
  fit: async () => (await import('./fit/fit.ts')).readFit,
  tcx: async () => (await import('./xml/tcx.ts')).readTcx,
  gpx: async () => (await import('./xml/gpx.ts')).readGpx,
  csv: async () => (await import('./csv/csv.ts')).readCsv,
};

/**
 * Reads one device's file, as it stands: FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP, told apart by
 * content and never by name. Nothing is repaired or resampled. Positions are dropped here. A recording
 * without power, or of another sport, is returned like any other.
 *
 * @throws Problem, placed at the file's name: `format-unknown`, `format-damaged`, `format-limits`, `no-records`.
 */
export async function read(file: NamedBytes): Promise<Recording> {
  try {
    const digest = sha256(file.bytes);
    const { format, parsed } = await parse(await unpack(file.bytes));
    if (parsed.time.length === 0) throw noRecords();
    return { name: file.name, sha256: await digest, format, ...parsed };
  } catch (error) {
    throw error instanceof Problem ? error.at(file.name) : error;
  }
}

async function parse({ bytes, content }: Unpacked): Promise<{ format: Recording['format']; parsed: Parsed }> {
  // A table without our headings: the reader of tables says which it found.
  const format = content === 'table' ? 'csv' : content;
  if (!isFormat(format)) throw unknown(format);
  const decode = await formats[format]();
  return { format, parsed: decode(bytes) };
}

function isFormat(content: Content): content is Recording['format'] {
  return Object.hasOwn(formats, content);
}

const seen: Readonly<Record<Exclude<Unreadable, 'table'>, string>> = {
  nothing: 'this file is empty',
  'web page': 'this is a web page, not a recording: the download may have asked for a login',
  'other text': 'this text is not a recording that can be read (TCX, GPX or CSV)',
  'other bytes':
    'this is not a recording that can be read (FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP)',
};

function unknown(content: Exclude<Content, Recording['format'] | 'table'>): Problem {
  return new Problem({
    code: 'format-unknown',
    what: seen[content as keyof typeof seen],
    hint: 'Hand in the original file from the head unit or the training app',
  });
}

function noRecords(): Problem {
  return new Problem({
    code: 'no-records',
    what: 'this file holds no record with a time: it may be a planned route, a workout or settings',
    hint: 'Hand in the recording of the ride itself',
  });
}
