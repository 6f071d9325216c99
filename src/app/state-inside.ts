/** In a page of one file this holds the state that it was saved with. */
export const stateMark = "reedpoint-state";

/** The state that this page carries inside; undefined where it is the usual app, empty where nothing was saved yet. */
export function stateInside(page: Document): string | undefined {
  return page.querySelector<HTMLMetaElement>(`meta[name="${stateMark}"]`)?.content;
}
