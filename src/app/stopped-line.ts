import type { ReedModel } from "../engine/model.js";
import type { Bench } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";
import { inSentence } from "../reed/in-sentence.js";
import type { BenchView } from "./bench-view.js";

/** What keeps the point from where it was asked to go, in one line; empty when it got there. */
export function stoppedLine(
  model: ReedModel,
  { locked }: Bench,
  { stoppedBy }: BenchView,
  { reached: words }: Catalogue,
): string {
  if (stoppedBy.length === 0) return "";
  const name = (id: string): string =>
    inSentence(model.features.find((one) => one.id === id)!.label);
  const held = stoppedBy.filter((id) => locked.includes(id)).map(name);
  const limits = stoppedBy.filter((id) => !locked.includes(id)).map(name);
  const short = limits.length > 4 ? [...limits.slice(0, 3), words.more(limits.length - 3)] : limits;
  return words.stopped(short, held);
}
