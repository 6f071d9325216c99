import type { LitElement, ReactiveController } from "lit";

/** Lets a file be dropped anywhere on an element. */
export class FileDrop implements ReactiveController {
  readonly #host: LitElement;
  readonly #onFile: (file: File) => void;
  /** Whether a file is held over it. */
  isOver = false;

  constructor(host: LitElement, onFile: (file: File) => void) {
    this.#host = host;
    this.#onFile = onFile;
    host.addController(this);
  }

  hostConnected(): void {
    this.#host.addEventListener("dragover", this.#onOver);
    this.#host.addEventListener("dragleave", this.#onAway);
    this.#host.addEventListener("drop", this.#onDrop);
  }

  hostDisconnected(): void {
    this.#host.removeEventListener("dragover", this.#onOver);
    this.#host.removeEventListener("dragleave", this.#onAway);
    this.#host.removeEventListener("drop", this.#onDrop);
  }

  #show(isOver: boolean): void {
    if (isOver === this.isOver) return;
    this.isOver = isOver;
    this.#host.requestUpdate();
  }

  readonly #onOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    this.#show(true);
  };

  readonly #onAway = (): void => this.#show(false);

  readonly #onDrop = (event: DragEvent): void => {
    this.#show(false);
    const [file] = event.dataTransfer?.files ?? [];
    if (!file) return;
    event.preventDefault();
    this.#onFile(file);
  };
}
