import type { BenchAction } from "./bench-state.js";

/** Something a user did that is an action of the bench as it stands. */
export class BenchActionEvent extends Event {
  readonly action: BenchAction;
  constructor(action: BenchAction) {
    super("bench-action", { bubbles: true, composed: true });
    this.action = action;
  }
}
