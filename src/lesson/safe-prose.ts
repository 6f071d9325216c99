/** The beginning of anything but a tag that prose is made of, without attributes but where a link leads and its title, where a list begins, what code is. */
const noTagOfProse =
  /<(?!(?:\/?(?:p|em|strong|ul|ol|li|blockquote|pre|code|h[1-6]|a)|hr \/|br \/|ol start="\d+"|code class="language-[^"<>]*"|a(?: href="(?:https?:\/\/|mailto:)[^"<>]*")?(?: title="[^"<>]*")?)>)/gi;

/**
 * Prose of a lesson as a page may build it, wherever the lesson comes from: what is no tag of `proseHtml` is shown as
 * the text it is, so nothing in it runs. What `proseHtml` has made comes back as it was.
 *
 * Domain  any text.
 *
 * @example safeProse("<p>a<img src=x onerror=y></p>") → "<p>a&lt;img src=x onerror=y></p>"
 */
export function safeProse(html: string): string {
  return html.replace(noTagOfProse, "&lt;");
}
