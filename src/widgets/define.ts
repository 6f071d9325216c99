/** Defines an element once; a second copy of the script on the same page leaves the first in place. */
export function define(name: string, element: CustomElementConstructor): void {
  if (!customElements.get(name)) customElements.define(name, element);
}
