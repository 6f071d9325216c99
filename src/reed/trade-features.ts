import type { LipPurpose, TradeFeature, TradeSays } from "../acoustics/trade-and-model.js";
import type { Feature, ReedModel } from "../engine/model.js";

const purposes: readonly LipPurpose[] = ["high", "low", "loud"];
/** In half-spreads: a corner value nearer to the all-round value than this is no direction. */
const leastDirection = 0.15;

/**
 * What the trade says, read off a model's corner reeds: a feature goes toward "more" for a purpose when the corner reed
 * of that purpose has more of it than the all-round reed.
 *
 * Shape   model → every feature, then every ratio; a step is a half-spread, of a ratio both thicknesses by 6 %, opposite ways.
 * Source  as the model's corner values: common practice, no source.
 *
 * @example tradeFeatures(bassoonModel).find(({ id }) => id === "bladeLength").trade.high → "less"
 */
export function tradeFeatures(model: ReedModel): TradeFeature[] {
  const byId = new Map(model.features.map((feature) => [feature.id, feature]));
  const features = model.features.map((feature) => ({
    id: feature.id,
    step: { [feature.id]: halfSpread(feature) },
    trade: directions(
      (purpose) => (feature.corners[purpose] - mean(feature)) / halfSpread(feature),
    ),
  }));
  const ratios = model.ratios.flatMap(({ id, of, to }) => {
    const [above, below] = [byId.get(of), byId.get(to)];
    if (!above || !below) return [];
    const at = (purpose: LipPurpose): number => above.corners[purpose] / below.corners[purpose];
    const middle = mean(above) / mean(below);
    const away = purposes.map((purpose) => at(purpose) - middle);
    const most = Math.max(...away.map(Math.abs));
    return [
      {
        id,
        step: { [of]: 0.06 * mean(above), [to]: -0.06 * mean(below) },
        trade: directions((purpose) => (at(purpose) - middle) / most),
      },
    ];
  });
  return [...features, ...ratios];
}

function directions(away: (purpose: LipPurpose) => number): TradeFeature["trade"] {
  const says = (purpose: LipPurpose): TradeSays => {
    const distance = away(purpose);
    if (Math.abs(distance) < leastDirection) return "nothing";
    return distance > 0 ? "more" : "less";
  };
  return { high: says("high"), low: says("low"), loud: says("loud") };
}

function mean({ corners }: Feature): number {
  return (corners.high + corners.low + corners.loud) / 3;
}

function halfSpread({ corners }: Feature): number {
  const values = Object.values(corners);
  return (Math.max(...values) - Math.min(...values)) / 2;
}
