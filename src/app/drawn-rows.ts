import { bladeSurface, type BladeRecipe } from "../acoustics/blade.js";
import { centreBlend, type Blend } from "../engine/blend.js";
import type { FeatureId, ReedModel, Values } from "../engine/model.js";
import { allRoundValues } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";
import { readingWithUnit } from "../reed/reading-text.js";
import { targetOf } from "../reed/targets.js";
import type { LengthUnit } from "../reed/units.js";
import { wholeMove, wholeShares } from "../reed/whole-shares.js";
import type { BenchState } from "./bench-state.js";
import type { BenchView } from "./bench-view.js";

/** A line of a table: its name, then one cell a column. */
export interface DrawnRow {
  readonly name: string;
  readonly cells: readonly string[];
}

/** Everything that stands on the triangle, a line each, with its three shares in per cent. */
export function triangleRows(state: BenchState, view: BenchView, text: Catalogue): DrawnRow[] {
  const { bench } = state.present;
  const words = text.table;
  const row = (name: string, blend: Blend): DrawnRow => ({
    name,
    cells: wholeShares(blend).map((share) => text.percent(share)),
  });
  const rows = [row(words.centre, centreBlend)];
  const { placed, comparison } = view;
  if (placed) rows.push(row(words.point, placed.blend));
  if (placed && placed.beyond > 0.005) rows.push(row(words.pointOutside, placed.raw));
  if (view.base) rows.push(row(text.tried.base(view.isGiven), view.base));
  if (comparison?.blend)
    rows.push(row(words.pinned(comparison.pinned.reed || text.bar.allRound), comparison.blend));
  const target = targetOf(bench, text.target.own);
  if (target)
    rows.push(row(words.target(text.advice.plan.target(target.id, target.label)), target.blend));
  return [
    ...rows,
    ...certaintyRow(state, view, text),
    ...pullRows(state, view, text),
    ...reachRows(view, text),
  ];
}

function certaintyRow({ present }: BenchState, view: BenchView, text: Catalogue): DrawnRow[] {
  const { layers } = present.bench;
  if (!layers.includes("certainty") || !view.drawnEllipse) return [];
  const { covariance } = view.drawnEllipse;
  const coverage = text.percent(layers.includes("coverage95") ? 0.95 : 0.68);
  const cells = [0, 1, 2].map((k) => `± ${text.percent(Math.sqrt(covariance[k]![k]!))}`);
  return [{ name: text.table.certainty(coverage, layers.includes("gaugeAlone")), cells }];
}

function pullRows({ model }: BenchState, { chain }: BenchView, text: Catalogue): DrawnRow[] {
  const labels = new Map([...model.groups, ...model.features].map(({ id, label }) => [id, label]));
  return chain.map(({ id, from, to }) => ({
    name: text.table.pull(labels.get(id)!),
    cells: wholeMove([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).map(text.signedPoints),
  }));
}

/** The polygon as the span of each share, inside the triangle as it is drawn. */
function reachRows({ reach }: BenchView, text: Catalogue): DrawnRow[] {
  if (!reach) return [];
  return (["easy", "full"] as const).map((kind) => ({
    name: text.table.reach(kind),
    cells: [0, 1, 2].map((k) => {
      const shares = reach[kind].map((corner) => Math.min(1, Math.max(0, corner[k]!)));
      return text.table.span(text.percent(Math.min(...shares)), text.percent(Math.max(...shares)));
    }),
  }));
}

/** Every so many mm behind the tip a line of thicknesses. */
const stationStep = 4;

/** Thickness of the blade at stations: on the spine, halfway to the edge, near the edge; as the lamp view shows it. */
export function bladeRows(
  model: ReedModel,
  values: Values,
  unit: LengthUnit,
  text: Catalogue,
): DrawnRow[] {
  const recipe = { ...allRoundValues(model), ...values } as Record<FeatureId, number> & BladeRecipe;
  const surface = bladeSurface(recipe);
  const shown = lengthText(model, unit, text);
  const stations = [1];
  while (stations.at(-1)! + stationStep < recipe.bladeLength)
    stations.push((Math.floor(stations.at(-1)! / stationStep) + 1) * stationStep);
  return stations.map((x) => ({
    name: shown(x),
    cells: [0, 0.5, 0.9].map((u) => shown(surface(x / 1000, u) * 1000)),
  }));
}

/** The openings seen end-on: width and height of the tip opening and of the tube at each wire. */
export function endRows(
  model: ReedModel,
  values: Values,
  unit: LengthUnit,
  text: Catalogue,
): DrawnRow[] {
  const recipe = { ...allRoundValues(model), ...values };
  const shown = lengthText(model, unit, text);
  const throat = recipe["throatWidth"]!;
  const tube = (which: "first" | "second"): DrawnRow => ({
    name: text.table.tube(which),
    cells: [shown(throat), shown(throat * recipe[`${which}Wire`]!)],
  });
  return [
    {
      name: text.table.tipOpening,
      cells: [shown(recipe["openingWidth"]!), shown(recipe["openingHeight"]!)],
    },
    tube("first"),
    tube("second"),
  ];
}

/** Lengths in the person's unit, with as many digits as a thickness needs. */
function lengthText(
  model: ReedModel,
  unit: LengthUnit,
  text: Catalogue,
): (value: number) => string {
  const feature = model.features.find(({ id }) => id === "heart")!;
  return (value) => readingWithUnit(feature, value, unit, text);
}
