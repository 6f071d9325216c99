/** Tells the page what it is called now: the innermost first, empty where the page itself is shown. */
export class PageTitledEvent extends Event {
  readonly titles: readonly string[];
  constructor(titles: readonly string[]) {
    super("page-titled", { bubbles: true, composed: true });
    this.titles = titles;
  }
}
