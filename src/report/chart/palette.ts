/**
 * The colours of all drawings, in pairs: on light paper and on a dark screen. A drawing carries the light
 * ones as attributes, so that a saved file is right wherever it is opened and print is always light, and
 * classes by which the page's dark style replaces them. Series colours differ in lightness as well as in
 * hue, so that colour-blind readers tell them apart.
 */
export const palette = {
  ink: ['#1d2126', '#ebe7de'],
  quiet: ['#575d66', '#a9a69e'],
  rule: ['#d9d5cb', '#3a3d42'],
  paper: ['#fffdf8', '#16181b'],
  a: ['#0b5394', '#7db8f2'],
  b: ['#c4550d', '#f5a05f'],
  c: ['#00785a', '#59c9a5'],
  d: ['#8e3b76', '#dd95c8'],
  haze: ['#c3bba8', '#5b5f66'],
  band: ['#e6e1d4', '#34373c'],
  mark: ['#f6e2a8', '#564617'],
  flag: ['#7a5a00', '#e5c25c'],
} as const satisfies Readonly<Record<string, readonly [light: string, dark: string]>>;

export type Role = keyof typeof palette;

/** Class and light colour of a role, for a line or for an area. */
export const line = (role: Role) => ({ class: `s-${role}`, light: palette[role][0] });
export const area = (role: Role) => ({ class: `f-${role}`, light: palette[role][0] });

/** The meters, in order: the primary first. */
export function meterRole(index: number): Role {
  return (['a', 'b', 'c', 'd'] as const)[index % 4]!;
}
