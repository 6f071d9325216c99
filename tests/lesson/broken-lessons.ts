import { brokenLesson, fence, lessonOf } from "./lesson-texts.js";

/** A broken lesson file and every sentence it is told, without the name of the file. */
export interface BrokenLesson {
  readonly what: string;
  readonly text: string;
  readonly messages: readonly string[];
}

const ask = "ask: Where?";

const features =
  "bladeLength, tipWidth, throatWidth, firstWire, secondWire, heart, wings, spine, rails, tip, backRise, hinging, openingHeight, openingWidth";

const actions =
  "roundFirstWire, flattenFirstWire, roundSecondWire, flattenSecondWire, thinTip, thinTipCorners, thinWings, thinChannels, thinHeart, thinRails, thinSpine, thinBack, dustBlade, cutHinges, softenHinges, clipTip, narrowBlade";

/** Broken files that are read. */
export const broken: readonly BrokenLesson[] = [
  {
    what: "nothing",
    text: "",
    messages: [
      "line 1, column 1: the file does not begin with front matter; allowed is a line of three hyphens, then the lesson's title and minutes.",
      "line 1, column 1: there is no step; allowed is at least one heading that begins with ##.",
    ],
  },
  {
    what: "no front matter",
    text: "## Step\n" + fence("predict", ask, "change: { tip: 0.1 }"),
    messages: [
      "line 1, column 1: the file does not begin with front matter; allowed is a line of three hyphens, then the lesson's title and minutes.",
    ],
  },
  {
    what: "front matter that does not end",
    text: "---\ntitle: A\n## Step",
    messages: [
      "line 1, column 1: the front matter does not end; allowed is a line of three hyphens behind its last field.",
    ],
  },
  {
    what: "a colon inside a text",
    text: brokenLesson("ask: The blade becomes", "ask: Look: the blade becomes"),
    messages: [
      'line 13, column 6: this is no YAML: there is a colon inside a text; a text with a colon stands between quotation marks, as in ask: "Two reeds: which one?"; allowed is lines such as “ask: Where does the point go?”.',
    ],
  },
  {
    what: "a block that does not end before the next one",
    text: brokenLesson("change: { bladeLength: 26.2 mm }\n```", "change: { bladeLength: 26.2 mm }"),
    messages: [
      "line 12, column 1: the block “predict” does not end; allowed is a line of three backticks behind its last field.",
    ],
  },
  {
    what: "no title",
    text: brokenLesson("title: Two moves\n", ""),
    messages: [
      "line 2, column 1: the front matter: title is missing; allowed is a text that is not blank.",
    ],
  },
  {
    what: "a blank title",
    text: brokenLesson("Two moves", '" "'),
    messages: [
      'line 2, column 8: the front matter: title is " "; allowed is a text that is not blank.',
    ],
  },
  {
    what: "minutes in words",
    text: brokenLesson("minutes: 4", "minutes: four"),
    messages: [
      'line 3, column 10: the front matter: minutes is "four"; allowed is a whole number from 1 to 60.',
    ],
  },
  {
    what: "half a minute",
    text: brokenLesson("minutes: 4", "minutes: 0.5"),
    messages: [
      "line 3, column 10: the front matter: minutes is 0.5; allowed is a whole number from 1 to 60.",
    ],
  },
  {
    what: "an unknown field",
    text: brokenLesson("minutes: 4", "minuets: 4"),
    messages: [
      "line 2, column 1: the front matter: minutes is missing; allowed is a whole number from 1 to 60.",
      "line 3, column 1: “minuets” is no field of the front matter; allowed is title, minutes, goal, features, reed, start. Did you mean “minutes”?",
    ],
  },
  {
    what: "front matter that is a list",
    text: "---\n- a\n---\n## Step\ntext",
    messages: [
      'line 2, column 1: the front matter is ["a"]; allowed is the lesson\'s title, its minutes and what else it starts with, a line each.',
    ],
  },
  {
    what: "empty front matter",
    text: "---\n---\n## Step\ntext",
    messages: [
      "line 2, column 1: the front matter is empty; allowed is the lesson's title, its minutes and what else it starts with, a line each.",
    ],
  },
  {
    what: "a key twice",
    text: brokenLesson("minutes: 4", "minutes: 4\nminutes: 5"),
    messages: [
      "line 4, column 1: this is no YAML: Map keys must be unique; allowed is lines such as “ask: Where does the point go?”.",
    ],
  },
  {
    what: "bad YAML",
    text: brokenLesson("{ bladeLength: 27.2 }", "{ bladeLength: 27.2"),
    messages: [
      "line 5, column 27: this is no YAML: Flow map in block collection must be sufficiently indented and end with a }; allowed is lines such as “ask: Where does the point go?”.",
    ],
  },
  {
    what: "an anchor that is used",
    text: brokenLesson("{ bladeLength: 27.2 }", "{ bladeLength: &a 27.2, tipWidth: *a }"),
    messages: [
      "line 5, column 42: this is no YAML: *a stands for another value; allowed is lines such as “ask: Where does the point go?”.",
    ],
  },
  {
    what: "a feature that is none",
    text: brokenLesson("tipWidth,", "tipwith,"),
    messages: [
      `line 4, column 25: “tipwith” is no feature; allowed is ${features}. Did you mean “tipWidth”?`,
    ],
  },
  {
    what: "a feature twice",
    text: brokenLesson("tipWidth,", "bladeLength,"),
    messages: ["line 4, column 25: “bladeLength” stands here twice; allowed is each name once."],
  },
  {
    what: "features that do not separate",
    text: brokenLesson("[bladeLength, tipWidth, throatWidth, firstWire]", "[bladeLength]"),
    messages: [
      `line 4, column 11: features bladeLength cannot separate the three purposes (condition number infinite); allowed is other or more features of the model: ${features}.`,
    ],
  },
  {
    what: "a demo reed that is none",
    text: brokenLesson("start:", "reed: Herron\nstart:"),
    messages: [
      "line 5, column 7: “Herron” is no demo reed; allowed is Bittern, Heron, Plover, Snipe, Curlew, Teal. Did you mean “Heron”?",
    ],
  },
  {
    what: "a start out of range",
    text: brokenLesson("27.2 }", "2.72 }"),
    messages: ["line 5, column 23: bladeLength is 2.72 mm; allowed is its range, 24.5 to 30.5 mm."],
  },
  {
    what: "a start in inches that is out of range",
    text: brokenLesson("27.2 }", "27.2 in }"),
    messages: [
      "line 5, column 23: bladeLength is 690.88 mm; allowed is its range, 24.5 to 30.5 mm.",
    ],
  },
  {
    what: "a start in no unit",
    text: brokenLesson("27.2 }", "27.2 cm }"),
    messages: [
      "line 5, column 23: bladeLength is “27.2 cm”; allowed is a number, or a number with mm, in or thou.",
    ],
  },
  {
    what: "text before the first step",
    text: brokenLesson("## One change", "Hello.\n\n## One change"),
    messages: [
      "line 8, column 1: “Hello.” stands before the first step; allowed is nothing before the first heading with ##.",
    ],
  },
  {
    what: "a heading of rank one",
    text: brokenLesson("## One change", "## One change\n\n# Big"),
    messages: [
      "line 10, column 1: “# Big” is a heading of another rank; allowed is ## for a step; the lesson's own title stands in the front matter.",
    ],
  },
  {
    what: "a step without a title",
    text: brokenLesson("## Hands", "##"),
    messages: ["line 26, column 1: the step has no title; allowed is a title behind ##."],
  },
  {
    what: "a file without end",
    text: brokenLesson("A blade", "A blade ".repeat(30_000)),
    messages: ["line 1, column 1: the file has 240609 characters; allowed is at most 200000."],
  },
  {
    what: "lists in lists in lists",
    text: brokenLesson("A blade", "- ".repeat(5000)),
    messages: [
      "line 10, column 1: “- - - - - - - - - - - - - - - - - - - - - - - - - - - - - -…” is a list or quote within too many others; allowed is at most 20 on one line.",
    ],
  },
  {
    what: "brackets in brackets in brackets",
    text: lessonOf(fence("show", `values: ${"[".repeat(20_000)}`)),
    messages: [
      "line 10, column 1: this is no YAML: it is nested too deeply; allowed is lines such as “ask: Where does the point go?”.",
    ],
  },
  {
    what: "no step",
    text: brokenLesson("## One change", "").replace("## Hands", ""),
    messages: [
      "line 7, column 1: there is no step; allowed is at least one heading that begins with ##.",
      "line 10, column 1: “A blade is a *spring*. Look at [the model](https://example.…” stands before the first step; allowed is nothing before the first heading with ##.",
      "line 24, column 1: nothing ends here; allowed is ::: only behind :::notes.",
    ],
  },
  {
    what: "an unknown block",
    text: brokenLesson("```predict", "```predcit"),
    messages: [
      "line 12, column 1: “predcit” is no block; allowed is show, predict, aim, choose, order, read, stand-in, claim. Did you mean “predict”?",
    ],
  },
  {
    what: "a block that does not end",
    text: lessonOf("```predict\nask: Where?"),
    messages: [
      "line 9, column 1: the block “predict” does not end; allowed is a line of three backticks behind its last field.",
    ],
  },
  {
    what: "a block in a list",
    text: lessonOf(
      "- item\n\n  ```show\n  caption: x\n  ```\n" + fence("predict", ask, "change: { tip: 0.1 }"),
    ),
    messages: [
      "line 11, column 1: the block “show” stands inside a list, a quote or notes; allowed is a block at the beginning of a line of the step itself.",
    ],
  },
  {
    what: "a section that is none",
    text: brokenLesson(":::notes", ":::note"),
    messages: [
      "line 22, column 1: “note” is no section; allowed is :::notes and, behind it, :::. Did you mean “notes”?",
      "line 24, column 1: nothing ends here; allowed is ::: only behind :::notes.",
    ],
  },
  {
    what: "notes that do not end",
    text: brokenLesson(":::\n\n## Hands", "\n## Hands"),
    messages: [
      "line 22, column 1: the notes do not end; allowed is a line of three colons before the next step.",
    ],
  },
  {
    what: "empty notes",
    text: brokenLesson("Let everybody point before anybody speaks.", ""),
    messages: ["line 22, column 1: the notes are empty; allowed is notes for the teacher."],
  },
  {
    what: "raw HTML",
    text: brokenLesson("A blade is", "<b>A</b> blade is"),
    messages: [
      "line 10, column 1: “<b>” is HTML, which is shown as text; allowed is Markdown without HTML.",
      "line 10, column 5: “</b>” is HTML, which is shown as text; allowed is Markdown without HTML.",
    ],
  },
  {
    what: "a script",
    text: brokenLesson("A blade is", "<script>alert(1)</script>\n\nA blade is"),
    messages: [
      "line 10, column 1: “<script>alert(1)</script>” is HTML, which is shown as text; allowed is Markdown without HTML.",
    ],
  },
  {
    what: "another reed beside, misspelt",
    text: brokenLesson("layers: [pulls]", "beside: { read: Heron }"),
    messages: [
      "line 30, column 11: “read” is no field of show beside; allowed is reed, values. Did you mean “reed”?",
    ],
  },
  {
    what: "a picture",
    text: brokenLesson("A blade is", "![a reed](https://example.org/a.png) is"),
    messages: [
      "line 10, column 1: “![a reed](https://example.org/a.png)” is a picture, which is not loaded; allowed is a show block, which draws the reed.",
    ],
  },
  {
    what: "a link that runs a script",
    text: brokenLesson("https://example.org", "javascript:alert(1)"),
    messages: [
      "line 10, column 44: the link “javascript:alert(1)” leads nowhere; allowed is links with https:, http: or mailto:.",
    ],
  },
  {
    what: "a link to data",
    text: brokenLesson("https://example.org", "data:text/html,x"),
    messages: [
      "line 10, column 44: the link “data:text/html,x” leads nowhere; allowed is links with https:, http: or mailto:.",
    ],
  },
  {
    what: "a question that is missing",
    text: brokenLesson("ask: The blade becomes 1 mm shorter. Where does the point go?\n", ""),
    messages: ["line 13, column 1: predict: ask is missing; allowed is a text that is not blank."],
  },
  {
    what: "a field that is none",
    text: brokenLesson("change: {", "chnage: {"),
    messages: [
      "line 13, column 1: predict: change is missing; allowed is features with their values, such as { bladeLength: 26.2 }.",
      "line 14, column 1: “chnage” is no field of predict; allowed is ask, why, hints, reed, values, change. Did you mean “change”?",
    ],
  },
  {
    what: "an empty block",
    text: lessonOf(fence("predict")),
    messages: [
      "line 10, column 1: predict is empty; allowed is a question in ask and new values in change.",
    ],
  },
  {
    what: "a block that is a text",
    text: lessonOf(fence("predict", "where")),
    messages: [
      'line 10, column 1: predict is "where"; allowed is a question in ask and new values in change.',
    ],
  },
  {
    what: "change as a list",
    text: brokenLesson("{ bladeLength: 26.2 mm }", "[bladeLength]"),
    messages: [
      'line 14, column 9: predict: change is ["bladeLength"]; allowed is features with their values, such as { bladeLength: 26.2 }.',
    ],
  },
  {
    what: "change of nothing",
    text: brokenLesson("{ bladeLength: 26.2 mm }", "{}"),
    messages: [
      "line 14, column 9: predict: change is {}; allowed is features with their values, such as { bladeLength: 26.2 }.",
    ],
  },
  {
    what: "a change of what does not count",
    text: brokenLesson("{ bladeLength: 26.2 mm }", "{ spine: 0.5 }"),
    messages: [
      "line 14, column 18: “spine” does not count in this lesson; allowed is one of the lesson's features: bladeLength, tipWidth, throatWidth, firstWire.",
    ],
  },
  {
    what: "a change of a feature that is none",
    text: brokenLesson("{ bladeLength: 26.2 mm }", "{ bladelenght: 26 }"),
    messages: [
      `line 14, column 24: “bladelenght” is no feature; allowed is ${features}. Did you mean “bladeLength”?`,
    ],
  },
  {
    what: "a roundness with a unit",
    text: brokenLesson("{ bladeLength: 26.2 mm }", "{ firstWire: 0.7 mm }"),
    messages: ["line 14, column 22: firstWire is “0.7 mm”; allowed is a number without a unit."],
  },
  {
    what: "two hints",
    text: brokenLesson("change: {", "hints: [a, b]\nchange: {"),
    messages: [
      "line 14, column 8: predict: hints[2] is missing; allowed is a text that is not blank.",
    ],
  },
  {
    what: "a layer that is none",
    text: brokenLesson("[pulls]", "[pull]"),
    messages: [
      "line 30, column 10: “pull” is no layer; allowed is readingLines, certainty, gaugeAlone, coverage95, pulls, eachPull, reach. Did you mean “pulls”?",
    ],
  },
  {
    what: "a place that is none",
    text: brokenLesson("layers: [pulls]", "place: hart"),
    messages: [
      `line 30, column 8: “hart” is no feature; allowed is ${features}. Did you mean “heart”?`,
    ],
  },
  {
    what: "lips that are none",
    text: brokenLesson("layers: [pulls]", "lips: softlow"),
    messages: [
      "line 30, column 7: “softlow” is no preset of lips; allowed is softLow, middle, highRegister, fullVolume. Did you mean “softLow”?",
    ],
  },
  {
    what: "a target that is none",
    text: lessonOf(fence("aim", ask, "target: softlow")),
    messages: [
      "line 11, column 9: “softlow” is no kind of part; allowed is everyday, softLow, highSolo, concerto, continuo, quintet, audition, lowTutti. Did you mean “softLow”?",
    ],
  },
  {
    what: "per cents that do not sum to 100",
    text: lessonOf(fence("aim", ask, "target: [50, 50, 50]")),
    messages: [
      "line 11, column 9: the three per cents sum to 150; allowed is three per cents that sum to 100.",
    ],
  },
  {
    what: "two per cents",
    text: lessonOf(fence("aim", ask, "target: [50, 50]")),
    messages: [
      "line 11, column 9: aim: target is [50,50]; allowed is a kind of part, or three per cents in the order high, low, loud.",
    ],
  },
  {
    what: "a negative per cent",
    text: lessonOf(fence("read", ask, "at: [-10, 60, 50]")),
    messages: ["line 11, column 6: a per cent is -10; allowed is 0 to 100."],
  },
  {
    what: "a wide tolerance",
    text: lessonOf(fence("read", ask, "at: [50, 30, 20]", "within: 80")),
    messages: [
      "line 12, column 9: read: within is 80; allowed is a number of per cents from 0.5 to 30.",
    ],
  },
  {
    what: "no right option",
    text: lessonOf(
      fence("choose", ask, "options:", "  - { text: a, why: b }", "  - { text: c, why: d }"),
    ),
    messages: [
      "line 12, column 3: no option is right; allowed is right: true with at least one option.",
    ],
  },
  {
    what: "only right options",
    text: lessonOf(
      fence(
        "choose",
        ask,
        "options:",
        "  - { text: a, why: b, right: true }",
        "  - { text: c, why: d, right: true }",
      ),
    ),
    messages: [
      "line 12, column 3: every option is right; allowed is at least one option that is tempting and wrong.",
    ],
  },
  {
    what: "an option without a reason",
    text: lessonOf(
      fence("choose", ask, "options:", "  - { text: a, right: true }", "  - { text: c, why: d }"),
    ),
    messages: [
      "line 12, column 5: choose: options[0].why is missing; allowed is a text that is not blank.",
    ],
  },
  {
    what: "an option twice",
    text: lessonOf(
      fence(
        "choose",
        ask,
        "options:",
        "  - { text: a, why: b, right: true }",
        "  - { text: a, why: d }",
      ),
    ),
    messages: [
      "line 13, column 13: the option “a” stands here twice; allowed is options that differ.",
    ],
  },
  {
    what: "one option",
    text: lessonOf(fence("choose", ask, "options:", "  - { text: a, why: b, right: true }")),
    messages: [
      'line 12, column 3: choose: options is [{"text":"a","why":"b","right":true}]; allowed is a list of two to six options.',
    ],
  },
  {
    what: "one action",
    text: lessonOf(fence("order", ask, "actions: [clipTip]")),
    messages: [
      'line 11, column 10: order: actions is ["clipTip"]; allowed is a list of two to four actions.',
    ],
  },
  {
    what: "a stand-in with a lock on what is missing",
    text: lessonOf(fence("stand-in", ask, "missing: { tip: 0.14 }", "locked: [tip]")),
    messages: [
      "line 12, column 10: “tip” is missing and locked; allowed is locks on other features; what is missing stays as it is anyway.",
    ],
  },
  {
    what: "a claim without a meaning",
    text: lessonOf(fence("claim", "says: x")),
    messages: [
      "line 10, column 1: claim: means is missing; allowed is a claim, or a list of claims.",
    ],
  },
  {
    what: "a choice whose order for a class leaves an option out",
    text: lessonOf(
      fence(
        "choose",
        "ask: Which?",
        "options:",
        "  - { text: a, why: b, right: true }",
        "  - { text: c, why: d }",
        "shown: [2, 2]",
      ),
      "",
      1,
    ),
    messages: [
      "line 14, column 8: shown: 2, 2 does not name every option once; allowed is the numbers 1 to 2, each once, in the order in which a class sees the options.",
    ],
  },
];

