import { amountText } from "../reed/amount-text.js";
import { bassoonActions } from "../reed/bassoon.js";
import { bassoonQualities } from "../reed/bassoon-qualities.js";
import type { DoneStep } from "../reed/done-steps.js";
import { sentenceText, type Catalogue } from "../reed/catalogue.js";
import { targetOf } from "../reed/targets.js";
import type { AdviceAction } from "./advice-state.js";
import type { BenchState } from "./bench-state.js";
import { viewBench } from "./bench-view.js";
import { standInList } from "./stand-in-list.js";
import { targetLine } from "./target-line.js";

/** A step that was done, as it was told when it was to be done. */
export function doneText(
  { model, present }: BenchState,
  { action: id, amount }: DoneStep,
  text: Catalogue,
): string {
  const action = bassoonActions.actions.find((one) => one.id === id);
  if (!action) return id;
  const [feature, effect] = Object.entries(action.effects)[0]!;
  const size = Math.abs(amount * effect);
  const gaugeError = model.features.find((one) => one.id === feature)?.gaugeError ?? 0;
  const isBelowGauge = size < gaugeError * (1 - 1e-9);
  const by = amountText(model, present.bench.unit, text)(feature, size);
  return `${text.advice.plan.step(amount, id, action.label, by, isBelowGauge)}.`;
}

/** What a screen reader hears after something was done with advice; empty where the screen's own focus says it. */
export function toldAdvice(state: BenchState, action: AdviceAction, text: Catalogue): string {
  const words = text.planPage;
  const said = (): string => sentenceText(viewBench(state, text).sentence);
  switch (action.type) {
    case "stand-ins-asked":
      return action.request ? (standInList(state, text)?.sentence ?? "") : "";
    case "stand-in-tried":
      return words.standIns.nowTried(said());
    case "trial-kept":
      return words.standIns.nowKept;
    case "trial-ended":
      return words.standIns.nowBack;
    case "step-done":
      return `${words.plan.nowDone(doneText(state, action.step, text))} ${wayText(state, text) || said()}`;
    case "sitting-begun":
      return words.plan.newSittingHint;
    case "plan-looked-at":
      return text.advice.plan.kinds[action.kind];
    case "quality-shown": {
      const shown = bassoonQualities.qualities.find(({ id }) => id === action.quality);
      return shown ? `${shown.says} ${words.gains.contours(shown.label)}` : "";
    }
    case "quality-judged":
    case "symptom-picked":
      return "";
  }
}

function wayText(state: BenchState, text: Catalogue): string {
  const target = targetOf(state.present.bench, text.target.own);
  const { placed, doubt = 0 } = viewBench(state, text);
  return target && placed ? targetLine(target, { raw: placed.raw, doubt }, text) : "";
}
