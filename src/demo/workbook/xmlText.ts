import { xmlDecode, xmlEncode } from "@cj-tech-master/excelts/xml";

/** An element of an XML text: where its start tag begins and ends, and where the whole of it ends. */
export interface XmlElement {
  /** Its name without the prefix of its namespace. */
  readonly name: string;
  /** The prefix of its namespace with the colon; empty if it has none. */
  readonly prefix: string;
  /** The start tag, from `<` to `>`. */
  readonly tag: string;
  readonly start: number;
  readonly end: number;
  /** What is between its tags. */
  readonly inside: string;
  /** Where that begins. */
  readonly insideStart: number;
}

const TOKEN =
  /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>|<(\/?)((?:[^\s<>/:!?]+:)?)([^\s<>/:!?]+)(?:[^<>"']|"[^"]*"|'[^']*')*>/g;

/** The elements of some names, in the order of the text. An element inside another that is yielded is left to a second call. */
export function* xmlElements(text: string, ...names: string[]): Generator<XmlElement> {
  const pattern = new RegExp(TOKEN);
  for (let token = pattern.exec(text); token !== null; token = pattern.exec(text)) {
    const [tag, closing, prefix = "", name = ""] = token;
    if (closing !== "" || !names.includes(name)) continue;
    const { index: start } = token;
    const insideStart = pattern.lastIndex;
    let depth = tag.endsWith("/>") ? 0 : 1;
    let insideEnd = insideStart;
    while (depth > 0) {
      const inner = pattern.exec(text);
      if (inner === null) return;
      if (inner[3] !== name || inner[0].endsWith("/>")) continue;
      depth += inner[1] === "/" ? -1 : 1;
      insideEnd = inner.index;
    }
    const end = insideEnd === insideStart && tag.endsWith("/>") ? insideStart : pattern.lastIndex;
    yield {
      name,
      prefix,
      tag,
      start,
      end,
      inside: text.slice(insideStart, insideEnd),
      insideStart,
    };
  }
}

/** The first element of a name. */
export function firstElement(text: string, name: string): XmlElement | undefined {
  for (const element of xmlElements(text, name)) return element;
  return undefined;
}

/** The text of an element without the markup in it. */
export function plainText(inside: string): string {
  if (!inside.includes("<")) return xmlDecode(inside);
  return inside
    .split(/(<!\[CDATA\[[\s\S]*?\]\]>)/)
    .map((piece) =>
      piece.startsWith("<![CDATA[")
        ? piece.slice(9, -3)
        : xmlDecode(piece.replace(/<!--[\s\S]*?-->|<[^>]*>/g, ""))
    )
    .join("");
}

/** A text with the characters that files store as codes such as `_x000D_`. */
export function decodedText(text: string): string {
  return text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_code, hex: string) =>
        String.fromCharCode(parseInt(hex, 16))
      )
    : text;
}

/** A text as an element contains it. */
export function escaped(text: string): string {
  return xmlEncode(text).replaceAll("&quot;", '"').replaceAll("&apos;", "'");
}

/** A text value as a file stores it: characters that XML does not allow become codes. */
export function storedText(text: string): string {
  const coded = text
    .replace(/_(?=x[0-9A-F]{4}_)/gi, "_x005F_")
    // eslint-disable-next-line no-control-regex
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f\ufffe\uffff]/g, (character) => {
      const hex = character.charCodeAt(0).toString(16).toUpperCase();
      return `_x${hex.padStart(4, "0")}_`;
    });
  return escaped(coded);
}

const ATTRIBUTES = new Map<string, RegExp>();

function attributePattern(name: string): RegExp {
  const known = ATTRIBUTES.get(name);
  if (known !== undefined) return known;
  const made = new RegExp(`\\s(?:[^\\s=:"'<>]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
  ATTRIBUTES.set(name, made);
  return made;
}

/** The value of an attribute of a start tag, whatever the prefix of its namespace. */
export function attribute(tag: string, name: string): string | undefined {
  const match = attributePattern(name).exec(tag);
  return match === null ? undefined : xmlDecode(match[1] ?? match[2] ?? "");
}

/** A start tag with another value of an attribute, or without it. */
export function withAttribute(tag: string, name: string, value: string | undefined): string {
  const without = tag.replace(attributePattern(name), "");
  if (value === undefined) return without;
  return without.replace(/\s*(\/?>)$/, () => {
    const end = without.endsWith("/>") ? "/>" : ">";
    return ` ${name}="${xmlEncode(value)}"${end}`;
  });
}

/** An XML text with a child added at the end of the first element of a name, and counted if that element counts its children. */
export function withChild(text: string, parent: string, child: (prefix: string) => string): string {
  const element = firstElement(text, parent);
  if (element === undefined) return text;
  const { prefix, name, inside, start, end } = element;
  const count = attribute(element.tag, "count");
  const tag =
    count === undefined
      ? element.tag
      : withAttribute(element.tag, "count", String(Number(count) + 1));
  const open = tag.replace(/\s*\/>$/, ">");
  const whole = `${open}${inside}${child(prefix)}</${prefix}${name}>`;
  return text.slice(0, start) + whole + text.slice(end);
}

/** An XML text with an element added before the first one of some names, or at the end of the root. */
export function withElement(text: string, made: string, before: readonly string[]): string {
  const next = before.map((name) => firstElement(text, name)).find(Boolean);
  const at = next?.start ?? text.lastIndexOf("</");
  return text.slice(0, at) + made + text.slice(at);
}
