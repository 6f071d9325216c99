/** Words for a version of the product that has come while an older one is open: English. */
export const newVersionWords = {
  ready: "A new version is ready.",
  waits: "A new version is ready. It waits until you have left this lesson.",
  take: "Use it now",
  later: "Later",
} as const;
