import type { Spot } from '../../src/preview/homography.ts';

type Vector = readonly [number, number, number];

/**
 * A pinhole camera over the floor, by the usual formula u = f X / Z + c, v = f Y / Z + d in the coordinates of the camera (R. Hartley, A. Zisserman,
 * Multiple View Geometry, 2nd ed., section 6.1), turned about its own axes: first to the side (`pan`, to the right), then down (`tilt`), then about the line of sight (`roll`).
 * Floor: mm across and along; the camera stands `height` mm over it at `across`, `along` and looks along it. Pixels: from the left top.
 */
export interface Camera {
  across: number;
  along: number;
  height: number;
  pan: number;
  tilt: number;
  roll: number;
  /** Focal length, pixels. */
  focal: number;
  width: number;
  pixelsHigh: number;
}

/** The ways right, down and ahead of the camera, as vectors of the room: across, along, up. */
function axes({ pan, tilt, roll }: Camera): [right: Vector, down: Vector, ahead: Vector] {
  const right: Vector = [Math.cos(pan), -Math.sin(pan), 0];
  const level: Vector = [Math.sin(pan), Math.cos(pan), 0];
  const ahead: Vector = [level[0] * Math.cos(tilt), level[1] * Math.cos(tilt), -Math.sin(tilt)];
  const down: Vector = [-level[0] * Math.sin(tilt), -level[1] * Math.sin(tilt), -Math.cos(tilt)];
  const [c, s] = [Math.cos(roll), Math.sin(roll)];
  const mix = (a: Vector, p: number, b: Vector, q: number): Vector => [
    a[0] * p + b[0] * q,
    a[1] * p + b[1] * q,
    a[2] * p + b[2] * q,
  ];
  return [mix(right, c, down, s), mix(down, c, right, -s), ahead];
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Where a place on the floor is seen. */
export function seenAt(camera: Camera, [across, along]: Spot): Spot {
  const [right, down, ahead] = axes(camera);
  const ray: Vector = [across - camera.across, along - camera.along, -camera.height];
  const depth = dot(ray, ahead);
  return [
    (camera.focal * dot(ray, right)) / depth + camera.width / 2,
    (camera.focal * dot(ray, down)) / depth + camera.pixelsHigh / 2,
  ];
}

/** The place on the floor that a point of the picture shows, or nothing above the horizon: the ray of light followed down. */
export function placeSeen(camera: Camera, [u, v]: Spot): Spot | undefined {
  const [right, down, ahead] = axes(camera);
  const [a, b] = [(u - camera.width / 2) / camera.focal, (v - camera.pixelsHigh / 2) / camera.focal];
  const ray = [0, 1, 2].map((n) => ahead[n]! + a * right[n]! + b * down[n]!) as unknown as Vector;
  if (ray[2] >= 0) return undefined;
  const steps = -camera.height / ray[2];
  return [camera.across + steps * ray[0], camera.along + steps * ray[1]];
}
