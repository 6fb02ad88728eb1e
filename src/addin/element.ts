/**
 * Makes an element of the page with its content.
 *
 * @param tag - Name of the element.
 * @param content - Text and elements, in order.
 * @returns The element, not yet on the page.
 */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  ...content: readonly (string | Node)[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.append(...content);
  return made;
}
