// What the lip model costs on this machine, next to its budgets: lines for `npm run bench`. Judges nothing.

/** A budget of 2 ms holds for everything of one recipe; a move of the lip controls shares a frame with the drawing. */
const budgets = { recipe: 2000, lip: 500 };

/**
 * The lines of the lip model.
 *
 * @param acoustics the built library `dist/lib/acoustics.js`
 * @param recipes reeds with a value for every feature
 * @param measure (count, work) => nanoseconds of one of `count` repetitions
 * @param repeat (work) => work for `measure`; hands 0 … 63 to `work` and keeps what it returns
 * @returns rows of name, time spent, unit, budget
 */
export function acousticsLines(acoustics, recipes, measure, repeat) {
  const at = { lip: 1500, blow: 3000 };
  const whole = measure(
    400,
    repeat((i) => acoustics.lipResponse(recipes[i], at).peakFlow),
  );
  const reeds = recipes.map((recipe) => acoustics.reedMechanics(recipe));
  const lip = measure(
    4_000,
    repeat((i) => acoustics.respond(reeds[i], { lip: 40 * i, blow: 3000 }).vibratingArea),
  );
  const curves = measure(
    1_000,
    repeat(
      (i) =>
        acoustics.flowCurve(reeds[i], 40 * i).peak.flow +
        acoustics.openingCurve(reeds[i], 40 * i).closure,
    ),
  );
  return [
    ["lipResponse, a recipe", whole / 1000, "µs", budgets.recipe],
    ["respond, a move of the lips", lip / 1000, "µs", budgets.lip],
    ["flow and opening curve", curves / 1000, "µs", budgets.lip],
  ];
}
