import { type LipDialId, dialValue, lipDialIds } from "../acoustics/lip-dials.js";
import { lipPresets, type LipPresetId, presetState } from "../acoustics/lip-presets.js";
import { type LipResponse, lipResponse } from "../acoustics/lip-response.js";
import type { BlendMap } from "../engine/compile.js";
import type { FeatureId } from "../engine/model.js";
import { lipRecipe, orNothing } from "../reed/lip-reed.js";

/** What a claim may say of lips and air: a dial of the lip panel, or how many openings can be held. */
export type LipQuantity = LipDialId | "usable";

export const lipQuantities: readonly LipQuantity[] = [...lipDialIds, "usable"];
export const lipPresetIds = Object.keys(lipPresets) as readonly LipPresetId[];

/**
 * What more of a feature changes under lips and breath: the all-round reed with half of half its spread less and more.
 *
 * Unit    relative: 0.02 is 2 % more.
 * Domain  undefined for a model whose recipes the lip model cannot read.
 *
 * @example lipChange(map, "openingHeight", "peakFlow", "fullVolume") > 0.1
 */
export function lipChange(
  map: BlendMap,
  feature: FeatureId,
  quantity: LipQuantity,
  preset: LipPresetId,
): number | undefined {
  const { mean, halfSpread } = map.byId.get(feature)!;
  const at = (value: number): number =>
    read(lipResponse(lipRecipe(map.model, { [feature]: value }), presetState(preset)), quantity);
  return orNothing(() => at(mean + halfSpread / 2) / at(mean - halfSpread / 2) - 1);
}

function read(response: LipResponse, quantity: LipQuantity): number {
  return quantity === "usable" ? response.usable : dialValue(response, quantity);
}
