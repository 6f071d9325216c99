import type { Bench } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";

/** Why a reed that has failed a look before measuring has no place, and what helps first. */
export function unsoundText({ unsound }: Bench, text: Catalogue): string {
  const { looks } = text.measure.sound;
  return text.sentence.unsound(unsound.map((id) => looks[id]!.firstHelp));
}
