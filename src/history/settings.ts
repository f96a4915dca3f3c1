/** The numbers of compiling a profile, each with its reason. */
export const settings = {
  /**
   * Durations (s) at which bests are kept: about nine to a tenfold, round numbers as riders use them,
   * from the sprint to the longest day.
   */
  durations: [
    1, 2, 3, 5, 8, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 300, 420, 480, 600, 720, 900, 1200, 1500, 1800,
    2400, 3600, 5400, 7200, 10800, 14400, 21600, 28800,
  ] as readonly number[],
  /** A ride with less power than this (s) says nothing about what its rider can do. */
  shortestSeconds: 60,
  /**
   * More than any rider reaches for 5 s (W): elite track sprinters average 1791 ± 169 W over a revolution
   * at their best (Gardner et al. 2007, seven men); beyond mean + 6 SD a recording is no evidence.
   */
  impossibleSprint: 2800,
  impossibleSprintSeconds: 5,
  /** Share of records that lie far from the body of the ride, from which the clock counts as astray. */
  strayShare: 0.05,
  /** Share of the recorded seconds without power, from which the ride counts as mostly missing. */
  missingShare: 0.5,
  /** The same watts, above this and for this long (s): a value that hung, not a rider. */
  frozenWatts: 50,
  frozenSeconds: 300,
  /**
   * Control: pedalling minutes in which the 10 s means vary by less than this share of their mean. Riders
   * left to themselves vary by 4 % and more, a trainer in control holds 1–2 % (common practice, no source).
   */
  controlBlock: 60,
  controlMeans: 10,
  controlVariation: 0.015,
  /** Below this (W) nobody is pedalling in earnest. */
  pedallingWatts: 60,
  /** Two recordings are of one ride when this share of the shorter one overlaps … */
  duplicateOverlap: 0.8,
  /** … and from one meter when their bests also agree within this share. */
  duplicateAgreement: 0.005,
  /**
   * How much maximal effort a profile shows: durations (s) looked at, and the share within which a second ride
   * must come of the best. An effort that stands alone may have been far from all-out.
   */
  effortDurations: [5, 60, 180, 300, 480, 720, 1200, 3600] as readonly number[],
  effortNear: 0.06,
  /** What climbs show of mass is kept up to this (kg, share): beyond, the file holds no climbs. */
  climbed: { mostKg: 1e4, mostScatter: 1e3 },
  /** No profile file holds more rides than this: 30 years of daily riding. */
  mostRides: 12_000,
} as const;
