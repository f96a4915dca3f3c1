/**
 * Power and speed on a bicycle (Martin et al. 1998, J Appl Biomech 14:276-291): drag, rolling, bearings,
 * gravity and change of speed, over the efficiency of the chain.
 */
export interface Load {
  /** Rider and bicycle, kg. */
  readonly mass: number;
  /** Drag area, m². */
  readonly cdA: number;
  readonly crr: number;
  /** kg/m³ */
  readonly density: number;
}

const gravity = 9.81; // m/s²
const wheelDragArea = 0.0044; // m², from memory
const chainEfficiency = 0.976;
/** Inertia of the wheels at their radius, kg, from memory: 0.14 kg·m² at 0.311 m. */
const wheelMass = 0.14 / (0.311 * 0.311);

/** Crank power (W) that holds a steady speed (m/s) on a grade (rise over run). */
export function steadyPower(load: Load, speed: number, grade: number, shelter = 1): number {
  return (speed * resistance(load, speed, grade, shelter)) / chainEfficiency;
}

/** Speed (m/s) one step later. `shelter` is the share of the drag that is felt (1: alone). */
export function nextSpeed(
  load: Load,
  speed: number,
  crankPower: number,
  grade: number,
  shelter: number,
  step: number,
): number {
  const rolling = Math.max(speed, 1.5);
  const push = (crankPower * chainEfficiency) / rolling;
  const acceleration = (push - resistance(load, rolling, grade, shelter)) / (load.mass + wheelMass);
  return Math.max(0.5, speed + acceleration * step);
}

/** Where the bicycle is and how fast, once a second. */
export class Road {
  readonly speed: Float64Array;
  readonly distance: Float64Array;
  readonly altitude: Float64Array;
  /** m/s */
  v = 6;
  private metres = 0;
  private height = 60;
  private readonly load: Load;

  constructor(load: Load, seconds: number) {
    this.load = load;
    this.speed = new Float64Array(seconds);
    this.distance = new Float64Array(seconds);
    this.altitude = new Float64Array(seconds);
  }

  roll(second: number, crankPower: number, grade: number, shelter: number): void {
    this.v = nextSpeed(this.load, this.v, crankPower, grade, shelter, 1);
    this.note(second, grade);
  }

  brake(second: number): void {
    this.v = Math.max(0, this.v - 3);
    this.note(second, 0);
  }

  private note(second: number, grade: number): void {
    this.metres += this.v;
    this.height += this.v * grade;
    this.speed[second] = this.v;
    this.distance[second] = this.metres;
    this.altitude[second] = this.height;
  }
}

/** N */
function resistance(load: Load, speed: number, grade: number, shelter: number): number {
  const along = 1 / Math.sqrt(1 + grade * grade);
  const drag = 0.5 * load.density * (load.cdA * shelter + wheelDragArea) * speed * speed;
  const bearings = (91 + 8.7 * speed) / 1000;
  return drag + load.crr * load.mass * gravity * along + bearings + load.mass * gravity * grade * along;
}
