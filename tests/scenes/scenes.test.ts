import { afterEach, expect, test } from "vitest";
import { normalisedSvg } from "./normalised-svg.js";
import { scenes } from "./scenes.js";

afterEach(() => document.body.replaceChildren());

// A changed picture is looked at in the dev server (tests/scenes/) and then taken with `npx vitest run -u`.
test.each(scenes)("$name: $says", async ({ name, make }) => {
  const element = make();
  document.body.append(element);
  await element.updateComplete;
  await expect(normalisedSvg(element.shadowRoot!)).toMatchFileSnapshot(`./svg/${name}.svg`);
});

test("no two scenes are the same picture", async () => {
  const pictures = await Promise.all(
    scenes.map(async ({ make }) => {
      const element = make();
      document.body.append(element);
      await element.updateComplete;
      return normalisedSvg(element.shadowRoot!);
    }),
  );
  expect(new Set(pictures).size).toBe(scenes.length);
});
