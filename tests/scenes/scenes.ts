import { adviceDrawing } from "../../src/widgets/triangle-advice.js";
import type { LitElement } from "lit";
import { assumed } from "../../src/acoustics/assumptions.js";
import { presetState, type LipPresetId } from "../../src/acoustics/lip-presets.js";
import { respond, withHinging } from "../../src/acoustics/lip-response.js";
import { certaintyEllipse } from "../../src/engine/certainty.js";
import { compileModel } from "../../src/engine/compile.js";
import type { Values } from "../../src/engine/model.js";
import { finishingFreedom } from "../../src/engine/freedom.js";
import { planAdjustments } from "../../src/engine/plan-adjustments.js";
import { planNotes } from "../../src/engine/plan-notes.js";
import { pullChain } from "../../src/engine/pull-chain.js";
import { actionReach } from "../../src/engine/reach.js";
import { place } from "../../src/engine/place.js";
import { pulls } from "../../src/engine/pulls.js";
import { bassoonActions, bassoonModel } from "../../src/reed/bassoon.js";
import { bassoonQualities } from "../../src/reed/bassoon-qualities.js";
import { targets } from "../../src/reed/targets.js";
import { allRoundValues, type Layer } from "../../src/reed/bench.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { lipMechanics, type LipReed } from "../../src/reed/lip-reed.js";
import { define } from "../../src/widgets/define.js";
import { ReedCompass } from "../../src/widgets/reed-compass.js";
import { ReedDrawing } from "../../src/widgets/reed-drawing.js";
import { ReedLipFlow } from "../../src/widgets/reed-lip-flow.js";
import { ReedLipHeld } from "../../src/widgets/reed-lip-held.js";
import { ReedLipOpening } from "../../src/widgets/reed-lip-opening.js";
import { ReedLipPressures } from "../../src/widgets/reed-lip-pressures.js";
import { ReedLipRegion } from "../../src/widgets/reed-lip-region.js";
import { ReedTriangle } from "../../src/widgets/reed-triangle.js";

define("triangle-plane", ReedTriangle);
define("reed-compass", ReedCompass);
define("reed-drawing", ReedDrawing);
define("reed-lip-flow", ReedLipFlow);
define("reed-lip-held", ReedLipHeld);
define("reed-lip-opening", ReedLipOpening);
define("reed-lip-pressures", ReedLipPressures);
define("reed-lip-region", ReedLipRegion);

/** A small picture: an element with its properties set. */
export interface Scene {
  readonly name: string;
  readonly says: string;
  readonly make: () => LitElement;
}

const map = compileModel(bassoonModel);
const allRound = allRoundValues(bassoonModel);
const reed = (name: string): Values => demoReeds.find((one) => one.reed === name)!.readings;

function triangle(
  width: number,
  values: Values | undefined,
  layers: readonly Layer[],
  before?: Values,
): LitElement {
  const element = new ReedTriangle();
  element.layoutWidth = width;
  element.layers = layers;
  if (values) {
    element.blend = place(map, values).raw;
    element.ellipse = certaintyEllipse(map, { coverage: 0.68 });
  }
  if (before) element.ghost = place(map, before).raw;
  return element;
}

function plannedTriangle(name: string, part: string): LitElement {
  const values = reed(name);
  const target = targets.find(({ id }) => id === part)!;
  const [plan] = planAdjustments(map, values, target.blend, bassoonActions, {
    coverage: 0.68,
  }).plans;
  const element = triangle(480, values, []) as ReedTriangle;
  element.target = target;
  element.advice = {
    by: adviceDrawing,
    steps: planNotes(map, values, bassoonActions, plan!).steps,
    end: { blend: plan!.blend, ellipse: plan!.ellipse },
  };
  return element;
}

function judgedTriangle(quality: string): LitElement {
  const element = triangle(480, reed("Heron"), []) as ReedTriangle;
  const { values } = bassoonQualities.qualities.find(({ id }) => id === quality)!;
  element.advice = {
    by: adviceDrawing,
    contours: values,
  };
  return element;
}

