/** As much of a page's element as the guide needs: a tag, content in order, and the text of it all. */
export class StandInElement {
  id = "";
  scope = "";
  className = "";
  tabIndex = -1;
  readonly attributes = new Map<string, string>();
  readonly content: (string | StandInElement)[] = [];

  constructor(readonly tagName: string) {}

  append(...content: readonly (string | StandInElement)[]): void {
    this.content.push(...content);
  }

  setAttribute(name: string, value: string): void {
    this.attributes.set(name, value);
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
