import { describe, expect, test } from "vitest";
import {
  bassoonActions,
  bassoonModel,
  bassoonQualities,
  compileModel,
  finishingFreedom,
  handStandIns,
  planAdjustments,
  planNotes,
  standIns,
} from "../../src/lib/engine.js";
import { adviceWords } from "../../src/reed/advice-words.js";
import { demoReeds } from "../../src/reed/demo-reeds.js";
import { gainsAt, gainsSentence } from "../../src/reed/gains.js";
import { handCares } from "../../src/reed/hand-care.js";
import { planSentences, stepSentences } from "../../src/reed/plan-sentences.js";
import {
  differenceSentence,
  featureSentence,
  handSentence,
  handsWorthTelling,
  pairSentence,
  pairsWorthTelling,
  requestSentence,
  singlesWorthTelling,
} from "../../src/reed/stand-in-sentences.js";
import { bassoonSymptoms } from "../../src/reed/symptoms.js";
import { nearestTarget, targets } from "../../src/reed/targets.js";
import { troubleSentences } from "../../src/reed/trouble-sentences.js";
import { lengthUnits, type LengthUnit } from "../../src/reed/units.js";
import { planList, spokenIn, standInList } from "./spoken-advice.js";

// Read aloud as a teacher would to a student: the first of each list.
describe("ten stand-in lists", () => {
  test.each([
    {
      reed: "Bittern",
      request: { feature: "bladeLength", change: -0.5, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of a blade shorter by 0.5 mm:",
      hand: "Round both wires by 0.02 each: nearly the same pull; the reed stays 1 percentage point short of soft and low playing. It also opens the tip.",
      feature:
        "A second wire rounder by 0.04: nearly the same pull; the reed stays 1 percentage point short of full volume.",
      pair: "A first wire rounder by 0.02 together with a tip narrower by 0.2 mm.",
      difference:
        "A first wire rounder by 0.03 would do much the same by itself. But a hand moves more than one feature: “Round the first wire” also opens the tip, and that pulls elsewhere." as
          | string
          | undefined,
    },
    {
      reed: "Bittern",
      request: { feature: "spine", change: 0.04, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of a spine thicker by 0.04 mm:",
      hand: "Round both wires by 0.03 each: nearly the same pull; the reed stays 2 percentage points short of full volume. It also opens the tip.",
      feature:
        "A first wire rounder by 0.06: nearly the same pull; the reed stays 1 percentage point short of full volume.",
      pair: "A first wire rounder by 0.06 together with an opening wider by 0.2 mm.",
      difference:
        "A first wire rounder by 0.06 would do much the same by itself. But a hand moves more than one feature: “Round the first wire” also opens the tip, and that pulls elsewhere." as
          | string
          | undefined,
    },
    {
      reed: "Heron",
      request: { feature: "tip", change: -0.02, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of a tip thinner by 0.02 mm:",
      hand: "Flatten the first wire by 0.04: nearly the same pull; the reed ends with 1 percentage point too much of soft and low playing. It also closes the tip.",
      feature:
        "A heart thinner by 0.02 mm: much the same pull; the reed stays 2 percentage points short of the high register.",
      pair: "A spine thinner by 0.02 mm together with an opening lower by 0.10 mm.",
      difference: undefined as string | undefined,
    },
    {
      reed: "Heron",
      request: { feature: "tipWidth", change: 0.6, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of a tip wider by 0.6 mm:",
      hand: "Flatten both wires by 0.02 each: much the same pull; the reed stays 2 percentage points short of full volume. It also closes the tip.",
      feature:
        "A profile steeper by 0.07 mm: nearly the same pull; nothing to speak of is left over.",
      pair: "A first wire flatter by 0.04 together with an opening taller by 0.08 mm.",
      difference:
        "A second wire flatter by 0.05 would do much the same by itself. But a hand moves more than one feature: “Flatten the second wire” also opens the tip, and that pulls elsewhere." as
          | string
          | undefined,
    },
    {
      reed: "Plover",
      request: { feature: "throatWidth", change: -0.4, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of a throat narrower by 0.4 mm:",
      hand: "Thin the rails by 0.03 mm, about three or four light strokes along each of the four rails: nearly the same pull; the reed ends with 1 percentage point too much of soft and low playing.",
      feature:
        "An opening narrower by 1.3 mm: nearly the same pull; nothing to speak of is left over.",
      pair: "Rails thinner by 0.03 mm together with a tip narrower by 0.1 mm.",
      difference: undefined as string | undefined,
    },
    {
      reed: "Snipe",
      request: { feature: "heart", change: -0.04, mode: "offset" } as const,
      unit: "mm" as const,
      title: "To make up for a heart thinner by 0.04 mm:",
      hand: "Clip the tip by 0.3 mm, in three cuts: nearly the same pull; the reed stays 2 percentage points short of the high register. It also brings thicker cane to the tip and the heart.",
      feature:
        "A first wire rounder by 0.09: nearly the same pull; the reed stays 2 percentage points short of full volume.",
      pair: "A first wire rounder by 0.08 together with an opening taller by 0.07 mm.",
      difference: undefined as string | undefined,
    },
    {
      reed: "Snipe",
      request: { feature: "openingHeight", change: 0.3, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of an opening taller by 0.30 mm:",
      hand: undefined as string | undefined, // what clips or squeezes it open would be the change itself
      feature:
        "An opening wider by 2.3 mm: nearly the same pull; the reed ends with 2 percentage points too much of soft and low playing.",
      pair: "An opening wider by 2.2 mm together with a first wire rounder by 0.02.",
      difference: undefined as string | undefined,
    },
    {
      reed: "Curlew",
      request: { feature: "rails", change: -0.04, mode: "instead" } as const,
      unit: "thou" as const,
      title: "Instead of rails thinner by 1.6 thou:",
      hand: "Thin the tip by 0.8 thou, about two or three light strokes on each of the four quarters: much the same pull; the reed stays 4 percentage points short of the high register.",
      feature:
        "An opening lower by 7.9 thou: nearly the same pull; the reed stays 1 percentage point short of the high register.",
      pair: "An opening lower by 8.0 thou together with a blade shorter by 4.2 thou.",
      difference: undefined as string | undefined,
    },
    {
      reed: "Curlew",
      request: { feature: "hinging", change: 0.3, mode: "instead" } as const,
      unit: "mm" as const,
      title: "Instead of hinging stronger by 0.30:",
      hand: "Thin the channels, three or four light strokes in each of the four: nearly the same pull; the reed stays 1 percentage point short of the high register. It also thins the rails and the spine.",
      feature:
        "An opening narrower by 1.2 mm: nearly the same pull; nothing to speak of is left over.",
      pair: "An opening lower by 0.15 mm together with a tip narrower by 0.1 mm.",
      difference: undefined as string | undefined,
    },
    {
      reed: "Teal",
      request: { feature: "bladeLength", change: -0.3, mode: "offset" } as const,
      unit: "in" as const,
      title: "To make up for a blade shorter by 0.0118 in:",
      hand: "Flatten both wires by 0.01 each: nearly the same pull; nothing to speak of is left over. It also closes the tip.",
      feature:
        "A second wire flatter by 0.02: nearly the same pull; nothing to speak of is left over.",
      pair: "A first wire flatter by 0.02 together with an opening wider by 0.0041 in.",
      difference:
        "A first wire flatter by 0.02 would do much the same by itself. But a hand moves more than one feature: “Flatten the first wire” also closes the tip, and that pulls elsewhere." as
          | string
          | undefined,
    },
  ])("$reed: $title", ({ reed, request, unit, title, hand, feature, pair, difference }) => {
    const list = standInList(reed, request, unit);
    expect(list.title).toBe(title);
    expect(list.byHand[0]).toBe(hand);
    expect(list.features[0]).toBe(feature);
    expect(list.pairs[0]).toBe(pair);
    expect(list.difference[0]).toBe(difference);
  });

  test("two changes of the opening are one opening", () => {
    const request = { feature: "rails", change: -0.04, mode: "instead" } as const;
    expect(standInList("Curlew", request, "thou").pairs[1]).toBe(
      "An opening narrower by 26.0 thou and lower by 4.7 thou.",
    );
  });

  test("what finishing bars is told last, with the reason", () => {
    const { features } = standInList("Snipe", {
      feature: "openingHeight",
      change: 0.3,
      mode: "instead",
    });
    expect(features.at(-1)).toBe(
      "A tip thicker by 0.03 mm: much the same pull; the reed ends with 6 percentage points too much of the high register. This reed does not allow it: cane can be taken away, not put back.",
    );
  });

  test("what one easy sitting does not allow in full says how much it does", () => {
    const { byHand } = standInList("Snipe", { feature: "heart", change: -0.04, mode: "offset" });
    expect(byHand[1]).toBe(
      "Round the first wire by 0.05: nearly the same pull; the reed stays 3 percentage points short of the high register. It also opens the tip. One easy sitting allows 80% of it.",
    );
  });
});

describe("twelve plans", () => {
  test.each([
    {
      reed: "Bittern",
      part: "everyday",
      unit: "mm" as const,
      before:
        "As near as it gets today: keep this reed for a soft low second part, and take another for everyday rehearsal. It would take more than is sensible in one sitting. If you try all the same, 7% of the way to its zone is still left after four moves. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Round the first wire by 0.04.",
        "Thin the wings by 0.03 mm, about three or four light strokes on each of the four wings.",
        "Clip the tip by 0.3 mm, in three cuts.",
        "Narrow the blade by 0.3 mm, half of it on each side.",
      ] as string[],
    },
    {
      reed: "Bittern",
      part: "softLow",
      unit: "mm" as const,
      before:
        "Two moves bring it into the zone for a soft low second part. The readings are less sure than this plan is long: measure again first, and play before you believe it. The rules of your workshop or school come first.",
      deeds: [
        "Round the first wire by 0.02.",
        "Round the second wire by one gentle squeeze, less than you can measure.",
      ] as string[],
    },
    {
      reed: "Bittern",
      part: "continuo",
      unit: "mm" as const,
      before:
        "Three moves bring it into the zone for chamber continuo. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Round the first wire by 0.04.",
        "Round the second wire by 0.03.",
        "Clip the tip once, by 0.1 mm.",
      ] as string[],
    },
    {
      reed: "Heron",
      part: "audition",
      unit: "mm" as const,
      before:
        "Four moves bring it into the zone for mixed excerpts. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Flatten the first wire by 0.04.",
        "Flatten the second wire by 0.04.",
        "Thin the spine by 0.02 mm, about two or three light strokes on each blade.",
        "Soften the hinges by two strokes, press and look after each.",
      ] as string[],
    },
    {
      reed: "Heron",
      part: "softLow",
      unit: "mm" as const,
      before:
        "As near as it gets today: keep this reed for an exposed high solo, and take another for a soft low second part. It would take more than is sensible in one sitting. If you try all the same, 52% of the way to its zone is still left after four moves. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Flatten the first wire by 0.04.",
        "Flatten the second wire by 0.04.",
        "Thin the tip by 0.02 mm, about two or three light strokes on each of the four quarters.",
        "Thin the spine by 0.02 mm, about two or three light strokes on each blade.",
      ] as string[],
    },
    {
      reed: "Plover",
      part: "everyday",
      unit: "thou" as const,
      before:
        "One move brings it into the zone for everyday rehearsal. The readings are less sure than this plan is long: measure again first, and play before you believe it. The rules of your workshop or school come first.",
      deeds: ["Round the second wire by 0.04."] as string[],
    },
    {
      reed: "Plover",
      part: "continuo",
      unit: "mm" as const,
      before:
        "Two moves bring it into the zone for chamber continuo. The readings are less sure than this plan is long: measure again first, and play before you believe it. The rules of your workshop or school come first.",
      deeds: [
        "Flatten the first wire by 0.04.",
        "Round the second wire by one gentle squeeze, less than you can measure.",
      ] as string[],
    },
    {
      reed: "Snipe",
      part: "softLow",
      unit: "mm" as const,
      before:
        "As near as it gets today: it lies nearer to a soft low second part than to any other part, but not in its zone. It would take more than is sensible in one sitting. If you try all the same, 3% of the way to its zone is still left after four moves. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Round the first wire by 0.04.",
        "Flatten the second wire by 0.04.",
        "Soften the hinges by two strokes, press and look after each.",
        "Clip the tip by 0.3 mm, in three cuts.",
      ] as string[],
    },
    {
      reed: "Curlew",
      part: "everyday",
      unit: "mm" as const,
      before:
        "As near as it gets today: take another reed for everyday rehearsal. This one suits no part yet; it lies nearest to a concerto with full orchestra. The few moves of one sitting do not bring it there; a second one, after playing and new readings, may. If you try all the same, 23% of the way to its zone is still left after four moves. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Thin the tip by 0.02 mm, about two or three light strokes on each of the four quarters.",
        "Dust the whole blade, two light passes over each quarter.",
        "Thin the channels, three or four light strokes in each of the four.",
        "Thin the rails by 0.03 mm, about three or four light strokes along each of the four rails.",
      ] as string[],
    },
    {
      reed: "Teal",
      part: "everyday",
      unit: "mm" as const,
      before: "It lies in the zone for everyday rehearsal already: leave it alone, and play.",
      deeds: [] as string[],
    },
    {
      reed: "Teal",
      part: "highSolo",
      unit: "in" as const,
      before:
        "Three moves bring it into the zone for an exposed high solo. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: [
        "Round the second wire by 0.04.",
        "Thin the wings by 0.0012 in, about three or four light strokes on each of the four wings.",
        "Thin the tip corners, two short strokes off each of the four.",
      ] as string[],
    },
    {
      reed: "Teal",
      part: "concerto",
      unit: "mm" as const,
      before:
        "Two moves bring it into the zone for a concerto with full orchestra. The readings are less sure than this plan is long: measure again first, and play before you believe it. Has it been played fewer than three times? Then only wires and dusting today; scraping and clipping wait a day. The rules of your workshop or school come first.",
      deeds: ["Round the first wire by 0.03.", "Clip the tip once, by 0.1 mm."] as string[],
    },
  ])("$reed for $part", ({ reed, part, unit, before, deeds }) => {
    const plan = planList(reed, part, unit);
    expect(plan.before.join(" ")).toBe(before);
    expect(plan.steps.map(({ deed }) => deed)).toEqual(deeds);
  });

  test("a step with everything that belongs to it", () => {
    const { steps } = planList("Bittern", "continuo");
    expect(steps[1]).toEqual({
      deed: "Round the second wire by 0.03.",
      how: "Squeeze it from the sides; the tip closes a little, corners first.",
      until: "Stop when its height divided by its width reads 0.93.",
      undo: "It can be undone.",
      caution: "Pliers: soaked, mandrel in, slowly; stop at the first creak.",
      pitch: "The pitch rises a little.",
      readAgain:
        "Then read again: opening height, opening width, first-wire roundness and second-wire roundness.",
      play: "Play it again before the next step.",
    });
    expect(steps[2]).toMatchObject({
      byEar: "This is less than the calliper can tell: trust the ear.",
      undo: "It cannot be undone.",
      caution: bassoonActions.cautions["clipper"],
      pitch: "The pitch rises clearly.",
      play: "Play it. If it does what the part asks, stop here.",
    });
    expect(steps[2]?.readAgain).toMatch(/^Then measure again, for every gauge place has moved: /);
  });

  test("cautions come in full once, then in short; the rules of the place come first", () => {
    const { before, steps } = planList("Heron", "audition");
    expect(before.at(-1)).toBe("The rules of your workshop or school come first.");
    expect(steps[0]?.caution).toBe(bassoonActions.cautions["pliers"]);
    expect(steps[1]?.caution).toBe(adviceWords.plan.shortCautions["pliers"]);
    expect(steps[2]?.caution).toBe(bassoonActions.cautions["knife"]);
    expect(steps[3]?.caution).toBe(adviceWords.plan.shortCautions["knife"]);
  });

  test("a tip that was clipped is read before it is thinned", () => {
    const steps = (["clipTip", "thinTip"] as const).map((action) => ({
      action,
      amount: 1,
      reversible: false,
    }));
    const { readings } = demoReeds[5]!;
    const map = compileModel(bassoonModel);
    const said = stepSentences(planNotes(map, readings, bassoonActions, { steps }), spokenIn("mm"));
    expect(said.map(({ readFirst }) => readFirst)).toEqual([
      undefined,
      "Before it read again: tip thickness; the clip has brought thicker cane there.",
    ]);
  });
});

