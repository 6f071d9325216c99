import type { Blend } from "../engine/blend.js";
import { pullWay } from "../engine/differences.js";
import type { BenchState } from "./bench-state.js";
import { shownValues } from "../reed/tried.js";
import { mapFor } from "./measured-map.js";

/** One and the same for every move of a drag, so that nobody is told of it. */
const none: readonly Blend[] = [];

/**
 * The way on which the point is seen going from one state to the next: along the pulls, group by group. None while a
 * gesture runs, for dragging is never eased, nor between two reeds.
 */
export function wayBetween(before: BenchState, after: BenchState): readonly Blend[] {
  const [from, to] = [before, after].map(({ present }) => shownValues(present.bench));
  if (before.present.bench.reed !== after.present.bench.reed) return none;
  const gesture = before.gesture !== undefined || after.gesture !== undefined;
  if (gesture || from === to) return none;
  const { model } = after;
  const map = mapFor(model, to!);
  if (!map || map !== mapFor(model, from!)) return none;
  const groups = new Map(model.features.map(({ id, group }) => [id, group]));
  return pullWay(map, from!, to!, (id) => groups.get(id)!);
}
