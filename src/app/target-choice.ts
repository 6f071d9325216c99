import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { ownTarget, type Bench } from "../reed/bench.js";
import type { Catalogue } from "../reed/catalogue.js";
import { targets } from "../reed/targets.js";
import type { Handle } from "../widgets/triangle-drag.js";

/** The list of parts to play, with one's own target at its end. */
export function targetChoice({ target }: Bench, text: Catalogue, onPick: (target: string) => void) {
  const words = text.target;
  return html`<label
    >${words.label}
    <select @change=${(event: Event) => onPick(picked(event))}>
      <option value="" .selected=${live(target === "")}>${words.none}</option>
      ${targets.map(
        ({ id, label }) =>
          html`<option value=${id} .selected=${live(id === target)}>${label}</option>`,
      )}
      <option value=${ownTarget} .selected=${live(target === ownTarget)}>${words.own}</option>
    </select></label
  >`;
}

/** What clicks and keys move, where there is more than one thing to move: also the way to pick one of two that overlap. */
export function movesChoice(
  { target }: Bench,
  moves: Handle,
  text: Catalogue,
  onPick: (moves: Handle) => void,
) {
  if (target !== ownTarget) return nothing;
  const words = text.moving;
  return html`<label
    >${words.label}
    <select @change=${(event: Event) => onPick(picked(event) as Handle)}>
      ${(["point", "aim"] as const).map(
        (handle) =>
          html`<option value=${handle} .selected=${live(handle === moves)}>
            ${words[handle]}
          </option>`,
      )}
    </select></label
  >`;
}

function picked(event: Event): string {
  return (event.target as HTMLSelectElement).value;
}
