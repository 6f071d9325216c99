import type { BlendMap } from "../engine/compile.js";
import { finishingFreedom } from "../engine/freedom.js";
import { actionReach } from "../engine/reach.js";
import { bassoonActions } from "../reed/bassoon-actions.js";
import type { BenchState } from "./bench-state.js";
import type { ReachView } from "./place-view.js";

/** Where hands can still bring the reed, with easy and with full amounts. */
export function reachOf({ model, present: { bench } }: BenchState, map: BlendMap): ReachView {
  const { values } = bench;
  const locked = Object.fromEntries(bench.locked.map((id) => [id, { locked: true }]));
  const freedom = { ...finishingFreedom(model, values), ...locked };
  return {
    easy: actionReach(map, values, bassoonActions, freedom).polygon,
    full: actionReach(map, values, bassoonActions, freedom, { amounts: "max" }).polygon,
  };
}