/** Every sentence that can come up among the demo reeds. */
function everySentence(): string[] {
  const map = compileModel(bassoonModel);
  return demoReeds.flatMap(({ readings }) =>
    lengthUnits.flatMap((unit) => {
      const spoken = spokenIn(unit);
      const freedom = finishingFreedom(bassoonModel, readings);
      const lists = bassoonModel.features.flatMap(({ id, max, min }) =>
        (["instead", "offset"] as const).flatMap((mode) =>
          [0.1, -0.1].flatMap((part) => {
            const request = { feature: id, change: part * (max - min), mode };
            const { singles, pairs } = standIns(map, readings, request, freedom);
            const hands = handStandIns(map, readings, request, bassoonActions, freedom);
            return [
              requestSentence(request, spoken).replace(/:$/, "."),
              ...singlesWorthTelling(singles, spoken).map((one) => featureSentence(one, spoken)),
              ...pairsWorthTelling(pairs, spoken).map((one) => pairSentence(one, spoken)),
              ...handsWorthTelling(hands).map((one) => handSentence(one, spoken)),
              ...hands.flatMap((one) => differenceSentence(one, singles, spoken) ?? []),
            ];
          }),
        ),
      );
      const plans = targets.flatMap((target) => {
        const found = planAdjustments(map, readings, target.blend, bassoonActions);
        return found.plans.flatMap((plan) => {
          const notes = planNotes(map, readings, bassoonActions, plan);
          return [
            ...planSentences(found, plan, notes, target.blend, target, adviceWords),
            ...stepSentences(notes, spoken).flatMap((step) => Object.values(step) as string[]),
          ];
        });
      });
      return [...lists, ...plans];
    }),
  );
}

