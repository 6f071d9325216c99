const list = new Intl.ListFormat("en-GB", { type: "conjunction" });

/** What an agreement looks like beside its word: signs that no font lacks. */
const agreementSigns = { yes: "=", no: "≠", partly: "½", silent: "…" };

/** Words of the elements of the panel on lips and opening: English. */
export const lipPanelWords = {
  filledIn: (names: readonly string[]): string =>
    `Not measured, so computed as on the all-round reed: ${list.format(names)}.`,
  cannot:
    "The model cannot take this recipe: a reading is 0 or far outside its range, or the tube has no room inside its walls.",
  cannotOther: (name: string): string =>
    `${name} is left out: its recipe is nothing that the model can take.`,
  together: {
    title: "On the blades together",
    lips: "lips",
    breath: "breath",
    /** All in kPa. */
    value: (sum: string): string => `${sum} kPa.`,
    closes: (pressure: string): string => `From ${pressure} kPa on this reed is closed.`,
    snaps: (pressure: string): string => `At ${pressure} kPa it snaps.`,
    snapsShut: (pressure: string): string => `At ${pressure} kPa this reed snaps shut.`,
  },
  /** What a pressure does now, behind its value: for a screen reader. */
  effect: (closed: number, flow: string): string =>
    closed >= 1
      ? "the reed is closed"
      : `closed by ${Math.round(closed * 100)} % of its height, ${flow} cubic centimetres of air a second`,
  field: (label: string, unit: string): string => `${label}, ${unit}`,
  openingSize: (width: string, height: string): string =>
    `Open now: ${width} wide, ${height} tall.`,
  snapped: "The blades have snapped past the openings that cannot be held.",
  openingLegend: { open: "open", met: "blades lie on each other", rest: "at rest" },
  openingPicture: (closed: string, size: string): string =>
    `The tip opening from the front. ${closed} ${size}`,
  lipsAt: (place: string): string => `Lips ${place} behind the tip`,
  regionPicture: (area: string, place: string): string =>
    `The blade against a lamp, lit where it swings: ${area} mm², up to the lips ${place} behind the tip.`,
  regionNow: (area: string, whole: string): string =>
    `${area} mm² swing now; with nothing pressing it would be ${whole} mm².`,
  flowNow: (flow: string): string => `now ${flow} cm³/s`,
  flowPeak: (flow: string, blow: string): string => `most air ${flow} cm³/s, at ${blow} kPa`,
  flowClosure: (blow: string): string =>
    `closes and beats, from ${blow} kPa on: the blades meet at every swing`,
  flowSnap: (blow: string): string => `snaps at ${blow} kPa`,
  throat: (opening: string, throat: string): string =>
    `Air passes the opening (${opening} mm²), then the throat (${throat} mm² inside): the narrower one counts most.`,
  dialsTitle: "Six numbers, against the all-round reed",
  dialsNote:
    "Under the same lips and breath. A bar to the right is more, to the left less; its ends are half and twice.",
  otherDial: (name: string, value: string): string => `${name}: ${value}`,
  otherMark: (name: string): string => `outlined mark: ${name}`,
  hinges: {
    share: "opening, share of its height, %",
    together: "lips and breath together, kPa",
    held: "can be held",
    unheld: "cannot be held",
    all: "Every opening can be held.",
    part: (share: number): string => `${Math.round(share * 100)} % of all openings can be held.`,
    picture: (hinges: string, holds: string, closure: string): string =>
      `The opening over the pressure of lips and breath, ${hinges}. ${holds} Closed from ${closure} kPa on.`,
  },
  questions: {
    title: "Four questions",
    high: {
      question: "Why does the high register want a small vibrating area?",
      /** mm². */
      proof: (high: string, low: string): string =>
        `On this reed lips for the high register leave ${high} mm² to swing, lips for a soft low entry ${low} mm².`,
    },
    loud: {
      question: "Why is a loud reed open and wide in the throat?",
      /** Changes as "+9 %". */
      proof: (taller: string, wider: string, both: string): string =>
        `Air at the peak, on this reed: with an opening a tenth taller ${taller}, with a throat a tenth wider ${wider}, with both ${both}.`,
    },
    hinges: { question: "What are hinges for?" },
    wire: {
      question: "Why does a round wire firm a reed?",
      proof: (closing: string, resonance: string): string =>
        `On this reed, with a first wire rounder by 0.04: closing pressure ${closing}, resonance of the blade ${resonance}.`,
      arch: (flat: string): string =>
        `At the collar the arch makes this blade ${flat} times as stiff as a flat one of the same cane.`,
    },
  },
  trade: {
    all: "All purposes",
    about:
      "Each row is about more of a feature at this reed; “both”: one number asks for more of it, another for less.",
    caption: "What the trade and the model say of each feature",
    signs: agreementSigns,
    noTable:
      "The model cannot take this recipe a step to either side, so there is nothing to compare.",
    waiting: "The table follows when the recipe rests.",
  },
  assumptions: {
    changed: (count: number): string =>
      count === 0 ? "all at their first values" : count === 1 ? "1 changed" : `${count} changed`,
    first: (value: string): string => `First value ${value}.`,
    resetOne: (label: string): string => `${label}: back to the first value`,
    presets: "The four presets",
    lip: "lips, kPa",
    blow: "breath, kPa",
    place: "place of the lips, mm",
    basis: "where from",
    lipAndPlace: "Lips and place",
    breath: "Breath",
  },
  pinHint:
    "Pin a reed on the bench and pick another: the pinned one lies over this one as an outline.",
  mine: (name: string): string => `Reed: ${name}`,
};
