import type { components } from './contract.js';
import type { Vehicle } from './offer.js';

type Seat = Vehicle['seats'][number];
type Point = components['schemas']['Position'];

/** Where a head rests, by seat. */
export interface Ear {
  seat: number;
  point: Point;
}

/** A distance somebody has measured. */
export interface Measured {
  from: Point;
  distance_m: number;
}

export const LEAST_M = 0.1;
export const MOST_M = 10;

/** Two distances fix a loudspeaker well enough: those to the seats that weigh most. */
const EARS = 2;
const ROUNDS = 500;
/** What a tape does not tell apart */
const TAPE_M = 0.005;

export function earsOf({ seats }: Vehicle): Ear[] {
  return seats
    .flatMap((seat, index) => {
      const point = headOf(seat);
      return point ? [{ seat: index, point, weight: seat.weight ?? 1 }] : [];
    })
    .sort((a, b) => b.weight - a.weight)
    .slice(0, EARS);
}

function headOf({ position, left_ear, right_ear }: Seat): Point | undefined {
  if (position || !left_ear || !right_ear) return position;
  return between(left_ear, right_ear, 0.5);
}

/** Straight from one point to another, m. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m);
}

/**
 * The point at the measured distances, reached from where the shop put the loudspeaker by going to each
 * distance in turn, straight from or to the ear. Nothing where no point has all the distances.
 */
export function placed(start: Point, measured: Measured[]): Point | undefined {
  let point = start;
  for (let round = 0; round < ROUNDS && !fits(point, measured, 1e-6); round++) {
    for (const { from, distance_m } of measured) {
      point = between(from, point, distance_m / (distance(from, point) || 1));
    }
  }
  return fits(point, measured, TAPE_M) ? point : undefined;
}

function fits(point: Point, measured: Measured[], within_m: number): boolean {
  return measured.every(({ from, distance_m }) => Math.abs(distance(from, point) - distance_m) <= within_m);
}

/** The point a share of the way from one to another. */
function between(from: Point, to: Point, share: number): Point {
  const along = (a: number, b: number) => a + (b - a) * share;
  return { x_m: along(from.x_m, to.x_m), y_m: along(from.y_m, to.y_m), z_m: along(from.z_m, to.z_m) };
}
