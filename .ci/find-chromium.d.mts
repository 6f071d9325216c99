/** Path of the browser to drive, or undefined. The variable REEDPOINT_CHROMIUM comes first. */
export function findChromium(
  environment?: Readonly<Record<string, string | undefined>>,
): string | undefined;
