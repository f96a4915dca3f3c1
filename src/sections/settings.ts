/** What makes a section, each with its reason. Common practice, no source, unless said otherwise. */
export const settings = {
  /** Sprint: three-second power this many times the mean of the ride … */
  sprintPeak: 2,
  /** … out to where it falls under this many times the mean, */
  sprintEdge: 1.4,
  /** and between so many seconds long: shorter is a stroke, longer is an attack. */
  sprintShortest: 4,
  sprintLongest: 40,
  /** Coasting: no power on any meter for so long (s). Shorter ones are corners. */
  coastingShortest: 10,
  /** Climb: at least so much rise over run … */
  climbGrade: 0.03,
  /** … for so long (s), measured over windows of so many seconds (barometers wander). */
  climbShortest: 180,
  climbWindow: 60,
  /** Levels between steps: looked for in means over so many seconds, from so much power (W) on, … */
  heldGrain: 5,
  heldWatts: 30,
  /** … in neighbours that differ by at least this share (a trainer that reports its target has no noise), … */
  heldNoise: 0.01,
  /** … where a further level must save so many squares of that noise for each unit of log n, … */
  heldPrice: 4,
  /** … and cut after so many seconds at the latest, which bounds the work. */
  heldLongest: 3600,
  /** Set-point block: a level with no more than this spread of ten-second means, for so long (s). An honest
   * controlled session varies by 2 to 4 %. */
  setPointSpread: 0.05,
  setPointShortest: 60,
  /** Steady: means over so many seconds within this share of their level for so long (s). */
  steadyGrain: 30,
  steadyShare: 0.08,
  steadyShortest: 180,
  /** Over-under: at least so many levels in turn above and below, each so long (s), and so far apart. */
  overUnderLevels: 5,
  overUnderShortest: 20,
  overUnderLongest: 180,
  overUnderStep: 0.06,
  /** Between two levels lie at most so many seconds that are neither. */
  overUnderBetween: 20,
  /** Each comes back to the level before the last within this share of it. */
  overUnderAlike: 0.1,
} as const;
