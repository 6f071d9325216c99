/** A lesson that is right in everything; tests break it. */
export const soundLesson = `---
title: Two moves
minutes: 4
features: [bladeLength, tipWidth, throatWidth, firstWire]
start: { bladeLength: 27.2 }
---

## One change

A blade is a *spring*. Look at [the model](https://example.org) first.

\`\`\`predict
ask: The blade becomes 1 mm shorter. Where does the point go?
change: { bladeLength: 26.2 mm }
\`\`\`

\`\`\`claim
says: A shorter blade goes toward the high register.
means: shorter bladeLength → high
\`\`\`

:::notes
Let everybody point before anybody speaks.
:::

## Hands

\`\`\`show
cautions: [pliers, clipper]
layers: [pulls]
\`\`\`

\`\`\`order
ask: In which order?
actions: [clipTip, roundFirstWire]
\`\`\`
`;

/** The sound lesson with one piece of its text replaced. */
export function brokenLesson(piece: string, by: string): string {
  if (!soundLesson.includes(piece))
    throw new RangeError(`brokenLesson: no “${piece}” in the lesson`);
  return soundLesson.replace(piece, () => by);
}

/** A lesson of one step that holds nothing but these blocks, notes, and what hands are told before they act. */
export function lessonOf(blocks: string, frontMatter = "", minutes = 3): string {
  return [
    "---",
    "title: One step",
    `minutes: ${minutes}`,
    ...(frontMatter === "" ? [] : [frontMatter]),
    "---",
    "## Step",
    ":::notes",
    "For the teacher.",
    ":::",
    blocks,
  ].join("\n");
}

/** A block as it stands in a file. */
export function fence(name: string, ...fields: string[]): string {
  return ["```" + name, ...fields, "```", ""].join("\n");
}
