/** As much of a page's element as the guide needs: a tag, content in order, and the text of it all. */
export class StandInElement {
  id = "";
  scope = "";
  readonly content: (string | StandInElement)[] = [];

  constructor(readonly tagName: string) {}

  append(...content: readonly (string | StandInElement)[]): void {
    this.content.push(...content);
  }

  get textContent(): string {
    return this.content
      .map((part) => (typeof part === "string" ? part : part.textContent))
      .join("");
  }

  /** Elements of one tag below this one, in the order of the page. */
  all(tagName: string): StandInElement[] {
    return this.content.flatMap((part) =>
      typeof part === "string"
        ? []
        : [...(part.tagName === tagName ? [part] : []), ...part.all(tagName)]
    );
  }
}

/** As much of a page's document as the guide needs. */
export const documentStandIn = { createElement: (tagName: string) => new StandInElement(tagName) };
