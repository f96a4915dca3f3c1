/** The numbers of normalising, each with its reason. */
export const settings = {
  /**
   * Records further than this (s) from their neighbours belong to another ride or a broken clock: the
   * largest body of records is kept. Longer than any café stop, shorter than a night.
   */
  farSeconds: 6 * 3600,
  /** A recorder whose records lie 2 to this many seconds apart writes irregularly ("smart recording"). */
  bridgeSeconds: 15,
  /** Share of such steps from which the recorder counts as irregular; below it, they are dropouts. */
  irregularShare: 0.1,
  /** A gap at least this long (s) that begins at a standstill is an automatic pause. */
  pauseSeconds: 5,
  /** Slower than this (m/s) before the gap counts as standstill. */
  standstillSpeed: 1.5,
} as const;
