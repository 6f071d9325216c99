import type { FeatureId } from "../engine/model.js";

/** What else people call the features, besides their labels: English. Trade usage; common practice, no source. */
export const featureNames: {
  readonly others: Readonly<Record<FeatureId, readonly string[]>>;
  /** Names that may be one of several, in small letters without blanks. */
  readonly several: Readonly<Record<string, readonly FeatureId[]>>;
} = {
  others: {
    bladeLength: ["blade", "length of the blade", "collar", "collar to tip", "tip to collar"],
    tipWidth: ["width of the tip", "tip, width", "width at the tip"],
    throatWidth: ["width of the throat", "throat, width", "width at the throat"],
    firstWire: ["wire 1", "1st wire", "wire one", "1st wire roundness", "front wire"],
    secondWire: ["wire 2", "2nd wire", "wire two", "2nd wire roundness", "back wire"],
    heart: ["thickness of the heart"],
    wings: ["wing", "thickness of the wings"],
    spine: ["thickness of the spine"],
    rails: ["rail", "thickness of the rails"],
    tip: ["thickness of the tip"],
    backRise: ["back", "rise of the back"],
    hinging: ["hinge", "hinges"],
    openingHeight: [
      "tip opening",
      "tip opening height",
      "aperture height",
      "height of the opening",
      "height of the aperture",
    ],
    openingWidth: [
      "tip opening width",
      "aperture width",
      "width of the opening",
      "width of the aperture",
    ],
  },
  several: {
    opening: ["openingHeight", "openingWidth"],
    aperture: ["openingHeight", "openingWidth"],
    wire: ["firstWire", "secondWire"],
    wires: ["firstWire", "secondWire"],
    roundness: ["firstWire", "secondWire"],
    width: ["tipWidth", "throatWidth", "openingWidth"],
    thickness: ["heart", "wings", "spine", "rails", "tip"],
  },
};
