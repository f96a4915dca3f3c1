/** Mean crank torque of a turn (N·m) from power (W) and cadence (rpm): P / ω. */
export function crankTorque(watts: number, rpm: number): number {
  return watts / ((rpm * 2 * Math.PI) / 60);
}

/** Power (W) of a crank torque (N·m) at a cadence (rpm). */
export function crankPower(torque: number, rpm: number): number {
  return torque * ((rpm * 2 * Math.PI) / 60);
}
