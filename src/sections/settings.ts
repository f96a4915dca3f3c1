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
  /** Set-point block: ten-second means within this share of their level for so long (s). An honest
   * controlled session varies by 2 to 4 %. */
  setPointShare: 0.05,
  setPointShortest: 60,
  /** Steady: half-minute means within this share of their level for so long (s). */
  steadyShare: 0.08,
  steadyShortest: 180,
  /** Over-under: at least so many levels in turn above and below, each so long (s), and so far apart. */
  overUnderLevels: 4,
  overUnderLongest: 180,
  overUnderStep: 0.06,
} as const;