describe("instructions that a hand can follow", () => {
  const plans = demoReeds.flatMap(({ reed }) => targets.map(({ id }) => planList(reed, id)));
  const steps = plans.flatMap((plan) => plan.steps);

  test("a knife is told how many strokes and where, a wire at what reading to stop", () => {
    const scrapes = steps.filter(({ deed }) => deed.startsWith("Thin "));
    expect(scrapes.length).toBeGreaterThan(10);
    for (const { deed } of scrapes) expect(deed).toMatch(/strokes (on|off|in|along|across) /);
    const wires = steps.filter(({ deed }) => /wire by 0/.test(deed));
    expect(wires.length).toBeGreaterThan(10);
    for (const { until } of wires)
      expect(until).toMatch(/^Stop when its height divided by its width reads [01]\.\d\d\.$/);
  });

  test("nobody is sent to a gauge for what no gauge reads", () => {
    const hinges = steps.filter(({ deed }) => deed.includes("hinges"));
    expect(hinges.length).toBeGreaterThan(0);
    for (const { until, byEar } of hinges) {
      expect(until).toBeUndefined();
      expect(byEar).toBe("No gauge reads this: press, look, and listen.");
    }
  });

  test("a plan that scrapes or clips asks whether the reed has settled, one of wires alone does not", () => {
    for (const plan of plans) {
      const isScrape = plan.steps.some(
        ({ deed, undo }) => undo === "It cannot be undone." && !deed.startsWith("Dust"),
      );
      expect(plan.before.join(" ").includes("fewer than three times")).toBe(isScrape);
    }
  });

  test("the last of the help for a trouble speaks of the trouble, not of a part", () => {
    const notes = planNotes(compileModel(bassoonModel), demoReeds[0]!.readings, bassoonActions, {
      steps: [{ action: "roundFirstWire", amount: 2, reversible: true }],
    });
    expect(stepSentences(notes, spokenIn("mm"), "help")[0]!.play).toBe(
      "Play it. If the trouble is gone, stop here.",
    );
  });
});

