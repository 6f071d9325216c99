import type { Values } from "../engine/model.js";
import { inSentence } from "./in-sentence.js";
import { likelyCauses } from "./likely-causes.js";
import type { Spoken } from "./stand-in-sentences.js";
import type { Help, Symptom } from "./symptoms.js";

/**
 * What is said about a symptom: what it may come from on this reed, what to do first, what only after.
 *
 * Shape   a symptom, the reed's values, what to say it with → sentences in order.
 */
export function troubleSentences(symptom: Symptom, values: Values, spoken: Spoken): string[] {
  const { trouble } = spoken.words;
  const { first, firstNote, after, afterNote } = symptom;
  const steps = (helps: readonly Help[]): string[] => helps.map((help) => helpText(help, spoken));
  return [
    ...causeSentences(symptom, values, spoken),
    ...(first.length > 0 ? [trouble.first(steps(first))] : []),
    ...(firstNote === undefined ? [] : [firstNote]),
    ...(after.length > 0 ? [trouble.after(steps(after))] : []),
    ...(afterNote === undefined ? [] : [afterNote]),
  ];
}

function causeSentences(symptom: Symptom, values: Values, { map, words }: Spoken): string[] {
  const { trouble } = words;
  const causes = likelyCauses(symptom, map.model, values);
  const labels = new Map([...map.model.features, ...map.model.ratios].map((one) => [one.id, one]));
  const label = (what: string): string => labels.get(what)?.label ?? what;
  const here = causes
    .filter(({ holds }) => holds)
    .map(({ what, is }) => trouble.cause(what, label(what), is === "more"));
  const unknown = causes.filter(({ holds }) => holds === undefined);
  return [
    ...(here.length > 0 ? [trouble.here(here)] : []),
    ...(here.length === 0 && unknown.length < causes.length ? [trouble.notHere] : []),
    ...(unknown.length > 0
      ? [trouble.unmeasured(unknown.map(({ what }) => inSentence(label(what))))]
      : []),
    ...(symptom.otherCauses.length > 0 ? [trouble.also(symptom.otherCauses)] : []),
  ];
}

function helpText({ action: id, amount, upTo }: Help, { map, actions, words, by }: Spoken): string {
  const action = actions.actions.find((one) => one.id === id)!;
  const [feature, effect] = Object.entries(action.effects)[0]!;
  const size = (units: number): string => by(feature, Math.abs(units * effect));
  const gaugeError = map.model.features.find((one) => one.id === feature)?.gaugeError ?? 0;
  const isBelowGauge = Math.abs(amount * effect) < gaugeError * (1 - 1e-9);
  const step = words.plan.step(amount, id, action.label, size(amount), isBelowGauge);
  // What is told in strokes has no number to compare with.
  const isNumbered = step.includes(size(amount));
  return upTo === undefined || !isNumbered ? step : words.trouble.upTo(step, size(upTo));
}