/** Lessons that are read without a problem, but do not hold against the model. */
export const untrue: readonly BrokenLesson[] = [
  {
    what: "a claim that is false",
    text: brokenLesson("shorter bladeLength → high", "shorter bladeLength → low"),
    messages: [
      "line 19, column 8: “A shorter blade goes toward the high register.” claims shorter bladeLength → low, which is false: the model says high +0.128, low −0.220, loud +0.093; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim that cannot be read",
    text: brokenLesson("shorter bladeLength → high", "a short blade is high"),
    messages: [
      "line 19, column 8: the claim “a short blade is high” cannot be read; allowed is such as shorter bladeLength → high; less wings → away from loud; clipTip like shorter bladeLength; rounder firstWire stronger than thinner wings; roundFirstWire raises openingHeight; higher openingHeight gives more peakFlow at fullVolume; clipTip cannot be undone; Teal near everyday.",
    ],
  },
  {
    what: "a claim with a misspelt feature",
    text: brokenLesson("shorter bladeLength → high", "shorter bladeLenght → high"),
    messages: [
      `line 19, column 8: “bladeLenght” is no feature or ratio of features; allowed is ${features}, heartToWings, spineToRails. Did you mean “bladeLength”?`,
    ],
  },
  {
    what: "a claim with a misspelt comparative",
    text: brokenLesson("shorter bladeLength → high", "shortr bladeLength → high"),
    messages: [
      "line 19, column 8: “shortr” is no word such as more or less; allowed is more, longer, wider, rounder, thicker, taller, higher, steeper, stronger, larger, less, shorter, narrower, flatter, thinner, lower, shallower, weaker, smaller. Did you mean “shorter”?",
    ],
  },
  {
    what: "a claim about what does not count",
    text: brokenLesson("shorter bladeLength → high", "thinner spine → low"),
    messages: [
      "line 19, column 8: “spine” does not count in this lesson; allowed is one of the lesson's features: bladeLength, tipWidth, throatWidth, firstWire.",
    ],
  },
  {
    what: "a claim about lips and a feature that does not count",
    text: brokenLesson(
      "means: shorter bladeLength → high",
      "means: stronger hinging gives less peakFlow at middle",
    ),
    messages: [
      "line 19, column 8: “hinging” does not count in this lesson; allowed is one of the lesson's features: bladeLength, tipWidth, throatWidth, firstWire.",
    ],
  },
  {
    what: "a claim about an action that is none",
    text: brokenLesson("shorter bladeLength → high", "clip → high"),
    messages: [
      `line 19, column 8: “clip” is no action; allowed is ${actions}. Did you mean “clipTip”?`,
    ],
  },
  {
    what: "a claim about an effect that is not",
    text: brokenLesson("shorter bladeLength → high", "roundFirstWire lowers openingHeight"),
    messages: [
      "line 19, column 8: “A shorter blade goes toward the high register.” claims roundFirstWire lowers openingHeight, which is false: one unit of the action changes it by 0.03; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim that a clip can be undone",
    text: brokenLesson("shorter bladeLength → high", "clipTip can be undone"),
    messages: [
      "line 19, column 8: “A shorter blade goes toward the high register.” claims clipTip can be undone, which is false: the actions say that it cannot be undone; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim that two pulls are alike",
    text: lessonOf(
      fence("claim", "says: x", "means: rounder firstWire like thicker wings") +
        fence("predict", ask, "change: { tip: 0.14 }"),
    ),
    messages: [
      "line 11, column 8: “x” claims rounder firstWire like thicker wings, which is false: the cosine between the two pulls is −0.338; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim about the second best",
    text: lessonOf(
      fence("claim", "says: x", "means: stronger hinging → low") +
        fence("predict", ask, "change: { tip: 0.14 }"),
    ),
    messages: [
      "line 11, column 8: “x” claims stronger hinging → low, which is false: the model says high +0.048, low +0.032, loud −0.079; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim that two pulls are alike that are only akin",
    text: lessonOf(
      fence("claim", "says: x", "means: thicker wings like thicker rails") +
        fence("predict", ask, "change: { tip: 0.14 }"),
    ),
    messages: [
      "line 11, column 8: “x” claims thicker wings like thicker rails, which is false: the cosine between the two pulls is +0.739; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim about where a reed lies",
    text: lessonOf(
      fence("claim", "says: x", "means: [Heron near softLow, Bittern → loud]") +
        fence("predict", ask, "change: { tip: 0.14 }"),
    ),
    messages: [
      "line 11, column 9: “x” claims Heron near softLow, which is false: they are 0.503 apart, and near is at most 0.08; allowed is what follows from the model under this lesson's own features.",
      "line 11, column 29: “x” claims Bittern → loud, which is false: the model says high −0.161, low +0.267, loud −0.106; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim about the lip panel",
    text: brokenLesson(
      "shorter bladeLength → high",
      "shorter bladeLength gives less resonance at middle",
    ),
    messages: [
      "line 19, column 8: “A shorter blade goes toward the high register.” claims shorter bladeLength gives less resonance at middle, which is false: it changes by 9.5 % for one half-spread; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a claim about a dial that is none",
    text: brokenLesson(
      "shorter bladeLength → high",
      "shorter bladeLength gives less air at middle",
    ),
    messages: [
      "line 19, column 8: “air” is no quantity of the lip panel; allowed is opening, vibratingArea, peakFlow, closingPressure, resonance, tipStiffness, usable.",
    ],
  },
  {
    what: "a claim about strength",
    text: lessonOf(
      fence("claim", "says: x", "means: wider openingWidth stronger than longer bladeLength") +
        fence("predict", ask, "change: { tip: 0.14 }"),
    ),
    messages: [
      "line 11, column 8: “x” claims wider openingWidth stronger than longer bladeLength, which is false: over half its spread one moves the point by 0.060, the other by 0.103; allowed is what follows from the model under this lesson's own features.",
    ],
  },
  {
    what: "a key against its claim",
    text: lessonOf(
      fence(
        "choose",
        ask,
        "options:",
        "  - { text: a, why: b, right: true, claim: thicker tip → low }",
        "  - { text: c, why: d, claim: thinner tip → low }",
      ),
      "",
      1,
    ),
    messages: [
      "line 12, column 44: the option “a” is marked right, but its claim “thicker tip → low” is false: the model says high +0.004, low −0.078, loud +0.074; allowed is a mark that agrees with the claim.",
      "line 13, column 31: the option “c” is marked wrong, but its claim “thinner tip → low” is true: the model says high −0.004, low +0.078, loud −0.074; allowed is a mark that agrees with the claim.",
    ],
  },
  {
    what: "a prediction of nothing",
    text: brokenLesson("26.2 mm", "27.2 mm"),
    messages: [
      "line 14, column 9: the predict changes nothing; allowed is a value that differs from the reed's and counts in this lesson.",
    ],
  },
  {
    what: "a prediction of almost nothing",
    text: brokenLesson("26.2 mm", "27.18 mm"),
    messages: [
      "line 14, column 9: the point moves by 0.4 points only; allowed is a change that moves it by at least 1.4 points, or nobody sees the difference.",
    ],
  },
  {
    what: "an aim out of reach",
    text: lessonOf(
      fence("aim", ask, "target: [100, 0, 0]", "within: 2", "locked: [bladeLength, tipWidth]"),
      "features: [bladeLength, tipWidth, firstWire]",
    ),
    messages: [
      "line 12, column 9: the target is out of reach: the nearest end is 62 points away; allowed is a target at most 2 points from it; what holds it back: tipWidth, bladeLength.",
    ],
  },
  {
    what: "an aim out of reach on a finished reed",
    text: lessonOf(
      fence(
        "aim",
        ask,
        "target: softLow",
        "finished: true",
        "reed: Heron",
        "within: 1",
        "locked: [hinging, firstWire, openingHeight, openingWidth, backRise, secondWire]",
      ),
    ),
    messages: [
      "line 11, column 9: the target is out of reach: the nearest end is 15.1 points away; allowed is a target at most 1 point from it; what holds it back: openingHeight, rails, throatWidth, hinging, tipWidth, wings, openingWidth, bladeLength, secondWire, tip, backRise, firstWire, spine.",
    ],
  },
  {
    what: "an aim out of reach by one feature",
    text: lessonOf(fence("aim", ask, "target: concerto", "mostFeatures: 1", "within: 1")),
    messages: [
      "line 11, column 9: the target is out of reach for 1 feature: the nearest end is 2.2 points away; allowed is a target at most 1 point from it.",
    ],
  },
  {
    what: "an aim that is there already",
    text: lessonOf(fence("aim", ask, "target: everyday")),
    messages: [
      "line 11, column 9: the point is there already: 0.2 points away; allowed is a start that is more than 6.5 points away.",
    ],
  },
  {
    what: "a stand-in for nothing",
    text: lessonOf(fence("stand-in", ask, "reed: Bittern", "missing: { tip: 0.1 }")),
    messages: [
      "line 12, column 10: the stand-in changes nothing; allowed is a value that differs from the reed's and counts in this lesson.",
    ],
  },
  {
    what: "a stand-in that nobody would notice",
    text: lessonOf(fence("stand-in", ask, "reed: Bittern", "missing: { tip: 0.101 }")),
    messages: [
      "line 12, column 10: the point is there already: 0.3 points away; allowed is a start that is more than 3 points away.",
    ],
  },
  {
    what: "a stand-in with everything locked",
    text: lessonOf(
      fence(
        "stand-in",
        ask,
        "missing: { bladeLength: 30 }",
        "within: 1",
        "locked: [bladeLength, tipWidth, firstWire]",
      ),
      "features: [bladeLength, tipWidth, firstWire]",
    ).replace("locked: [bladeLength, ", "locked: ["),
    messages: [
      "line 12, column 10: the target is out of reach: the nearest end is 48.6 points away; allowed is a target at most 1 point from it; what holds it back: firstWire, tipWidth, bladeLength.",
    ],
  },
  {
    what: "an order of opposites",
    text: brokenLesson("[clipTip, roundFirstWire]", "[flattenFirstWire, roundFirstWire]"),
    messages: [
      "line 35, column 29: “flattenFirstWire” and “roundFirstWire” do not belong in one sitting; allowed is actions that the rules of a sitting let meet.",
    ],
  },
  {
    what: "an order with heart and spine",
    text: brokenLesson("[clipTip, roundFirstWire]", "[thinHeart, thinSpine]"),
    messages: [
      "line 35, column 11: “thinHeart” needs the caution “knife”, which was not shown yet; allowed is a show block with cautions: [knife] before it in the lesson.",
      "line 35, column 22: “thinHeart” and “thinSpine” do not belong in one sitting; allowed is actions that the rules of a sitting let meet.",
      "line 35, column 22: “thinSpine” needs the caution “knife”, which was not shown yet; allowed is a show block with cautions: [knife] before it in the lesson.",
    ],
  },
  {
    what: "an order in order",
    text: brokenLesson("[clipTip, roundFirstWire]", "[roundFirstWire, clipTip]"),
    messages: [
      "line 35, column 10: the actions stand in a sensible order already; allowed is a list that the student has to put in order.",
    ],
  },
  {
    what: "an order in any order",
    text: brokenLesson("[clipTip, roundFirstWire]", "[roundSecondWire, roundFirstWire]"),
    messages: [
      "line 35, column 10: every order of these actions is sensible; allowed is at least two actions of different rank.",
    ],
  },
  {
    what: "an order of what is none",
    text: brokenLesson("[clipTip, roundFirstWire]", "[clip, roundFirstWire]"),
    messages: [
      `line 35, column 11: “clip” is no action; allowed is ${actions}. Did you mean “clipTip”?`,
    ],
  },
  {
    what: "an action twice",
    text: brokenLesson("[clipTip, roundFirstWire]", "[clipTip, clipTip]"),
    messages: ["line 35, column 20: “clipTip” stands here twice; allowed is each name once."],
  },
  {
    what: "hands without a caution",
    text: brokenLesson("cautions: [pliers, clipper]", "cautions: [pliers]"),
    messages: [
      "line 35, column 11: “clipTip” needs the caution “clipper”, which was not shown yet; allowed is a show block with cautions: [clipper] before it in the lesson.",
    ],
  },
  {
    what: "a caution that is none",
    text: brokenLesson("[pliers, clipper]", "[pliers, clipper, knive]"),
    messages: [
      "line 29, column 29: “knive” is no caution; allowed is knife, pliers, clipper, dust. Did you mean “knife”?",
    ],
  },
  {
    what: "too few minutes",
    text: brokenLesson("minutes: 4", "minutes: 2"),
    messages: [
      "line 3, column 10: minutes is 2, but reading and doing take about 3; allowed is a whole number from 3 to 5.",
    ],
  },
  {
    what: "too many minutes",
    text: brokenLesson("minutes: 4", "minutes: 30"),
    messages: [
      "line 3, column 10: minutes is 30, but reading and doing take about 3; allowed is a whole number from 3 to 5.",
    ],
  },
  {
    what: "no notes",
    text: brokenLesson(":::notes\nLet everybody point before anybody speaks.\n:::\n", ""),
    messages: [
      "line 2, column 1: no step has notes for the teacher; allowed is at least one :::notes section.",
    ],
  },
  {
    what: "nothing to do",
    text: lessonOf("Only prose.", "", 1),
    messages: [
      "line 2, column 1: the student has nothing to do; allowed is at least one predict, aim, choose, order, read or stand-in.",
    ],
  },
];
