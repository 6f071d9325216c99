import { html, nothing, type LitElement } from "lit";
import { sentenceText, type Catalogue } from "../reed/catalogue.js";
import { define } from "../widgets/define.js";
import type { BenchHeader } from "./bench-header.js";
import type { BenchState } from "./bench-state.js";
import type { Shown } from "./bench-words.js";

/** The app, as far as it is needed to hand its state to somebody. */
type App = LitElement & {
  readonly text: Catalogue;
  readonly state: BenchState;
  notice: string;
};

/** Hands the bench out: as a link, as a page of one file, as lines for another page. What makes them comes when asked for. */
export class HandOut {
  readonly #app: App;
  readonly #link: () => string;
  #isEmbedding = false;

  constructor(app: App, link: () => string) {
    this.#app = app;
    this.#link = link;
  }

  readonly copyLink = async (): Promise<void> => {
    const { bar } = this.#app.text;
    try {
      await navigator.clipboard.writeText(this.#link());
      this.#app.notice = bar.linkCopied;
    } catch (cause) {
      console.warn("Reedpoint: the link could not be copied", cause);
      this.#app.notice = bar.linkFailed;
    }
  };

  readonly savePage = async (): Promise<void> => {
    try {
      const code = this.#link().split("#")[1]!;
      const { reed } = this.#app.state.present.bench;
      await (await import("./one-page.js")).savePage(document, code, reed);
    } catch (cause) {
      console.warn("Reedpoint: the page could not be saved.", cause);
      this.#app.notice = this.#app.text.bar.pageFailed;
    }
  };

  readonly openEmbed = async (): Promise<void> => {
    try {
      define("embed-dialog", (await import("./embed-dialog.js")).EmbedDialog);
      this.#show(true);
    } catch (cause) {
      console.warn("Reedpoint: a part could not be loaded", cause);
      this.#app.notice = this.#app.text.pages.failed;
    }
  };

  /** The dialog with the lines, while it is open. */
  dialog({ state, view }: Shown) {
    if (!this.#isEmbedding) return nothing;
    return html`<embed-dialog
      class="noPrint"
      .model=${state.model}
      .bench=${state.present.bench}
      .says=${sentenceText(view.sentence)}
      .text=${this.#app.text}
      @dialog-closed=${this.#onClosed}
    ></embed-dialog>`;
  }

  readonly #onClosed = (): void => {
    this.#show(false);
    this.#app.renderRoot.querySelector<BenchHeader>("bench-header")?.focusEmbed();
  };

  #show(isOpen: boolean): void {
    this.#isEmbedding = isOpen;
    this.#app.requestUpdate();
  }
}