describe("hands are told the same as beside the steps of a plan", () => {
  test("each caution in full once, then in short; whether it can be undone", () => {
    const cares = handCares(
      [["roundFirstWire", "roundSecondWire"], ["clipTip"], ["flattenFirstWire"]],
      spokenIn("mm"),
    );
    expect(cares.map(({ caution }) => caution)).toEqual([
      bassoonActions.cautions["pliers"],
      bassoonActions.cautions["clipper"],
      adviceWords.plan.shortCautions["pliers"],
    ]);
    expect(cares.map(({ undo }) => undo)).toEqual([
      "It can be undone.",
      "It cannot be undone.",
      "It can be undone.",
    ]);
    expect(cares[0]!.how).toBe(
      "Reed soaked, mandrel in: first the first wire, then the second, each squeezed slowly from the sides.",
    );
    expect(cares[1]!.readAgain).toMatch(/^Then measure again, for every gauge place has moved/);
    const [again] = handCares([["clipTip"]], spokenIn("mm"), ["clipper"]);
    expect(again!.caution).toBe(adviceWords.plan.shortCautions["clipper"]);
  });
});

describe("every sentence that can come up", () => {
  const all = [...new Set(everySentence())];

  test("is whole: a capital or digit first, a full stop last, nothing left blank", () => {
    expect(all.length).toBeGreaterThan(1000);
    const wrong = all.filter(
      (one) =>
        !/^[A-Z0-9]/.test(one) ||
        !/[.]$/.test(one) ||
        /undefined|NaN|null|\[object|\s\s|\.\.|,,|;\.|:\.| \.| ,/.test(one),
    );
    expect(wrong).toEqual([]);
  });

  test("tells no change of nothing, and no share of 0 %", () => {
    expect(all.filter((one) => /\bby 0(\.0+)?( mm| in| thou)?\b(?!\.)/.test(one))).toEqual([]);
    expect(all.filter((one) => /\b0%/.test(one))).toEqual([]);
  });

  test("no two colons in one sentence", () => {
    const twice = all.filter((one) => one.split(". ").some((part) => part.split(":").length > 2));
    expect(twice).toEqual([]);
  });
});

describe("nothing of the shipped data is without words", () => {
  test("every action is told in its own way, with and without a number", () => {
    for (const { id, label, unit } of bassoonActions.actions) {
      const said = adviceWords.plan.step(2, id, label, "0.02 mm", false);
      expect(said.startsWith(label), `${label}, ${unit}`).toBe(true);
      expect(adviceWords.plan.step(1, id, label, "0.01 mm", true)).not.toMatch(/undefined/);
    }
  });

  test("every feature has its comparatives, every by-effect its verb", () => {
    for (const { id, label } of bassoonModel.features) {
      expect(adviceWords.standIns.change(id, label, true, "1")).not.toContain("more ");
      expect(adviceWords.trouble.cause(id, label, false)).not.toContain("less ");
    }
    for (const { effects } of bassoonActions.actions) {
      const [, ...others] = Object.keys(effects);
      for (const id of others)
        expect(adviceWords.standIns.byEffect(id, "X", true).verb).not.toBe("raises");
    }
  });

  test("every caution has a short form, every effect on the pitch a sentence", () => {
    for (const caution of Object.keys(bassoonActions.cautions))
      expect(adviceWords.plan.shortCautions).toHaveProperty(caution);
    for (const { pitch } of bassoonActions.actions)
      expect(adviceWords.plan.pitch(pitch)).toMatch(/^The pitch /);
  });

  test("every part to play, every quality, every cause", () => {
    for (const { id } of targets) expect(adviceWords.plan.target(id, "none")).not.toBe("none");
    for (const { id } of bassoonQualities.qualities)
      expect(adviceWords.qualities.name(id, "none")).not.toBe("none");
    for (const { what } of bassoonSymptoms.symptoms.flatMap(({ causes }) => causes))
      expect(adviceWords.trouble.cause(what, "none", true)).not.toContain("none");
  });

  test("what a teacher adds is told by its label", () => {
    expect(adviceWords.standIns.change("bore", "Bore", false, "0.2 mm")).toBe(
      "less bore, by 0.2 mm",
    );
    expect(adviceWords.plan.step(2, "sandBore", "Sand the bore", "0.2 mm", false)).toBe(
      "Sand the bore by 0.2 mm",
    );
    expect(adviceWords.plan.step(2, "sandBore", "Sand the bore", "0.2 mm", true)).toBe(
      "Sand the bore, two or three light strokes",
    );
    expect(adviceWords.plan.pitch("wild")).toBe("Effect on the pitch: wild.");
  });
});

describe("gains and costs", () => {
  const said = (blend: readonly [number, number, number]): string =>
    gainsSentence(gainsAt(bassoonQualities, blend), adviceWords);

  test("of the corner reeds and of the all-round reed", () => {
    expect(said([1, 0, 0])).toBe(
      "Against the all-round reed it gains in high entries, and pays with soft low entries, even tone and steady pitch.",
    );
    expect(said([0, 1, 0])).toBe(
      "Against the all-round reed it gains in how softly it plays, soft low entries and ease, and pays with steady pitch, high entries and even tone.",
    );
    expect(said([0, 0, 1])).toBe(
      "Against the all-round reed it gains in how loudly it plays, and pays with range under the lip, how softly it plays and steady pitch.",
    );
    expect(said([1 / 3, 1 / 3, 1 / 3])).toBe("It is much like the all-round reed in everything.");
  });

  test("against another place they are opposite when the places are swapped", () => {
    const [a, b] = [targets[1]!.blend, targets[2]!.blend];
    const there = gainsAt(bassoonQualities, a, b);
    gainsAt(bassoonQualities, b, a).forEach(({ difference }, i) =>
      expect(difference).toBeCloseTo(-there[i]!.difference, 12),
    );
  });

  test.each([
    [0.1, "the same"],
    [0.5, "a little better"],
    [-1.5, "worse"],
    [3, "much better"],
  ])("a difference of %d is told as %s", (difference, words) => {
    expect(adviceWords.qualities.degree(difference)).toBe(words);
  });
});

describe("trouble", () => {
  const said = (symptom: string, reed: string, unit: LengthUnit = "mm"): string[] =>
    troubleSentences(
      bassoonSymptoms.symptoms.find(({ id }) => id === symptom)!,
      demoReeds.find((one) => one.reed === reed)!.readings,
      spokenIn(unit),
    );

  test("Bittern's high notes sag", () => {
    expect(said("highSags", "Bittern")).toEqual([
      "On this reed it may come from a flat first wire, a flat second wire, a thin spine, a thin heart, a long blade or a wide tip.",
      "First, for it can be undone: round the first wire by 0.02; play; round the second wire by 0.02.",
      "Only if that does not help, for it cannot be undone: clip the tip once, by 0.1 mm; play; narrow the blade by 0.1 mm, half of it on each side.",
    ]);
  });

  test("Snipe is sharp, and nothing shows why; amounts up to, and in strokes", () => {
    expect(said("allSharp", "Snipe", "thou")).toEqual([
      "Nothing of what usually causes it shows in the readings. Check that the reed is sound, and read again.",
      "First, for it can be undone: flatten the first wire by 0.02.",
      "Pushing the reed less far on is no cure.",
      "Only if that does not help, for it cannot be undone: thin the spine by 0.4 thou, about one or two light strokes on each blade, 0.8 thou at most; play; thin the back, one or two light strokes across its full width on each blade.",
      "Spine or back, not both.",
    ]);
  });

  test("Teal chirps: that is not a place in the triangle", () => {
    expect(said("chirps", "Teal")).toEqual([
      "Look, too, whether wings or rails are uneven, it leaks or a wire is loose.",
      "The soundness check first: this is not a place in the triangle.",
      "Then even one quarter by 0.01 to 0.02 mm.",
    ]);
  });

  test("what was not measured is named", () => {
    const [symptom] = bassoonSymptoms.symptoms;
    const [first] = troubleSentences(symptom!, { bladeLength: 28.5 }, spokenIn("mm"));
    expect(first).toBe("On this reed it may come from a long blade.");
    expect(troubleSentences(symptom!, {}, spokenIn("mm"))[0]).toBe(
      "Not measured: blade length, heart thickness, spine thickness, first-wire roundness, second-wire roundness and tip width.",
    );
  });

  test.each(bassoonSymptoms.symptoms)("$symptom: every sentence is whole", ({ id }) => {
    for (const { reed } of demoReeds) {
      for (const one of said(id, reed))
        expect(one).toMatch(/^[A-Z](?!.*(undefined|NaN|\s\s|\.\.| ;)).*\.$/);
    }
  });
});

test("the nearest part is the nearest in shares", () => {
  expect(nearestTarget([0.34, 0.33, 0.33]).id).toBe("everyday");
  expect(nearestTarget([0.1, 0.1, 0.8]).id).toBe("lowTutti");
});
