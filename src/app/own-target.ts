import { LitElement, css, html } from "lit";
import type { Blend } from "../engine/blend.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { define } from "../widgets/define.js";
import type { BlendPickedEvent } from "../widgets/events.js";
import { look } from "../widgets/look.js";
import { ReedShares } from "../widgets/reed-shares.js";
import { BenchActionEvent } from "./bench-action-event.js";

define("reed-shares", ReedShares);

/**
 * One's own target as three sliders, for who cannot or will not drag it.
 *
 * @fires bench-action - the target is somewhere else
 */
export class OwnTarget extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        min-width: 0;
        padding: 0.7rem 0.9rem;
        border: 1px solid var(--rule);
        border-radius: 10px;
        background: var(--card);
      }
      h3 {
        margin-bottom: 0.2rem;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  static override properties = { aim: { attribute: false }, text: { attribute: false } };

  declare aim: Blend | undefined;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const { text } = this;
    return html`<h3>${text.target.ownShares}</h3>
      <reed-shares
        .blend=${this.aim}
        .name=${text.target.ownShares}
        .text=${text}
        @blend-picked=${this.#onAim}
      ></reed-shares>`;
  }

  #onAim(event: BlendPickedEvent): void {
    event.stopPropagation(); // it is the target that moves, not the reed
    const { blend: aim, gesture } = event;
    this.dispatchEvent(new BenchActionEvent({ type: "aim-moved", aim, gesture: `aim-${gesture}` }));
  }
}
