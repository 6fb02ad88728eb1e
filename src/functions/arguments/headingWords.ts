import { remembered } from "../../calendar/remembered";

/**
 * Words of headings that say the same thing, by the word used here. They are those of Form 4868 and its instructions, of Publication
 * 505, and plain shortenings of them.
 */
const SAME_WORDS: Readonly<Record<string, string>> = {
  accepted: "accepted accept acceptance acknowledged acknowledgment ack",
  applied: "applied apply",
  begins: "begins begin beginning start starts from",
  client: "client clients taxpayer tp",
  confirmed: "confirmed confirmation",
  country: "country abroad",
  ends: "ends end ending until through",
  estimated: "estimated estimate estimates est projected",
  filed: "filed file filing efiled",
  first: "first 1st q1",
  fourth: "fourth 4th q4",
  liability: "liability liab",
  name: "name names last",
  number: "number no num id",
  on: "on date when",
  overpayment: "overpayment overpmt refund",
  payments: "payments payment pmts pmt pymts pymt paid pay paying pd",
  planned: "planned plan expected anticipated",
  postponement: "postponement disaster relief",
  prior: "prior previous",
  received: "received recd rcvd",
  rejected: "rejected reject",
  request: "request requested 4868 extension ext",
  residence: "residence resident residency res",
  return: "return rtn",
  second: "second 2nd q2",
  sent: "sent submitted mailed transmitted",
  spouse: "spouse sp",
  state: "state st",
  tax: "tax taxes",
  third: "third 3rd q3",
  total: "total tot",
  withheld: "withheld withholding wh",
  year: "year yr",
};
const WORD_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(SAME_WORDS).flatMap(([word, same]) =>
    same.split(" ").map((one) => [one, word] as const)
  )
);

/** Written forms that are more than one word, or that punctuation would split. */
const WRITTEN_FORMS: readonly (readonly [written: RegExp, words: string])[] = [
  [/\bw\/h\b/g, " withheld "],
  [/\bt\/p\b/g, " client "],
  [/\bw\//g, " with "],
  [/#/g, " number "],
  [/\b(on |from |per )?(w-?2|1099)s?\b/g, " "],
  [/\blast( name)?,? first( name)?\b/g, " name "],
  [/\b(quarterly|qtrly|qtr) est(imate)?s?\b/g, " estimated payments "],
  [/'(\d\d)\b/g, " 20$1 "],
  [/'(s|re)\b/g, " "],
  [/\be-?fil(ed?|ing)\b/g, " filed "],
  [/\bto date\b/g, " "],
  [/\blast[ -]year\b/g, " prior "],
  [/\bprior year\b/g, " prior "],
  [/\bpy\b/g, " prior "],
  [/\b(cy|current year)\b/g, " "],
  [/\bnext year\b/g, " next "],
  [/\bfye\b/g, " fiscal year ends "],
  [/\bes\b/g, " estimated payments "],
  [/\bout of (the )?country\b/g, " country "],
  [/\bform 4868\b/g, " 4868 "],
];

/** The number of a line of Form 4868, after the word line or before its caption: `Line 7`, `7 Amount you're paying`. */
const LINE = /(?:\bline |^\s*(?=[4-8][\s).:]))(\d)\b/;
/** The words that a line of Form 4868 adds: line 7 is what is paid with the request. */
const LINE_WORDS: Readonly<Record<string, string>> = { 7: "request payments" };

/** Words that do not change what a heading means. Nor does a single letter. */
const FILLERS = new Set(
  "amount amounts amt and are by federal fed for full income installment installments in is made of or quarter qtr quarterly so far the to us usd you your".split(
    " "
  )
);

/** The words of a heading. */
export interface HeadingWords {
  /** Each word once, in the order of the alphabet. */
  readonly words: readonly string[];
  /** The number of the line of Form 4868 that the heading names. */
  readonly line?: string | undefined;
}

/**
 * What a heading says, whatever its order, capitals, punctuation, units and shortenings.
 *
 * @param heading - The text of the cell.
 * @param taxYear - The tax year of the list. A heading with this year is one without a year.
 *
 * @example
 * headingWords("2024 Total Tax ($)", 2025).words //=> ["prior", "tax", "total"]
 */
export function headingWords(heading: string, taxYear: number): HeadingWords {
  const lower = heading
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[’‘]/g, "'");
  const [, line] = LINE.exec(lower) ?? [];
  const plain = WRITTEN_FORMS.reduce(
    (text, [written, words]) => text.replace(written, words),
    lower.replace(LINE, ` ${LINE_WORDS[line ?? ""] ?? ""} `)
  );
  const words = new Set<string>();
  for (const word of plain.split(/[^a-z0-9]+/)) {
    if (word.length < 2 || FILLERS.has(word)) continue;
    const known = WORD_OF.get(word);
    if (known !== undefined) words.add(known);
    else if (/^20\d\d$/.test(word)) addYear(words, Number(word) - taxYear, word);
    // A short number counts something, such as the payments in the column.
    else if (!/^\d\d$/.test(word)) words.add(word);
  }
  return { words: [...words].toSorted(), line };
}

/** The texts of a list are compared with headings at each reading of it, and a list is read whenever another row is selected. */
const MOST_REMEMBERED = 5_000;
/** What tells one meaning of a heading from another: its words, or the line of Form 4868 where it has none. */
export const headingKey = remembered(
  (heading: string, taxYear: number): string => {
    const { words, line } = headingWords(heading, taxYear);
    const isLine = words.length === 0 || words.join() === "checked";
    return isLine ? `line ${line ?? ""}` : words.join(" ");
  },
  (heading, taxYear) => `${String(taxYear)} ${heading}`,
  MOST_REMEMBERED
);

/** Whether a heading is that of a number which names a client, such as "Client #". It has no year. */
export function namesNumber(heading: string): boolean {
  return headingWords(heading, 0).words.includes("number");
}

function addYear(words: Set<string>, yearsLater: number, written: string): void {
  if (yearsLater === -1) words.add("prior");
  else if (yearsLater === 1) words.add("next");
  else if (yearsLater !== 0) words.add(written);
}
