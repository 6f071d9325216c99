import { english, type Catalogue } from "./catalogue.js";
import { lipWords } from "./lip-words.js";

/** What a catalogue has besides where lips and breath are shown, and only there. */
interface WithLip {
  readonly lip: typeof lipWords;
}

/** A catalogue with the words of lips and opening. */
export type LipCatalogue = Catalogue & WithLip;

const made = new WeakMap<Catalogue, Catalogue & WithLip>();

/** The catalogue with the words of lips and opening: its own, or English ones; the same object for the same catalogue. */
export function withLip<Text extends Catalogue>(text: Text): Text & WithLip {
  const whole = made.get(text) ?? { lip: lipWords, ...text };
  made.set(text, whole);
  return whole as Text & WithLip;
}

/** English with the words of lips and opening. */
export const lipEnglish: LipCatalogue = withLip(english);
