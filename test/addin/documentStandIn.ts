/** The part of an element that the guide uses: tag, content and text. */
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

  /** The elements with a tag below this one, in the order of the page. */
  all(tagName: string): StandInElement[] {
    return this.content.flatMap((part) =>
      typeof part === "string"
        ? []
        : [...(part.tagName === tagName ? [part] : []), ...part.all(tagName)]
    );
  }
}

/** The part of a document that the guide uses. */
export const documentStandIn = { createElement: (tagName: string) => new StandInElement(tagName) };
