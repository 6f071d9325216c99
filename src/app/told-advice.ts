import { centreBlend } from "../engine/blend.js";
import { amountText } from "../reed/amount-text.js";
import { actionsOf } from "../reed/actions-of.js";
import { bassoonQualities } from "../reed/bassoon-qualities.js";
import type { DoneStep } from "../reed/done-steps.js";
import { sentenceText, type Catalogue } from "../reed/catalogue.js";
import { gainsAt } from "../reed/gains.js";
import { targetOf } from "../reed/targets.js";
import { sharesText } from "../reed/whole-shares.js";
import type { AdviceAction } from "./advice-state.js";
import type { BenchState } from "./bench-state.js";
import { judgedQualities } from "./plan-view.js";
import { viewBench } from "./bench-view.js";
import { standInList } from "./stand-in-list.js";
import { targetLine } from "./target-line.js";

/** A step that was done, as it was told when it was to be done. */
export function doneText(
  { model, present }: BenchState,
  { action: id, amount }: DoneStep,
  text: Catalogue,
): string {
  const action = actionsOf(model).actions.find((one) => one.id === id);
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
      return words.standIns.nowTried(
        `${offerText(state, action.what, text)} ${sharesOf(state, text)}`,
      );
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
      return judgedText(state, action.quality, text);
    case "symptom-picked":
      return "";
  }
}

/**
 * The words of the line that is tried, for two lines may bring the reed to the same shares; its caution describes the
 * button that was pressed.
 */
function offerText(state: BenchState, what: string, text: Catalogue): string {
  const list = standInList(state, text);
  const offers = list ? [...list.hands, ...list.features, ...list.pairs] : [];
  return offers.find(({ id }) => what.endsWith(` ${id}`))?.words ?? "";
}

function sharesOf(state: BenchState, text: Catalogue): string {
  const { placed } = viewBench(state, text);
  return placed ? sharesText(placed.blend, text) : "";
}

/** What a quality is now, where the reed lies and in the middle. */
function judgedText(state: BenchState, id: string, text: Catalogue): string {
  const { bench } = state.present;
  const qualities = judgedQualities(bench.judged);
  const { placed } = viewBench(state, text);
  const gain = gainsAt(qualities, placed?.raw ?? centreBlend).find((one) => one.id === id);
  if (!gain) return "";
  const words = text.planPage.gains;
  const whose = bench.judged?.[id] ? words.nowYours(gain.label) : words.nowReset(gain.label);
  const here = placed ? words.atReed(text.number(gain.value, 1)) : "";
  return [whose, here, words.atCentre(text.number(gain.against, 1))].filter(Boolean).join(" ");
}

function wayText(state: BenchState, text: Catalogue): string {
  const target = targetOf(state.present.bench, text.target.own);
  const { placed, doubt = 0 } = viewBench(state, text);
  return target && placed ? targetLine(target, { raw: placed.raw, doubt }, text) : "";
}