function littleCompass(feature: string, values: Values): LitElement {
  const element = new ReedCompass();
  element.feature = bassoonModel.features.find(({ id }) => id === feature)!;
  element.pull = pulls(map, values).find((pull) => pull.feature === feature)!;
  return element;
}

function drawing(values: Values, width: number, lying: boolean, named = false): LitElement {
  const element = new ReedDrawing();
  element.model = bassoonModel;
  element.values = values;
  element.layoutWidth = width;
  element.lying = lying;
  element.named = named;
  return element;
}

function lipReed(name: string, preset: LipPresetId): LipReed {
  const reedOf = lipMechanics(bassoonModel, reed(name), assumed)!;
  return { name, reed: reedOf, response: respond(reedOf, presetState(preset)) };
}

function lipOpening(name: string, preset: LipPresetId, other?: string): LitElement {
  const element = new ReedLipOpening();
  element.model = bassoonModel;
  element.mine = lipReed(name, preset);
  if (other) element.other = lipReed(other, preset);
  return element;
}

function lipRegion(name: string, preset: LipPresetId, other?: string): LitElement {
  const element = new ReedLipRegion();
  element.model = bassoonModel;
  element.mine = lipReed(name, preset);
  element.place = presetState(preset).place;
  if (other) element.other = lipReed(other, preset);
  return element;
}

function lipFlow(name: string, preset: LipPresetId, other?: string): LitElement {
  const element = new ReedLipFlow();
  element.mine = lipReed(name, preset);
  element.at = presetState(preset);
  if (other) element.other = lipReed(other, preset);
  return element;
}

function lipHeld(hinging: number, hinges: string): LitElement {
  const element = new ReedLipHeld();
  element.reed = withHinging(lipReed("Heron", "middle").reed, hinging);
  element.hinges = hinges;
  element.pressed = 4500;
  element.most = 14000;
  return element;
}

