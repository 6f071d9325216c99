import { expect, test } from "vitest";
import { remembered } from "../../src/widgets/remembered.js";

test("the same arguments are computed once, others again, and only the last answer is kept", () => {
  const asked: string[] = [];
  const answer = remembered((recipe: object, scale: number) => {
    asked.push(JSON.stringify([recipe, scale]));
    return { recipe, scale };
  });
  const [heron, bittern] = [{ tip: 0.12 }, { tip: 0.1 }];
  const first = answer(heron, 10);
  expect(answer(heron, 10)).toBe(first);
  answer(heron, 11);
  answer(bittern, 11);
  answer(heron, 10);
  // An equal recipe is not the same one: whoever changes a recipe makes another.
  answer({ ...heron }, 10);
  answer(heron, NaN);
  answer(heron, NaN);
  expect(asked).toHaveLength(6);
});
