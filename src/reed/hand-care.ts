import type { Action, FeatureId } from "../engine/model.js";
import { readingsAfter } from "../engine/plan-notes.js";
import { isClip } from "../engine/sitting-rules.js";
import type { AdviceWords } from "./advice-words.js";
import { inSentence } from "./in-sentence.js";
import type { Spoken } from "./stand-in-sentences.js";

/** What someone needs to be told before hands do something, sentence by sentence. */
export interface HandCare {
  readonly how: string;
  /** In full where its tool comes for the first time, in short later. */
  readonly caution: string;
  readonly undo: string;
  readonly pitch: string;
  readonly readAgain: string;
}

/**
 * What is told beside things that hands do, one after the other: the same as beside the steps of a plan.
 *
 * Shape   the ids of the actions of each, what to say it with, cautions that stand already → one entry each.
 *
 * @example handCares([["clipTip"]], spoken)[0].undo → "It cannot be undone."
 */
export function handCares(
  deeds: readonly (readonly string[])[],
  spoken: Spoken,
  told: readonly string[] = [],
): HandCare[] {
  const known = new Set(told);
  return deeds.map((ids) => {
    const parts = ids.map((id) => spoken.actions.actions.find((one) => one.id === id)!);
    const caution = parts[0]!.caution;
    const isNew = !known.has(caution);
    known.add(caution);
    return careOf(parts, isNew, spoken);
  });
}

/** Two actions done together are of one kind: two wires, one tool. */
function careOf(parts: readonly Action[], isNew: boolean, spoken: Spoken): HandCare {
  const { words, actions, map } = spoken;
  const first = parts[0]!;
  const isUndone = parts.every(({ reversible }) => reversible);
  const isBoth = parts.length > 1;
  return {
    how: isBoth ? words.standIns.bothWiresHow(first.effects["firstWire"]! > 0) : first.how,
    caution: cautionText(first.caution, isNew, actions.cautions, words),
    undo: isUndone ? words.plan.reversible : words.plan.irreversible,
    pitch: words.plan.pitch(first.pitch),
    readAgain: words.plan.readAgain(
      againNames(parts, spoken)
        .filter((id) => map.byId.has(id))
        .map((id) => nameOf(id, spoken)),
      parts.some(isClip),
    ),
  };
}

function againNames(parts: readonly Action[], { map }: Spoken): FeatureId[] {
  return [...new Set(parts.flatMap((part) => readingsAfter(map.model, part)))];
}

/** A caution that has no short form is told in full again. */
export function cautionText(
  caution: string,
  isNew: boolean,
  cautions: Readonly<Record<string, string>>,
  { plan }: AdviceWords,
): string {
  const full = cautions[caution] ?? caution;
  return isNew ? full : (plan.shortCautions[caution] ?? full);
}

/** A feature inside a sentence: "tip thickness". */
export function nameOf(id: FeatureId, { map }: Spoken): string {
  return inSentence(map.model.features.find((one) => one.id === id)?.label ?? id);
}
