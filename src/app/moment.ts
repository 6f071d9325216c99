import { blendDistance, centreBlend, type Blend } from "../engine/blend.js";
import type { ReedModel, Values } from "../engine/model.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { place } from "../engine/place.js";
import type { Bench, PinnedReed } from "../reed/bench.js";
import { ownTarget, thousandthsBlend } from "../reed/new-bench.js";
import type { Readings } from "../reed/readings.js";
import { targetPlaces } from "../reed/target-places.js";
import { givenValues, shownValues, triedOver, withTried } from "../reed/tried.js";
import { mapFor } from "./measured-map.js";
import type { Sheet } from "./blank-sheet.js";

/** A bench at one moment, with what the address does not hold. */
export interface Moment {
  readonly bench: Bench;
  /** All readings of a feature whose value is their mean. */
  readonly readings: Readings;
  /** The guided sheet, once it has been begun. */
  readonly sheet?: Sheet;
  /** While the recipe follows the point: the values it set out from, and where it was asked to go. */
  readonly following?: { readonly from: Values; readonly asked: Blend };
}

/** A target picked for the first time as one's own starts from the target before it, or from the reed. */
export function withTarget(model: ReedModel, present: Moment, target: string): Moment {
  const { bench } = present;
  if (target === bench.target) return present;
  if (target !== ownTarget || bench.aim) return { ...present, bench: { ...bench, target } };
  const before = targetPlaces.find(({ id }) => id === bench.target)?.blend;
  const values = shownValues(bench);
  const map = mapFor(model, values);
  const start = before ?? (map ? place(map, values).blend : centreBlend);
  return { ...present, bench: { ...bench, target, aim: wholeThousandths(start) } };
}

/** One's own target at another place. */
export function withAim(moment: Moment, blend: Blend): Moment {
  const aim = wholeThousandths(blend);
  const { bench } = moment;
  if (bench.target === ownTarget && bench.aim && blendDistance(bench.aim, aim) === 0) return moment;
  return { ...moment, bench: { ...bench, target: ownTarget, aim } };
}

/** A place of the triangle in whole thousandths, as an address holds it. */
export function wholeThousandths(blend: Blend): Blend {
  const [high, low] = nearestBlend(blend).map((share) => Math.round(share * 1000));
  return thousandthsBlend(high!, Math.min(low!, 1000 - high!));
}

/** The reed on the bench, as it is shown, is laid beside itself, to be compared with what comes. */
export function pinned(moment: Moment): Moment {
  const { bench } = moment;
  return {
    ...moment,
    bench: { ...bench, pinned: { reed: bench.reed, values: shownValues(bench) } },
  };
}

/** Nothing is compared any more. */
export function unpinned(moment: Moment): Moment {
  const { pinned: gone, ...bench } = moment.bench;
  return gone ? { ...moment, bench } : moment;
}

/** The pinned reed comes to the bench, the other is pinned. */
export function swapped(model: ReedModel, moment: Moment): Moment {
  const { bench } = moment;
  const { reed, pinned: other } = bench;
  if (!other) return moment;
  const given = givenValues(model, other);
  const next = anotherReed(bench, { reed: other.reed, values: given ?? other.values });
  const tried = given && triedOver(given, other.values);
  return {
    bench: { ...withTried(next, tried), pinned: { reed, values: shownValues(bench) } },
    readings: {},
  };
}

/** Another reed on the same bench: nothing of the one before stays but how the bench is looked at. */
export function anotherReed(bench: Bench, { reed, values }: PinnedReed): Bench {
  const { done: _done, expected: _expected, tried: _tried, ...looks } = bench;
  const none = { locked: [], unsound: [], overruled: false, wet: "" } as const;
  return { ...looks, ...none, reed, values, finished: reed !== "" };
}

/** The sheet goes on while values change. */
export function onlySheet({ sheet }: Moment): Pick<Moment, "sheet"> {
  return sheet ? { sheet } : {};
}