/** Every scene is a demonstration, a regression picture and a piece of documentation at once. */
export const scenes: readonly Scene[] = [
  {
    name: "triangle-plan",
    says: "The steps of a plan lie head to tail and are numbered; a ring and a dashed ellipse are where they end.",
    make: () => plannedTriangle("Bittern", "everyday"),
  },
  {
    name: "triangle-leftover",
    says: "A small arrow is what a stand-in leaves over.",
    make: () => {
      const element = triangle(480, reed("Bittern"), [], allRound) as ReedTriangle;
      const { raw } = place(map, reed("Bittern"));
      element.advice = {
        by: adviceDrawing,
        leftover: { from: raw, to: [raw[0] + 0.06, raw[1] - 0.08, raw[2] + 0.02] },
      };
      return element;
    },
  },
  {
    name: "triangle-quality",
    says: "A quality lies over the triangle as lines at whole points, brighter where it is better.",
    make: () => judgedTriangle("steadyPitch"),
  },
  {
    name: "drawing-marked",
    says: "The likely places of a trouble are marked on the reed.",
    make: () => {
      const element = drawing(reed("Heron"), 320, true) as ReedDrawing;
      element.pointed = "heart rails firstWire openingHeight";
      return element;
    },
  },
  {
    name: "triangle-all-round",
    says: "The all-round reed lies in the centre.",
    make: () => triangle(480, allRound, []),
  },
  {
    name: "triangle-bittern-reading-lines",
    says: "Reading lines end at the side on which their share is read.",
    make: () => triangle(480, reed("Bittern"), ["readingLines"]),
  },
  {
    name: "triangle-heron-certainty-ghost",
    says: "Heron after a change, with where it was before and how sure the place is.",
    make: () => triangle(480, reed("Heron"), ["certainty"], allRound),
  },
  {
    name: "triangle-snipe-narrow",
    says: "On the narrowest screen the names still have room; Snipe lies a little outside.",
    make: () => triangle(280, reed("Snipe"), ["readingLines", "certainty"]),
  },
  {
    name: "triangle-heron-layers",
    says: "Heron's pulls head to tail, the reach of the hands, and the zone of a part to play.",
    make: () => {
      const element = triangle(480, reed("Heron"), ["pulls", "eachPull", "reach"]) as ReedTriangle;
      const values = reed("Heron");
      const freedom = finishingFreedom(bassoonModel, values);
      element.chain = pullChain(pulls(map, values), (id) => id);
      element.reach = {
        easy: actionReach(map, values, bassoonActions, freedom).polygon,
        full: actionReach(map, values, bassoonActions, freedom, { amounts: "max" }).polygon,
      };
      element.target = targets.find(({ id }) => id === "audition");
      return element;
    },
  },
  {
    name: "triangle-two-reeds-own-target",
    says: "Heron beside the pinned Bittern (the square), with a target of one's own that can be dragged.",
    make: () => {
      const element = triangle(480, reed("Heron"), []) as ReedTriangle;
      element.pinned = { blend: place(map, reed("Bittern")).raw, label: "Bittern" };
      element.target = { blend: [0.3, 0.45, 0.25], label: "My own target", own: true };
      return element;
    },
  },
  {
    name: "triangle-no-point",
    says: "Without enough readings there is a triangle and no point.",
    make: () => triangle(360, undefined, ["certainty"]),
  },
  {
    name: "compass-first-wire-bittern",
    says: "A flat first wire pulls toward soft and low.",
    make: () => littleCompass("firstWire", reed("Bittern")),
  },
  {
    name: "compass-tip-all-round",
    says: "At the all-round value there is only the way, no arrow.",
    make: () => littleCompass("tip", { ...allRound, tip: 0.32 / 3 }),
  },
  {
    name: "drawing-heron",
    says: "Heron against the lamp: thin wings are bright, the spine is dark.",
    make: () => drawing(reed("Heron"), 280, false),
  },
  {
    name: "drawing-snipe-lying-named",
    says: "Snipe as a strip, with the parts of the reed named.",
    make: () => drawing(reed("Snipe"), 336, true, true),
  },
  {
    name: "lip-opening-heron-bittern",
    says: "Heron's opening under lips for the high register; Bittern's over it has closed to a line.",
    make: () => lipOpening("Heron", "highRegister", "Bittern"),
  },
  {
    name: "lip-opening-heron-soft",
    says: "Under a soft low entry only the corners have met.",
    make: () => lipOpening("Heron", "softLow"),
  },
  {
    name: "lip-region-heron-high",
    says: "Lips for the high register leave a short part of Heron to swing, with its corners closed.",
    make: () => lipRegion("Heron", "highRegister"),
  },
  {
    name: "lip-region-heron-loud-bittern",
    says: "At full volume the lips lie far back; Bittern's swinging part as an outline.",
    make: () => lipRegion("Heron", "fullVolume", "Bittern"),
  },
  {
    name: "lip-flow-heron-snaps",
    says: "Heron's air rises to its peak and snaps shut; what cannot be held is dotted.",
    make: () => lipFlow("Heron", "middle"),
  },
  {
    name: "lip-flow-snipe-bittern",
    says: "Snipe under high lips beside Bittern as a thin line.",
    make: () => lipFlow("Snipe", "highRegister", "Bittern"),
  },
  {
    name: "lip-held-no-hinges",
    says: "Without hinges more than half of all openings cannot be held.",
    make: () => lipHeld(0, "without hinges"),
  },
  {
    name: "lip-held-full-hinges",
    says: "With full hinges every opening can be held.",
    make: () => lipHeld(1, "with full hinges"),
  },
  {
    name: "lip-pressures-heron",
    says: "Lips and breath end to end, with the pressure at which Heron snaps shut.",
    make: () => {
      const element = new ReedLipPressures();
      element.mine = lipReed("Heron", "middle");
      element.at = presetState("middle");
      return element;
    },
  },
];
