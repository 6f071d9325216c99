import { actionArrow } from "../engine/action-room.js";
import { blendDistance, type Blend } from "../engine/blend.js";
import type { BlendMap } from "../engine/compile.js";
import type { Actions, Purpose, Triple } from "../engine/model.js";
import { place } from "../engine/place.js";
import { vectorToTriple } from "../engine/plane.js";
import { ratioPull } from "../engine/pulls.js";
import { lessonWords } from "../reed/lesson-words.js";
import { targetRadius, targets } from "../reed/targets.js";
import type { Claim, Mover } from "./claim.js";
import { exerciseReed } from "./exercise-reed.js";
import { lipChange } from "./lip-change.js";

/** Whether a claim is true, and what the model says in its place. */
export interface ClaimTruth {
  readonly isTrue: boolean;
  /** The computed pull, or what else was compared, in words. */
  readonly computed: string;
}

/** Two pulls with a cosine from here on do the same thing; common practice, no source. */
const leastLikeness = 0.8;

/** A share that changes by less than this per step has not changed. */
const leastChange = 1e-3;

/** A quantity of the lip panel that changes by less per step has not changed; as in the panel's own table. */
const leastLipChange = 0.01;

const order: Readonly<Record<Purpose, 0 | 1 | 2>> = { high: 0, low: 1, loud: 2 };
const { computed: words } = lessonWords;

/**
 * Holds a claim against the model, under the features that the map counts.
 *
 * Shape   a claim, a map, actions → true or false with the computed numbers.
 * Unit    a feature is moved by half its spread, a ratio by a whole share of itself, an action by one unit.
 * Throws  RangeError for a feature that the map leaves out; `uncounted` finds these before.
 */
export function claimTruth(claim: Claim, map: BlendMap, actions: Actions): ClaimTruth {
  const pullOf = (mover: Mover): Triple => moverPull(mover, map, actions);
  switch (claim.kind) {
    case "goes": {
      const pull = pullOf(claim.mover);
      return { isTrue: goes(pull, claim), computed: words.pull(pull) };
    }
    case "stronger": {
      const [a, b] = [Math.hypot(...pullOf(claim.a)), Math.hypot(...pullOf(claim.b))];
      return { isTrue: a > b, computed: words.strengths(a, b) };
    }
    case "gives": {
      const { mover, quantity, preset, more } = claim;
      const change = (lipChange(map, mover.id, quantity, preset) ?? 0) * mover.sign;
      const isTrue = more ? change > leastLipChange : change < -leastLipChange;
      return { isTrue, computed: words.lips(change) };
    }
    case "raises":
    case "lowers": {
      const { effects } = actions.actions.find(({ id }) => id === claim.action)!;
      const effect = effects[claim.feature] ?? 0;
      return {
        isTrue: claim.kind === "raises" ? effect > 0 : effect < 0,
        computed: words.effect(effect),
      };
    }
    case "undone": {
      const { reversible } = actions.actions.find(({ id }) => id === claim.action)!;
      return { isTrue: reversible === claim.can, computed: words.undone(reversible) };
    }
    case "leans": {
      const raw = reedPlace(claim.reed, map);
      const share = raw[order[claim.purpose]];
      return { isTrue: share === Math.max(...raw), computed: words.pull(awayFromCentre(raw)) };
    }
    case "near":
    case "far": {
      const part = targets.find(({ id }) => id === claim.place)?.blend;
      const distance = blendDistance(
        reedPlace(claim.reed, map),
        part ?? reedPlace(claim.place, map),
      );
      const near = distance <= targetRadius;
      return {
        isTrue: near === (claim.kind === "near"),
        computed: words.distance(distance, targetRadius),
      };
    }
    default: {
      const likeness = cosine(pullOf(claim.a), pullOf(claim.b));
      return { isTrue: isAlike(claim.kind, likeness), computed: words.likeness(likeness) };
    }
  }
}

/** The features and ratios of a claim that the map leaves out. */
export function uncounted(claim: Claim, map: BlendMap): string[] {
  const movers = "mover" in claim ? [claim.mover] : "a" in claim ? [claim.a, claim.b] : [];
  return movers.flatMap((mover) => {
    if (mover.kind === "action") return [];
    const ratio = map.model.ratios.find(({ id }) => mover.kind === "ratio" && id === mover.id);
    return (ratio ? [ratio.of, ratio.to] : [mover.id]).filter((id) => !map.byId.has(id));
  });
}

function goes(pull: Triple, { sense, purpose }: Claim & { readonly kind: "goes" }): boolean {
  const share = pull[order[purpose]];
  if (sense === "more") return share > leastChange;
  if (sense === "less") return share < -leastChange;
  if (sense === "toward") return share > leastChange && share === Math.max(...pull);
  return share < -leastChange && share === Math.min(...pull);
}

function isAlike(kind: "like" | "unlike" | "against", likeness: number): boolean {
  if (kind === "like") return likeness >= leastLikeness;
  return kind === "against" ? likeness <= -leastLikeness : likeness < leastLikeness;
}

function moverPull(mover: Mover, map: BlendMap, actions: Actions): Triple {
  if (mover.kind === "action") {
    const action = actions.actions.find(({ id }) => id === mover.id)!;
    return vectorToTriple(actionArrow(map, action));
  }
  const pull = mover.kind === "ratio" ? ratioPull(map, mover.id) : map.byId.get(mover.id)!.pull;
  return [pull[0] * mover.sign, pull[1] * mover.sign, pull[2] * mover.sign];
}

function cosine(a: Triple, b: Triple): number {
  const lengths = Math.hypot(...a) * Math.hypot(...b);
  return lengths > 0 ? (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) / lengths : 0;
}

function reedPlace(reed: string, map: BlendMap): Blend {
  return place(map, exerciseReed({}, { reed }, map.model)).raw;
}

function awayFromCentre(raw: Blend): Triple {
  return [raw[0] - 1 / 3, raw[1] - 1 / 3, raw[2] - 1 / 3];
}
