/** Words for a version of the product that has come while an older one is open: English. */
export const newVersionWords = {
  ready: "A new version is ready.",
  waits: "A new version is ready. It waits until no lesson is open any more.",
  take: "Use it now",
  later: "Later",
} as const;
