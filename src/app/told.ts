import type { Blend } from "../engine/blend.js";
import { sharesText } from "../widgets/shares-text.js";
import { sentenceText, type Catalogue } from "../reed/catalogue.js";
import { targetOf } from "../reed/targets.js";
import type { BenchAction, BenchState } from "./bench-state.js";
import { viewBench } from "./bench-view.js";
import { toldAdvice } from "./told-advice.js";
import { targetLine } from "./target-line.js";

/**
 * What a screen reader hears of an action: of a target how far it is, of a moved point its shares and the sentence,
 * of a pinned reed its name, otherwise the sentence.
 */
export function told(state: BenchState, action: BenchAction, text: Catalogue): string {
  const { bench } = state.present;
  const { placed, sentence, doubt = 0, comparison } = viewBench(state, text);
  const shares = (blend: Blend): string => sharesText(blend, text);
  switch (action.type) {
    case "target-set":
    case "aim-moved": {
      const target = targetOf(bench, text.target.own);
      if (!target) return text.target.noneNow;
      const line = placed ? targetLine(target, { raw: placed.raw, doubt }, text) : "";
      const where =
        action.type === "aim-moved" ? `${text.target.ownShares}: ${shares(target.blend)}` : "";
      return [where, line, target.why].filter((part) => part !== "").join(" ");
    }
    case "reed-worked": {
      const labels = state.model.features.filter(({ id }) => action.features.includes(id));
      return text.measure.summary.workedExplain(labels.map(({ label }) => label));
    }
    case "sheet-moved":
    case "zero-set":
    case "presenting-set":
      return "";
    case "lesson-opened":
    case "lesson-worked":
    case "progress-set":
    case "lesson-file-opened":
      return action.says;
    case "page-set":
      return text.pages[action.page];
    case "reed-pinned":
      return text.compare.nowPinned(comparison?.pinned.reed || text.bar.allRound);
    case "reed-unpinned":
      return text.compare.nowUnpinned;
    case "undo":
    case "redo": {
      // How many are left makes two in a row differ: a live region is silent on the same words.
      const left = state[action.type === "undo" ? "past" : "future"].length;
      const target = targetOf(bench, text.target.own);
      const line = target && placed ? targetLine(target, { raw: placed.raw, doubt }, text) : "";
      return `${text.bar.travelled[action.type](left)} ${line || sentenceText(sentence)}`;
    }
    case "point-moved":
      return placed ? `${shares(placed.blend)} ${sentenceText(sentence)}` : sentenceText(sentence);
    case "stand-ins-asked":
    case "stand-in-tried":
    case "trial-kept":
    case "trial-ended":
    case "step-done":
    case "sitting-begun":
    case "plan-looked-at":
    case "quality-shown":
    case "quality-judged":
    case "symptom-picked":
      return toldAdvice(state, action, text);
    default:
      return sentenceText(sentence);
  }
}
