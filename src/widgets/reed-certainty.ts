import { LitElement, css, html, nothing } from "lit";
import type { Blend } from "../engine/blend.js";
import type { CertaintyEllipse } from "../engine/certainty.js";
import { nearestBlend } from "../engine/nearest-blend.js";
import { wholeShares } from "../reed/whole-shares.js";
import { english, type Catalogue } from "../reed/catalogue.js";
import { look } from "./look.js";

const order = ["high", "low", "loud"] as const;

/** How sure the point is, in numbers: each share with its standard deviation, and the 95 % ellipse. */
export class ReedCertainty extends LitElement {
  static override styles = [
    look,
    css`
      :host {
        display: block;
        color: var(--ink-soft);
        font-size: 0.8125rem;
      }
      summary {
        min-height: 1.75rem;
        cursor: pointer;
      }
      p {
        max-width: 44rem;
        margin: 0.2rem 0;
      }
      @media print {
        summary {
          list-style: none;
        }
      }
    `,
  ];

  static override properties = {
    blend: { attribute: false },
    ellipse: { attribute: false },
    gaugeEllipse: { attribute: false },
    text: { attribute: false },
  };

  declare blend: Blend | undefined;
  declare ellipse: CertaintyEllipse | undefined;
  declare gaugeEllipse: CertaintyEllipse | undefined;
  declare text: Catalogue;

  constructor() {
    super();
    this.text = english;
  }

  override render() {
    const { blend, ellipse, gaugeEllipse, text } = this;
    if (!blend || !ellipse || !gaugeEllipse) return nothing;
    const words = text.certainty;
    const inside = wholeShares(nearestBlend(blend));
    const rows = order.map((id, k) => ({
      id,
      share: text.percent(inside[k]!),
      sd: text.percent(Math.sqrt(ellipse.covariance[k]![k]!)),
    }));
    const axis = (value: number): string => text.number(value, 2);
    const degrees = text.number((ellipse.angle * 180) / Math.PI, 0);
    return html`<details>
      <summary>${words.title} ${words.shares(rows)}</summary>
      <p>
        ${words.ellipse(axis(ellipse.semiAxes[0]), axis(ellipse.semiAxes[1]), degrees)}
        ${words.gaugeAlone(axis(gaugeEllipse.semiAxes[0]), axis(gaugeEllipse.semiAxes[1]))}
      </p>
      <p>${words.sd}</p>
    </details>`;
  }
}
