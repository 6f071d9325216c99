import { sentenceText, type Catalogue } from "../reed/catalogue.js";
import { targetOf } from "../reed/targets.js";
import { sharesText } from "../reed/whole-shares.js";
import type { BenchAction, BenchState } from "./bench-state.js";
import { isGiven } from "./bench-reed.js";
import { viewBench } from "./bench-view.js";
import { toldAdvice } from "./told-advice.js";
import type { Announcement } from "./announcer.js";
import { targetLine } from "./target-line.js";

/**
 * What a screen reader hears of an action: of a target how far it is, of a moved point its shares, and the
 * sentence where it has become another; of a pinned reed its name, otherwise the sentence.
 */
export function told(
  state: BenchState,
  action: BenchAction,
  text: Catalogue,
): string | Announcement {
  const { bench } = state.present;
  const { placed, sentence, doubt = 0, comparison } = viewBench(state, text);
  switch (action.type) {
    case "target-set":
    case "aim-moved": {
      const target = targetOf(bench, text.target.own);
      if (!target) return text.target.noneNow;
      const line = placed ? targetLine(target, { raw: placed.raw, doubt }, text) : "";
      const where =
        action.type === "aim-moved"
          ? `${text.target.ownShares}: ${sharesText(target.blend, text)}`
          : "";
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
    case "place-revisited":
      return text.pages[action.route.page];
    case "reed-pinned":
      return text.compare.nowPinned(comparison?.pinned.reed || text.bar.allRound);
    case "reed-unpinned":
      return text.compare.nowUnpinned;
    case "as-measured":
    case "try-left":
      return bench.tried
        ? { words: placed ? sharesText(placed.blend, text) : "", state: sentenceText(sentence) }
        : text.tried.nowAsMeasured(isGiven({ model: state.model, bench }));
    case "undo":
    case "redo": {
      // How many are left makes two in a row differ: a live region is silent on the same words.
      const left = state[action.type === "undo" ? "past" : "future"].length;
      const target = targetOf(bench, text.target.own);
      const line = target && placed ? targetLine(target, { raw: placed.raw, doubt }, text) : "";
      return `${text.bar.travelled[action.type](left)} ${line || sentenceText(sentence)}`;
    }
    case "point-moved":
    case "value-set":
      return {
        words: placed ? sharesText(placed.blend, text) : "",
        state: sentenceText(sentence),
      };
    case "stand-ins-asked":
    case "stand-in-tried":
    case "trial-ended":
    case "step-done":
    case "sitting-begun":
    case "plan-looked-at":
    case "quality-shown":
    case "quality-judged":
    case "symptom-picked":
      return toldAdvice(state, action, text);
    default:
      return { words: "", state: sentenceText(sentence), anyway: true };
  }
}
