const plain = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d{1,3})?$/;

/** A decimal number with a point; NaN for anything else, infinity included. */
export function decimal(text: string): number {
  const value = plain.test(text) ? Number(text) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}

/** What a decoder hands over where a number should be: NaN for anything but a finite one. */
export function finite(value: unknown): number {
  return typeof value === 'number' && Number.isFinite(value) ? value : Number.NaN;
}
