import type { ReactiveController, ReactiveControllerHost } from "lit";
import { isSameRoom, paper, roomOf, type Room } from "./page-width.js";

/** Watches how much room the page has, and tells the page's own style sheet of it. */
export class PageRoom implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #watcher: ResizeObserver;
  room: Room;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.room = roomOf(document.documentElement);
    this.#watcher = new ResizeObserver(this.#look);
    host.addController(this);
  }

  hostConnected(): void {
    this.#watcher.observe(document.documentElement);
    window.addEventListener("resize", this.#look);
    window.addEventListener("beforeprint", this.#print);
    window.addEventListener("afterprint", this.#look);
    this.#tell();
  }

  hostDisconnected(): void {
    this.#watcher.disconnect();
    window.removeEventListener("resize", this.#look);
    window.removeEventListener("beforeprint", this.#print);
    window.removeEventListener("afterprint", this.#look);
  }

  readonly #look = (): void => this.#take(roomOf(document.documentElement));

  /** Paper is no phone: a sheet is laid out as a wide page, whatever the window is. */
  readonly #print = (): void => this.#take(paper);

  #take(room: Room): void {
    if (isSameRoom(room, this.room)) return;
    this.room = room;
    this.#tell();
    this.#host.requestUpdate();
  }

  /** What has the focus must not lie under the triangle or the recipe's bar: page.css leaves that much room. */
  #tell(): void {
    const page = document.documentElement;
    page.toggleAttribute("data-narrow", this.room.narrow);
    page.toggleAttribute("data-sticks", this.room.sticks);
    const triangle = `${(this.room.triangleHeight + 52) / 16}rem`;
    page.style.setProperty("--triangle", triangle);
    page.style.setProperty("--sheet", this.room.sticks ? `calc(100svh - ${triangle})` : "58svh");
  }
}
