/** What a lesson in somebody else's page says where it cannot be played: English. */
export const lessonElementWords = {
  none: "No lesson is named here.",
  unknown: (id: string): string => `There is no lesson “${id}”.`,
  unfit: "This lesson needs features that the model of this page does not have.",
  noLesson: "What this page gives as a lesson is none.",
  elsewhere: (address: string): string =>
    `${address} lies on another server. Lesson files are read from this page's own server alone.`,
  noFetching: (address: string): string =>
    `${address} cannot be read: a page from a disk, or in a sandbox, may fetch nothing.`,
  refused: (address: string, status: number): string =>
    `${address} could not be read: the server answers ${status}.`,
  unreached: (address: string): string =>
    `${address} could not be read: is the connection there, and may this page fetch files?`,
} as const;
