import { pointToBlend, type Frame, type Point } from "../engine/frame.js";

/** Whether a point lies in the triangle, or no more than a hair outside. */
export function isInside(point: Point, frame: Frame): boolean {
  return pointToBlend(point, frame).every((share) => share >= -0.01);
}
