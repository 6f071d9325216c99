import type {
  LockPickedEvent,
  TryAcceptedEvent,
  TryLeftEvent,
  ValuePickedEvent,
} from "../widgets/events.js";
import type { BenchActionEvent } from "./bench-action-event.js";
import type { BenchAction } from "./bench-state.js";
import { pointEvents, translated, type Translations } from "./point-events.js";

const valueEvents: Translations<{
  readonly "value-picked": ValuePickedEvent;
  readonly "lock-picked": LockPickedEvent;
  readonly "try-left": TryLeftEvent;
  readonly "try-accepted": TryAcceptedEvent;
  readonly "bench-action": BenchActionEvent;
}> = {
  "value-picked": ({ feature, value, gesture }) => ({
    type: "value-set",
    feature,
    value,
    ...(gesture === undefined ? {} : { gesture }),
  }),
  "lock-picked": ({ feature, locked }) => ({ type: "lock-set", feature, locked }),
  "try-left": ({ feature }) => ({ type: "try-left", feature }),
  "try-accepted": ({ feature }) => ({ type: "try-accepted", feature }),
  "bench-action": ({ action }) => action,
};

const events = { ...pointEvents, ...valueEvents };

/** What an event of any part of the app asks for; undefined for one that asks for nothing. */
export function actionOf(event: Event): BenchAction | undefined {
  return translated(events, event);
}
