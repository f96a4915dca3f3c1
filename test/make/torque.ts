/**
 * The straight line between crank torque and cadence in all-out pedalling: T(n) = T0 - k·n, mean over a
 * revolution. Seven elite men: T0 266 N·m, k 1.04 N·m/rpm (Gardner et al. 2007).
 */
export interface TorqueLine {
  /** Torque at standstill, N·m. */
  readonly standstill: number;
  /** Fall of torque, N·m per rpm. */
  readonly slope: number;
}

const radiansPerRpm = (2 * Math.PI) / 60;

/** Line whose power peaks with `pMax` (W) at `optimum` (rpm): Pmax = T0/2 · ω at n = T0/(2k). */
export function torqueLine(pMax: number, optimum: number): TorqueLine {
  const standstill = (2 * pMax) / (optimum * radiansPerRpm);
  return { standstill, slope: standstill / (2 * optimum) };
}

/** Most torque (N·m) at a cadence. */
export function torqueAt(line: TorqueLine, cadence: number): number {
  return Math.max(0, line.standstill - line.slope * cadence);
}

/** Most power (W) at a cadence. */
export function powerAt(line: TorqueLine, cadence: number): number {
  return torqueAt(line, cadence) * cadence * radiansPerRpm;
}

/** Cadence (rpm) at which power peaks. */
export function optimumCadence(line: TorqueLine): number {
  return line.standstill / (2 * line.slope);
}

/** Crank torque (N·m) of a power (W) at a cadence (rpm); NaN while the cranks stand. */
export function torqueOf(power: number, cadence: number): number {
  return cadence > 0 ? power / (cadence * radiansPerRpm) : Number.NaN;
}

/** Power (W) of a torque (N·m) at a cadence (rpm). */
export function powerOf(torque: number, cadence: number): number {
  return torque * cadence * radiansPerRpm;
}
