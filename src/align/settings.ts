/** The numbers of aligning, each with its reason. */
export const settings = {
  /** Both must have recorded at least this long together (s) for a lag to be considered. */
  leastOverlapSeconds: 240,
  /** …and at least this share of the shorter recording. */
  leastOverlapShare: 0.5,
  /** Lags closer than this (s) to the best one are the same answer: link latency and smoothing. */
  sameAnswerSeconds: 3,
  /** Log-likelihood by which the best lag must beat every other answer: odds of about 1000 to 1. */
  margin: 7,
  /** The best lag's log-likelihood must exceed the best of a time-reversed second by this factor. */
  surrogateFactor: 1.5,
  /**
   * Residuals of two riders of one race correlate by up to 0.15 in simulated races, those of one workout on two days
   * by up to 0.21. Up to this, the fast detail of cadence must agree as well (two riders' and two days' by at most
   * 0.37 where power does; two sensors of one ride's by at least 0.37, 0.65 as a rule), or else heart rate (0.89; its
   * sensors in half of the rides 0.98).
   */
  weakAgreement: 0.22,
  /** Who leaves out the stretches that do not agree finds more agreement: below this share held they must as well. */
  mostHeld: 0.9,
  sameLegs: 0.37,
  sameHeart: 0.9,
  /** What is faster than this (s) is detail of cadence: how legs wander, not how a course or a workout moves them. */
  legSeconds: 20,
  /** Trend-free power or cadence that agree so, or heart rate as above, let a stretch be of the same ride. */
  sameStretch: 0.3,
  /** Header times this close (s) to a lag may choose it among equals. */
  clockSeconds: 12,
  /** Offsets so near (s) to whole quarters of an hour look like a time-zone slip. */
  zoneSlackSeconds: 120,
  /** Window (s) in which a clock of its own can be told: about half a minute of detail. */
  segmentWindow: 30,
  /**
   * Log-likelihood that a jump of the clock costs, or the start or end of a stretch that no lag explains, and
   * a creep by some seconds: dear enough that a lag between two seconds does not flicker from one to the other.
   */
  jumpCost: 12,
  creepCost: 25,
  /**
   * Correlation of residuals that is taken for right, at most and at least: two meters share less of their
   * detail in some stretches. And of how many windows the stretches are over which it is taken: ten minutes.
   */
  segmentCorrelation: 0.7,
  leastSegmentCorrelation: 0.05,
  shareWindows: 20,
  /** Shortest stretch (s) that is asked for a lag of its own, longest pause (s) by which that may differ. */
  leastSegmentSeconds: 120,
  longestPauseSeconds: 1800,
  /** How many lags of its own such a stretch proposes at a time. */
  lagsOfStretch: 3,
  /**
   * Windows (s) at the ends of a stretch that must bear its lag out, and trend-free cadence that does. Of 360
   * simulated workouts in which one clock stopped, 14 pairs were asked about for minutes that ran on; of 840 honest
   * pairs without a stop none loses a second.
   */
  endWindow: 240,
  sameEnd: 0.4,
  /** How often new lags are looked for where none holds, and what is shared is taken anew, to this precision. */
  segmentRounds: 8,
  segmentPrecision: 0.02,
  /** How many other answers are tried as offsets of single stretches. */
  segmentCandidates: 12,
  /** Windows (s) in which the lag is found to a fraction of a second, and how many make a drift. */
  delayWindow: 600,
  leastDelayWindow: 120,
  /** Seconds that both wrote, fewest for a lag to a fraction of a second. */
  leastDelayCount: 60,
  driftWindows: 4,
  /**
   * A clock slides past the messages of a meter that sends one a second: what it writes becomes younger or older by up
   * to as much (s) over the ride, half of it either way, which no clock did. Without it 52 of 65 intervals held the drift.
   */
  linkSlide: 0.5,
  /** Lags (s) searched for each channel around the chosen offset: heart rate is buffered longest. */
  channelLag: { power: 5, cadence: 5, heartRate: 20 },
  /** Trend (s) taken out of a channel before its lag is sought. */
  channelTrend: 120,
  /** Share of a trace's second-to-second detail that one sensor on two recorders leaves unexplained. */
  sensorResidual: 0.15,
  /** How far from 1 the gain of one sensor on two recorders can lie: 0.0013 at most in simulated rides. */
  sensorGain: 0.003,
  /** The same share of a second with a gain of its own: two meters left 0.157 and more in 818 simulated rides. */
  derivedResidual: 0.13,
  /**
   * An even ride has little detail, and a little noise on top is much of it: up to this share may be left where that
   * is no more than this noise of single readings, as a share of mean power. A second computed from the first with
   * 2 % of noise on top shows 0.017 and leaves 0.26 in 95 of 100; a meter that averages may be as calm, and leaves more.
   */
  derivedNoise: 0.018,
  derivedResidualOfNoise: 0.3,
} as const;
