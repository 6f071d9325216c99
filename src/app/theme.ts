/** Which look the page takes: the device's, or one of the two. */
export type Theme = "auto" | "paper" | "night";

/** Sets the look on the page's root; the colours themselves stand in page.css. */
export function setTheme(root: HTMLElement, theme: Theme): void {
  if (theme === "auto") root.removeAttribute("data-theme");
  else root.setAttribute("data-theme", theme);
}
