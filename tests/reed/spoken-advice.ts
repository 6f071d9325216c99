import {
  bassoonActions,
  bassoonModel,
  compileModel,
  finishingFreedom,
  handStandIns,
  place,
  planAdjustments,
  planNotes,
  standIns,
  type Plan,
  type StandInRequest,
  type Values,
} from "../../src/lib/engine.js";
import { adviceWords } from "../../src/reed/advice-words.js";
import { english } from "../../src/reed/catalogue.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { planSentences, stepSentences, type StepSentences } from "../../src/reed/plan-sentences.js";
import { readingText, unitSign } from "../../src/reed/reading-text.js";
import {
  differenceSentence,
  featureSentence,
  handSentence,
  handsWorthTelling,
  pairSentence,
  pairsWorthTelling,
  requestSentence,
  singlesWorthTelling,
  type Spoken,
} from "../../src/reed/stand-in-sentences.js";
import { targets } from "../../src/reed/targets.js";
import type { LengthUnit } from "../../src/reed/units.js";

const map = compileModel(bassoonModel);

export function spokenIn(unit: LengthUnit): Spoken {
  return {
    map,
    actions: bassoonActions,
    words: adviceWords,
    by: (id, size) => {
      const feature = bassoonModel.features.find((one) => one.id === id)!;
      return `${readingText(feature, size, unit, english)} ${unitSign(feature, unit, english)}`.trim();
    },
  };
}

const reedOf = (name: string): Values => demoReeds.find(({ reed }) => reed === name)!.readings;

/** A stand-in list of a demo reed as a teacher would read it to a student. */
export function standInList(
  reed: string,
  request: StandInRequest,
  unit: LengthUnit = "mm",
): { title: string; byHand: string[]; features: string[]; pairs: string[]; difference: string[] } {
  const values = reedOf(reed);
  const freedom = finishingFreedom(bassoonModel, values);
  const spoken = spokenIn(unit);
  const { singles, pairs } = standIns(map, values, request, freedom);
  const hands = handsWorthTelling(handStandIns(map, values, request, bassoonActions, freedom));
  return {
    title: requestSentence(request, spoken),
    byHand: hands.slice(0, 4).map((one) => handSentence(one, spoken)),
    features: singlesWorthTelling(singles, spoken)
      .slice(0, 4)
      .map((one) => featureSentence(one, spoken)),
    pairs: pairsWorthTelling(pairs, spoken)
      .slice(0, 2)
      .map((one) => pairSentence(one, spoken)),
    difference: hands.flatMap((one) => differenceSentence(one, singles, spoken) ?? []),
  };
}

/** The first plan of a demo reed toward a part, as a teacher would read it to a student. */
export function planList(
  reed: string,
  part: string,
  unit: LengthUnit = "mm",
  pick: (plans: readonly Plan[]) => Plan = (plans) => plans[0]!,
): { before: string[]; steps: StepSentences[] } {
  const values = reedOf(reed);
  const target = targets.find(({ id }) => id === part)!;
  const adjustments = planAdjustments(map, values, target.blend, bassoonActions);
  const plan = pick(adjustments.plans);
  const notes = planNotes(map, values, bassoonActions, plan);
  const now = place(map, values).raw;
  return {
    before: planSentences(adjustments, plan, notes, now, target, adviceWords),
    steps: stepSentences(notes, spokenIn(unit)),
  };
}
