import type { AimPickedEvent, BlendPickedEvent } from "../widgets/events.js";
import type { BenchAction } from "./bench-state.js";

/** What events ask for: one function a type of event. */
export type Translations<Asking> = {
  readonly [Type in keyof Asking]: (event: Asking[Type]) => BenchAction;
};

/** Events of a triangle, and what each asks for. */
export const pointEvents: Translations<{
  readonly "blend-picked": BlendPickedEvent;
  readonly "aim-picked": AimPickedEvent;
  readonly "gesture-ended": Event;
}> = {
  "blend-picked": ({ blend, gesture }) => ({ type: "point-moved", target: blend, gesture }),
  "aim-picked": ({ aim, gesture }) => ({ type: "aim-moved", aim, gesture }),
  "gesture-ended": () => ({ type: "gesture-ended" }),
};

/** What an event asks for; undefined for one that these do not know. */
export function translated(events: object, event: Event): BenchAction | undefined {
  const all = events as Readonly<Record<string, (one: Event) => BenchAction>>;
  return Object.hasOwn(all, event.type) ? all[event.type]!(event) : undefined;
}
