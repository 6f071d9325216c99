import type { Purpose } from "../../src/lib/engine.js";

/** Which way a feature or ratio goes in the corner reed of a purpose, against the all-round reed. */
export interface TradeDirection {
  readonly feature: string;
  readonly purpose: Purpose;
  readonly direction: "more" | "less";
  /** Where teachers call the tendency mild. */
  readonly strength?: "slight";
}

/** Source  common practice, no source. */
export const tradeDirections: readonly TradeDirection[] = [
  { feature: "throatWidth", purpose: "high", direction: "less" },
  { feature: "tipWidth", purpose: "high", direction: "less" },
  { feature: "bladeLength", purpose: "high", direction: "less" },
  { feature: "firstWire", purpose: "high", direction: "more" },
  { feature: "secondWire", purpose: "high", direction: "more" },
  { feature: "heartToWings", purpose: "high", direction: "more" },
  { feature: "spineToRails", purpose: "high", direction: "more" },
  { feature: "hinging", purpose: "high", direction: "more" },
  { feature: "backRise", purpose: "high", direction: "less" },
  { feature: "tipWidth", purpose: "low", direction: "more" },
  { feature: "bladeLength", purpose: "low", direction: "more" },
  { feature: "firstWire", purpose: "low", direction: "less" },
  { feature: "secondWire", purpose: "low", direction: "less" },
  { feature: "heartToWings", purpose: "low", direction: "less" },
  { feature: "spineToRails", purpose: "low", direction: "less" },
  { feature: "spine", purpose: "low", direction: "less" },
  { feature: "tip", purpose: "low", direction: "less" },
  { feature: "backRise", purpose: "low", direction: "more", strength: "slight" },
  { feature: "hinging", purpose: "low", direction: "more", strength: "slight" },
  { feature: "throatWidth", purpose: "loud", direction: "more" },
  { feature: "tipWidth", purpose: "loud", direction: "more", strength: "slight" },
  { feature: "hinging", purpose: "loud", direction: "less" },
  { feature: "spineToRails", purpose: "loud", direction: "less" },
  { feature: "rails", purpose: "loud", direction: "more" },
  { feature: "openingHeight", purpose: "loud", direction: "more" },
  { feature: "openingWidth", purpose: "loud", direction: "more" },
];
