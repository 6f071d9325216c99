import { expect, test } from "vitest";
import { place } from "../../src/engine/place.js";
import { pullChain } from "../../src/engine/pull-chain.js";
import { pulls } from "../../src/engine/pulls.js";
import { randomMap, randomValues, seeded } from "./random-model.js";

test.each(Array.from({ length: 40 }, (_, i) => i + 1))(
  "seed %d: the chain leads from the centre to the raw place, feature by feature and group by group",
  (seed) => {
    const random = seeded(seed);
    const map = randomMap(random, 3 + (seed % 12));
    const values = randomValues(random, map.model);
    const { raw } = place(map, values);
    const all = pulls(map, values);
    for (const groupOf of [(id: string) => id, (id: string) => id.slice(-1), () => "all"]) {
      const chain = pullChain(all, groupOf);
      expect(chain[0]!.from).toEqual([1 / 3, 1 / 3, 1 / 3]);
      // Some twenty sums of rounded numbers of the size of the shares.
      const size = Math.max(
        1,
        ...raw.map(Math.abs),
        ...all.flatMap(({ now }) => now.map(Math.abs)),
      );
      chain
        .at(-1)!
        .to.forEach((share, k) =>
          expect(Math.abs(share - raw[k]!)).toBeLessThan(1e-13 * size * 100),
        );
      chain.slice(1).forEach(({ from }, i) => expect(from).toEqual(chain[i]!.to));
      expect(new Set(chain.map(({ id }) => id)).size).toBe(chain.length);
    }
  },
);
