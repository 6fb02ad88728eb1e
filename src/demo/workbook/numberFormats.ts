import { xmlEncode } from "@cj-tech-master/excelts/xml";
import { attribute, firstElement, withAttribute, withChild, xmlElements } from "./xmlText";

const FIRST_OWN_FORMAT = 164;

/** The style sheet of a workbook, to which the number formats of results are added at the end. */
export class NumberFormats {
  readonly #made = new Map<string, string>();
  #text: string;

  constructor(readonly original: string) {
    this.#text = original;
  }

  /** The text of the style sheet with the formats that were added. */
  get text(): string {
    return this.#text;
  }

  /**
   * The style of a cell with a number format.
   *
   * @param style - Its present style, as a cell refers to it.
   * @param code - The format.
   * @param replaces - Whether it replaces another format.
   * @returns A style that differs in the format only, or the present style if that has a format.
   */
  withFormat(style: string, code: string, replaces = false): string {
    const key = `${style} ${String(replaces)} ${code}`;
    const made = this.#made.get(key) ?? this.#add(Number(style), code, replaces);
    this.#made.set(key, made);
    return made;
  }

  #add(style: number, code: string, replaces: boolean): string {
    const styles = [...xmlElements(firstElement(this.#text, "cellXfs")?.inside ?? "", "xf")];
    const present = styles[style];
    const hasFormat = Number(attribute(present?.tag ?? "", "numFmtId") ?? 0) !== 0;
    if (present === undefined || (hasFormat && !replaces)) return String(style);
    const id = this.#formatNumber(code);
    const tag = withAttribute(withAttribute(present.tag, "numFmtId", id), "applyNumberFormat", "1");
    const end = tag.endsWith("/>") ? "" : `${present.inside}</${present.prefix}xf>`;
    this.#text = withChild(this.#text, "cellXfs", () => tag + end);
    return String(styles.length);
  }

  #formatNumber(code: string): string {
    if (code === "General") return "0";
    const present = [...xmlElements(firstElement(this.#text, "numFmts")?.inside ?? "", "numFmt")];
    const same = present.find(({ tag }) => attribute(tag, "formatCode") === code);
    if (same !== undefined) return attribute(same.tag, "numFmtId") ?? "0";
    const numbers = present.map(({ tag }) => Number(attribute(tag, "numFmtId")));
    const id = String(Math.max(FIRST_OWN_FORMAT - 1, ...numbers) + 1);
    const { prefix = "", insideStart = 0 } = firstElement(this.#text, "styleSheet") ?? {};
    if (firstElement(this.#text, "numFmts") === undefined)
      this.#text = `${this.#text.slice(0, insideStart)}<${prefix}numFmts count="0"/>${this.#text.slice(insideStart)}`;
    const child = `<${prefix}numFmt numFmtId="${id}" formatCode="${xmlEncode(code)}"/>`;
    this.#text = withChild(this.#text, "numFmts", () => child);
    return id;
  }
}
