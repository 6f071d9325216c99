import type { BenchActionEvent } from "../../src/app/bench-action-event.js";
import { BenchLip } from "../../src/app/bench-lip.js";
import { reduce, startState, type BenchState } from "../../src/app/bench-state.js";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { decodeBench } from "../../src/reed/bench.js";
import { define } from "../../src/widgets/define.js";

define("bench-lip", BenchLip);

/** The section on lips and opening alone on a page, with the bench of the address; the page is its state's owner. */
function show(): void {
  const { bench } = decodeBench(location.hash, bassoonModel);
  const section = new BenchLip();
  const take = (state: BenchState): void => {
    section.state = state;
  };
  take(startState(bassoonModel, bench));
  section.addEventListener("bench-action", (event) =>
    take(reduce(section.state, (event as BenchActionEvent).action)),
  );
  // A test changes the reed as the bench would.
  Object.assign(window, {
    setReading: (feature: string, value: number) =>
      take(reduce(section.state, { type: "value-set", feature, value })),
  });
  document.querySelector("main")!.append(section);
}

show();
