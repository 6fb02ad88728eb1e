/** Reads a letter as a client would: what it states of dates, amounts and the extension. It uses no code from src. */

/** What a letter states. Dates are worksheet dates, amounts are dollars; `undefined` where the letter does not state it. */
export interface LetterReading {
  readonly sentences: readonly string[];
  /** "You have until …". */
  readonly hasUntil: number | undefined;
  /** "was due …" and "is due …", with or without a condition. */
  readonly wasDue: readonly number[];
  readonly isDue: readonly number[];
  readonly filedOn: number | undefined;
  readonly requestBy: number | undefined;
  readonly resendBy: number | undefined;
  readonly totalTax: number | undefined;
  readonly payments: number | undefined;
  /** The payment with the request: its amount, and its date. */
  readonly withRequest: number;
  readonly withRequestOn: number | undefined;
  readonly balance: number;
  readonly balancePaidOn: number | undefined;
  /** Dates that a sentence in the future tense, or a request to the client, names. */
  readonly future: readonly number[];
  /** Dates that a sentence in the past tense names. */
  readonly past: readonly number[];
  /** Planned dates in the sentence on the cost. */
  readonly fileOn: number | undefined;
  readonly payOn: number | undefined;
  /** Penalties and interest; zero for "no penalties or interest". */
  readonly cost: number | undefined;
  /** Whether the letter counts on an extension, with or without a condition. */
  readonly countsOnExtension: boolean;
}

const MONTH_NAMES =
  "January|February|March|April|May|June|July|August|September|October|November|December";
const DATE = `((?:${MONTH_NAMES}) \\d{1,2}, \\d{4})`;
const AMOUNT = String.raw`(\$[\d,]+\.\d\d)`;

/** A date as a letter writes it, as a worksheet date: 1970-01-01 is 25569. */
export function readDate(written: string): number {
  const [month = "", date = "", year = ""] = written.replace(",", "").split(" ");
  const index = MONTH_NAMES.split("|").indexOf(month);
  if (index < 0) throw new RangeError(`"${written}" is not a date`);
  return Date.UTC(Number(year), index, Number(date)) / 86_400_000 + 25_569;
}

const readAmount = (written: string): number => Number(written.replace(/[$,]/g, ""));

function all(text: string, pattern: string): readonly string[] {
  return [...text.matchAll(new RegExp(pattern, "g"))].map(([, first = ""]) => first);
}

/** Reads the text of a letter. */
export function readLetter(text: string): LetterReading {
  const date = (pattern: string): number | undefined => {
    const [found] = all(text, pattern.replace("DATE", DATE));
    return found === undefined ? undefined : readDate(found);
  };
  const dates = (...patterns: readonly string[]): readonly number[] =>
    patterns.flatMap((pattern) => all(text, pattern.replace("DATE", DATE)).map(readDate));
  const amount = (...patterns: readonly string[]): number | undefined => {
    const [found] = patterns.flatMap((pattern) => all(text, pattern.replace("AMOUNT", AMOUNT)));
    return found === undefined ? undefined : readAmount(found);
  };
  const both = date("[Ii]f you file and pay the balance on DATE");
  const cost = amount("we expect about AMOUNT in penalties and interest");
  return {
    sentences: text.split(/(?<=\.) (?=[A-Z])/),
    hasUntil: date("You have until DATE"),
    wasDue: dates("was due DATE"),
    isDue: dates("is due DATE", "will be due DATE", "will have until DATE"),
    filedOn: date("was filed on DATE"),
    requestBy: date("We plan to request, by DATE"),
    resendBy: date("resend it by DATE"),
    totalTax: amount("your total tax at AMOUNT"),
    payments: amount("payments so far at AMOUNT"),
    withRequest:
      amount(
        "assumes that AMOUNT is paid by",
        "assume that AMOUNT was paid by",
        "assume that AMOUNT was paid with the request",
        "Please pay AMOUNT by"
      ) ?? 0,
    withRequestOn: date("was paid with the request on DATE"),
    balance: amount("balance of AMOUNT", "estimate, AMOUNT is (?:still )?unpaid") ?? 0,
    balancePaidOn: date(String.raw`balance of \$[\d,.]+ was paid on DATE`),
    future: dates(
      "You have until DATE",
      "will have until DATE",
      "will be due DATE",
      "is due DATE",
      "disaster postponement moves the due date [^.]* to DATE",
      "We plan to request, by DATE",
      "resend it by DATE",
      String.raw`Please pay \$[\d,.]+ by DATE`,
      String.raw`\$[\d,.]+ is paid by DATE`,
      "any amount not paid by DATE",
      "[Ii]f you [^.]*?file on DATE",
      "[Ii]f you pay the balance on DATE",
      "[Ii]f you file and pay the balance on DATE"
    ),
    past: dates(
      "was due DATE",
      "the payment due date was DATE",
      "was filed on DATE",
      String.raw`was paid (?:by|on) DATE`,
      "was paid with the request on DATE",
      "On DATE, we requested",
      "corrected request was made by DATE"
    ),
    fileOn: both ?? date("[Ii]f you [^.]*?file on DATE"),
    payOn: both ?? date("[Ii]f you pay the balance on DATE"),
    cost: cost ?? (text.includes("we expect no penalties or interest") ? 0 : undefined),
    countsOnExtension:
      /You have until|With the extension, (?:if|with)|the extended due date|[Ee]ven with (?:an|the) extension|If it was received on time/.test(
        text
      ),
  };
}
