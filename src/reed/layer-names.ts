/** Everything that can be laid over the triangle. */
export const layerNames = [
  "readingLines",
  "certainty",
  "gaugeAlone",
  "coverage95",
  "pulls",
  "eachPull",
  "reach",
] as const;

/** What can be laid over the triangle. */
export type Layer = (typeof layerNames)[number];
