/** A part of the page that F6 moves to. */
export interface PagePart {
  readonly element: HTMLElement;
  /** Whether F6 can move to it now. */
  isReachable(): boolean;
  /**
   * Puts the focus into it.
   *
   * @param last - The element in it that had the focus last, if it is still shown.
   */
  enter(last: HTMLElement | undefined): void;
}

/** The element with the focus, also inside a shadow tree. */
function focusedElement(): Element | null {
  let found = document.activeElement;
  while (found?.shadowRoot?.activeElement) found = found.shadowRoot.activeElement;
  return found;
}

/**
 * Lets F6 move to the next part of the page and Shift+F6 to the one before. The grid uses the Tab key for its cells, so these are the
 * keys that leave it.
 *
 * @param parts - The parts in the order of F6.
 * @param finishEntry - Ends the editing of a cell before the focus moves, and keeps what was typed.
 */
export function moveWithF6(parts: readonly PagePart[], finishEntry: () => Promise<void>): void {
  const last = new Map<PagePart, HTMLElement>();
  const move = (step: 1 | -1, from: Element | null): void => {
    const present = parts.findIndex(({ element }) => element.contains(document.activeElement));
    const here = parts[present];
    if (here && from instanceof HTMLElement) last.set(here, from);
    const start = present === -1 && step === -1 ? 0 : present;
    for (let count = 1; count <= parts.length; count += 1) {
      const next = parts[(start + step * count + parts.length * count) % parts.length];
      if (next?.isReachable() !== true) continue;
      const before = last.get(next);
      next.enter(before?.isConnected === true && before.checkVisibility() ? before : undefined);
      return;
    }
  };
  window.addEventListener(
    "keydown",
    (event) => {
      const isOther = event.ctrlKey || event.altKey || event.metaKey;
      if (event.key !== "F6" || isOther || document.querySelector("dialog[open]")) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      const from = focusedElement();
      void finishEntry().then(() => {
        move(event.shiftKey ? -1 : 1, from);
      });
    },
    { capture: true }
  );
}
