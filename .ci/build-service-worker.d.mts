/** Writes the service worker of a built folder, and returns what it keeps: paths with their hashes. */
export function buildServiceWorker(
  root: string,
  folder: string,
): Promise<(readonly [path: string, integrity: string])[]>;
