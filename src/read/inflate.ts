import { Problem } from '../problem.ts';

/** Bytes that may still be unpacked. Shared by everything that is unpacked for one purpose. */
export interface Budget {
  left: number;
  /** What it began with, for the sentence that says it is spent. */
  readonly whole: number;
}

export function budgetOf(bytes: number): Budget {
  return { left: bytes, whole: bytes };
}

/** @throws Problem `format-limits` when more is wanted than is left. */
export function spend(budget: Budget, bytes: number): void {
  budget.left -= bytes;
  if (budget.left < 0) throw tooLarge('what is packed in this file', budget.whole);
}

export function tooLarge(what: string, most: number): Problem {
  return new Problem({
    code: 'format-limits',
    what: `${what} is larger than ${Math.floor(most / 2 ** 20)} MB, the most that is read`,
    hint: 'Hand in the recording of this ride alone, in its original format',
  });
}

/**
 * Unpacks gzip (RFC 1952) or raw deflate (RFC 1951) data, and stops as soon as more comes out than the
 * budget has left: a small file can unpack to a very large one.
 *
 * @throws Problem `format-damaged` when the data breaks off or makes no sense, `format-limits` beyond the budget.
 */
export async function inflate(
  packed: Uint8Array,
  format: 'gzip' | 'deflate-raw',
  budget: Budget,
): Promise<Uint8Array> {
  const source = new Blob([packed as Uint8Array<ArrayBuffer>]).stream();
  const reader = source.pipeThrough(new DecompressionStream(format)).getReader();
  const chunks: Uint8Array[] = [];
  try {
    for (;;) {
      const { done, value } = await reader.read().catch(() => {
        throw new Problem({
          code: 'format-damaged',
          what: 'the packed data breaks off or is damaged',
          hint: 'Download or pack the file again',
        });
      });
      if (done) return joined(chunks);
      spend(budget, value.length);
      chunks.push(value);
    }
  } finally {
    await reader.cancel().catch(() => undefined);
  }
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
