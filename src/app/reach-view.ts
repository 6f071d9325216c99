import type { BlendMap } from "../engine/compile.js";
import { finishingFreedom } from "../engine/freedom.js";
import { actionReach } from "../engine/reach.js";
import { actionsOf } from "../reed/actions-of.js";
import type { BenchState } from "./bench-state.js";
import type { ReachView } from "./place-view.js";

/** Where hands can still bring the reed, with easy and with full amounts. */
export function reachOf({ model, present: { bench } }: BenchState, map: BlendMap): ReachView {
  const { values } = bench;
  const locked = Object.fromEntries(bench.locked.map((id) => [id, { locked: true }]));
  const freedom = { ...finishingFreedom(model, values), ...locked };
  const actions = actionsOf(model);
  return {
    easy: actionReach(map, values, actions, freedom).polygon,
    full: actionReach(map, values, actions, freedom, { amounts: "max" }).polygon,
  };
}
