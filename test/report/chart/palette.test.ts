import { describe, expect, it } from 'vitest';
import { palette, type Role } from '../../../src/report/chart/palette.ts';

type Vector = readonly [number, number, number];
type Matrix = readonly [Vector, Vector, Vector];

const times = (matrix: Matrix, v: Vector): Vector =>
  matrix.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]) as unknown as Vector;

/** sRGB to linear light, IEC 61966-2-1. */
const linear = (hex: string): Vector =>
  [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Vector;

/**
 * What is seen without one kind of cone, in linear light: Machado, Oliveira & Fernandes 2009, IEEE
 * Trans Vis Comput Graph 15:1291-1298, severity 1.0; matrices from memory.
 */
const eyes: Readonly<Record<string, Matrix>> = {
  all: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIE 1976 L*a*b*, D65. */
function lab(rgb: Vector): Vector {
  const xyz = times(
    [
      [0.4124, 0.3576, 0.1805],
      [0.2126, 0.7152, 0.0722],
      [0.0193, 0.1192, 0.9505],
    ],
    rgb,
  );
  const f = [xyz[0] / 0.9505, xyz[1], xyz[2] / 1.089].map((t) =>
    t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116,
  ) as [number, number, number];
  return [116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])];
}

const distance = (one: Vector, other: Vector) =>
  Math.hypot(...one.map((value, index) => value - other[index]!));

/** Contrast of WCAG 2: from 1 to 21. */
function contrast(one: string, other: string): number {
  const light = [one, other].map((hex) => {
    const [r, g, b] = linear(hex);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  });
  return (Math.max(...light) + 0.05) / (Math.min(...light) + 0.05);
}

const meters: readonly Role[] = ['a', 'b', 'c', 'd'];

describe.each([
  ['light', 0],
  ['dark', 1],
] as const)('colours on %s', (_, which) => {
  const colour = (role: Role) => palette[role][which];

  it.each(Object.entries(eyes))('tell the meters apart for eyes with %s cones missing', (_name, matrix) => {
    const seen = meters.map((role) => lab(times(matrix, linear(colour(role)))));
    const first = distance(seen[0]!, seen[1]!);
    // The two that nearly every report has are far apart; of four, each pair can still be told.
    expect(first).toBeGreaterThan(35);
    for (const [index, one] of seen.entries()) {
      for (const other of seen.slice(index + 1)) expect(distance(one, other)).toBeGreaterThan(12);
    }
  });

  it('stand out from the paper: text by 4.5, lines by 3', () => {
    for (const role of ['ink', 'quiet'] as const)
      expect(contrast(colour(role), colour('paper'))).toBeGreaterThan(4.5);
    for (const role of [...meters, 'flag'] as const)
      expect(contrast(colour(role), colour('paper'))).toBeGreaterThan(3);
    for (const role of meters) expect(contrast(colour(role), colour('mark'))).toBeGreaterThan(2);
  });
});
