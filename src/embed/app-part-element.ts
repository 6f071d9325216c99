import type { PropertyDeclarations } from "lit";
import { reduce, type BenchAction, type BenchState } from "../app/bench-state.js";
import { viewBench, type BenchView } from "../app/bench-view.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { actionOf } from "../app/action-of-event.js";
import type { Announcement } from "../app/announcer.js";
import type { BenchActionEvent } from "../app/bench-action-event.js";
import { movesOf } from "../app/moves-of.js";
import { told } from "../app/told.js";
import type { MovesPickedEvent } from "../app/bench-options.js";
import type { FeaturePointedEvent } from "../widgets/events.js";
import type { FeatureId } from "../engine/model.js";
import { ownTarget } from "../reed/new-bench.js";
import type { Handle } from "../widgets/triangle-drag.js";
import { BlendForm } from "./blend-form.js";
import type { SharedReed } from "./shared-reed.js";
import { partEvents } from "./stop-inside.js";

/** A public element that is made of parts of the app, and speaks as the app does. */
export class AppPartElement extends BlendForm {
  static override properties: PropertyDeclarations = {
    pointed: { state: true },
    picked: { state: true },
  };

  /** The feature at whose place the pointer or the keyboard is. */
  declare protected pointed: FeatureId | undefined;
  /** What clicks and keys move on the triangle. */
  declare protected picked: Handle;

  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
    this.picked = "point";
  }

  protected get moves(): Handle {
    return movesOf(this.shared.state.present.bench, this.picked);
  }

  protected override get inner(): readonly string[] {
    return [...super.inner, ...partEvents];
  }

  protected override get view(): BenchView {
    return super.view as BenchView;
  }

  protected override look(state: BenchState): BenchView {
    return viewBench(state, this.text);
  }

  /** These parts know more actions than those of a reed that is moved. */
  protected override followed(shared: SharedReed): void {
    shared.learn(reduce);
  }

  protected override wordsOf(action: BenchAction): string | Announcement {
    return told(this.shared.state, action, this.text);
  }

  protected override actionOf(event: Event): BenchAction | undefined {
    return actionOf(event);
  }

  protected override takeInner(event: Event): void {
    switch (event.type) {
      case "feature-pointed":
        this.pointed = (event as FeaturePointedEvent).feature;
        return;
      case "moves-picked":
        this.picked = (event as MovesPickedEvent).moves;
        return;
      case "bench-action":
        return this.takeAction((event as BenchActionEvent).action);
    }
    super.takeInner(event);
  }

  /** What is asked of the bench as it stands; what only a page of the app has is left out. */
  protected takeAction(action: BenchAction): void {
    if (action.type === "page-set") return;
    this.act(action);
    if (action.type === "target-set") {
      this.picked = action.target === ownTarget ? "aim" : "point";
      this.tell("reed-target-picked");
    }
    if (action.type === "step-done") this.tell("reed-step-done", { step: action.step });
    if (action.type === "stand-in-tried")
      this.tell("reed-stand-in-tried", { changes: action.changes });
  }
}
