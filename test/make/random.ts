/**
 * Seeded random numbers. A stream is named by a key; `fork` names a further stream that does not depend
 * on how much was drawn before, so that adding one draw to the rider leaves every ride as it was.
 *
 * Only +, -, *, /, sqrt, log and exp are used here and in the whole simulator: they give the same bits on
 * every Node, which `sin`, `cos` and `pow` do not promise. Samples must come out byte for byte the same.
 */
export class Random {
  readonly key: string;
  private a: number;
  private b: number;
  private c: number;
  private counter = 1;
  private spare = Number.NaN;

  constructor(key: string | number) {
    this.key = String(key);
    [this.a, this.b, this.c] = hash(this.key);
    for (let i = 0; i < 12; i++) this.bits();
  }

  /** An independent stream. */
  fork(name: string | number): Random {
    return new Random(`${this.key}/${name}`);
  }

  /** 32 random bits (sfc32 by Chris Doty-Humphrey, public domain). */
  bits(): number {
    const sum = (((this.a + this.b) | 0) + this.counter) | 0;
    this.counter = (this.counter + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = ((this.c << 21) | (this.c >>> 11)) + sum;
    this.c |= 0;
    return sum >>> 0;
  }

  /** Uniform in [0, 1) with 53 bits. */
  uniform(): number {
    return ((this.bits() >>> 5) * 67108864 + (this.bits() >>> 6)) / 9007199254740992;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }

  /** Whole number from low to high, both possible. */
  integer(low: number, high: number): number {
    return low + Math.floor(this.uniform() * (high - low + 1));
  }

  chance(probability: number): boolean {
    return this.uniform() < probability;
  }

  pick<T>(items: readonly T[]): T {
    return items[Math.floor(this.uniform() * items.length)]!;
  }

  /** Standard normal (Marsaglia's polar method). */
  normal(mean = 0, spread = 1): number {
    if (!Number.isNaN(this.spare)) {
      const kept = this.spare;
      this.spare = Number.NaN;
      return mean + spread * kept;
    }
    for (;;) {
      const x = this.bits() / 2147483648 - 1;
      const y = this.bits() / 2147483648 - 1;
      const square = x * x + y * y;
      if (square >= 1 || square === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(square)) / square);
      this.spare = y * scale;
      return mean + spread * x * scale;
    }
  }

  /** Normal, drawn again until it lies within the bounds. */
  normalWithin(mean: number, spread: number, low: number, high: number): number {
    for (let tries = 0; tries < 100; tries++) {
      const value = this.normal(mean, spread);
      if (value >= low && value <= high) return value;
    }
    return Math.min(high, Math.max(low, mean));
  }

  /** Student's t with a whole number of degrees of freedom: heavy tails. */
  studentT(freedom: number): number {
    let square = 0;
    for (let i = 0; i < freedom; i++) {
      const z = this.normal();
      square += z * z;
    }
    return this.normal() / Math.sqrt(square / freedom);
  }

  /** Student's t scaled to a standard deviation of 1 (freedom of at least 3). */
  heavy(freedom: number): number {
    return this.studentT(freedom) * Math.sqrt((freedom - 2) / freedom);
  }

  exponential(mean: number): number {
    return -mean * Math.log(1 - this.uniform());
  }
}

/** Three 32-bit words out of a string (FNV-1a with three offsets, then a final mix). */
function hash(key: string): [number, number, number] {
  const words: [number, number, number] = [0x811c9dc5, 0x9e3779b9, 0x85ebca6b];
  for (let i = 0; i < key.length; i++) {
    const code = key.charCodeAt(i);
    words[0] = Math.imul(words[0] ^ code, 0x01000193);
    words[1] = Math.imul(words[1] ^ (code + i), 0x01000193);
    words[2] = Math.imul(words[2] ^ (code * 31), 0x5bd1e995);
  }
  return [mix(words[0]), mix(words[1] ^ words[0]), mix(words[2] ^ words[1])];
}

function mix(word: number): number {
  let h = word ^ (word >>> 16);
  h = Math.imul(h, 0x7feb352d);
  h ^= h >>> 15;
  h = Math.imul(h, 0x846ca68b);
  return (h ^ (h >>> 16)) | 0;
}

/** 64 hex digits that stand for a file's digest, the same for the same key. */
export function fakeDigest(key: string): string {
  const random = new Random(`digest of ${key}`);
  let text = '';
  for (let i = 0; i < 8; i++) text += random.bits().toString(16).padStart(8, '0');
  return text;
}
