import type { ArgumentKind } from "./argumentKind";

/** Kinds of arguments that are one value: a day, an amount, a word. */
export const singleKinds = {
  "tax-year": {
    title: "Tax year",
    told: "The number of the year, or the last day of a fiscal year as a day; the dates then follow that year. It is never left empty.",
    taken: ["2025", '"2025"', '"2026-06-30"'],
    refused: ["25", '"2026-06-15"', '""'],
  },
  "calendar-year": {
    title: "Calendar year",
    told: "The number of the tax year, such as `2025`. A fiscal year is refused, and it is never left empty.",
    taken: [],
    refused: [],
  },
  day: {
    title: "Day",
    told: "A worksheet date of the 1900 date system, as a cell holds it once a date is typed into it, or text written year-month-day. A time of day is dropped. Days from 1900-03-01 through 2199-12-31 are taken. An empty cell or 0 counts as left out.",
    taken: ["46127", '"2026-04-15"'],
    refused: ['"4/15/2026"', '"2026-02-30"'],
  },
  money: {
    title: "Dollars",
    told: "US dollars, zero or more, as a number or as text. Cents are kept. 0 means none; an empty cell is refused unless the argument may be left out or says otherwise, so that nobody's tax is silently nil.",
    taken: ["1234.5", '"$1,234.50"', "0"],
    refused: ["-200", '"1.234,50"', '"about 200"'],
  },
  "money-or-yes-no": {
    title: "Dollars, or yes or no",
    told: "US dollars, zero or more, or only whether there are any: yes or no. An empty cell is no.",
    taken: [],
    refused: [],
  },
  "signed-money": {
    title: "Dollars, gain or loss",
    told: "US dollars as a number or as text, negative for a loss. Cents are kept. 0 means none; an empty cell is refused.",
    taken: ["1234.5", "-200", '"(200)"', '"-$1,234.50"'],
    refused: ['"a loss"', '""'],
  },
  status: {
    title: "Filing status",
    told: "One of the five statuses by its word, by the trade's abbreviation or written out; capitals do not matter. `survivor` is a qualifying surviving spouse. It is never left empty.",
    taken: ['"single"', '"joint"', '"MFS"', '"head of household"', '"QSS"'],
    refused: ['"married"', '""'],
  },
  state: {
    title: "State",
    told: "The postal code of where the client lives, military mail areas and possessions among them, or `foreign`; capitals do not matter. Left out, it is a place without a holiday of its own.",
    taken: ['"ME"', '"oh"', '"foreign"', '""'],
    refused: ['"Maine"', '"XX"'],
  },
  "state-of-return": {
    title: "State of the return",
    told: "The postal code of the state whose return is asked about; capitals do not matter. It is never left empty.",
    taken: [],
    refused: [],
  },
  "residence-on-form": {
    title: "Residence on the form",
    told: "As the form's chart of addresses tells them apart: the postal code of the state, `foreign`, `estate` or `nonresident`; capitals do not matter. It is left empty only where the filer is abroad or a nonresident.",
    taken: [],
    refused: [],
  },
  filerType: {
    title: "FilerType",
    told: "`resident`, the ordinary case, also where the cell is empty; `abroad`, a citizen or resident living and working outside the country on the due date (line 8); `nonresident`, Form 1040-NR without wages subject to withholding (line 9).",
    taken: ['""', '"resident"', '"abroad"', '"nonresident"'],
    refused: ['"overseas"'],
  },
  "yes-no": {
    title: "Yes or no",
    told: "One of the words and signs below; capitals do not matter. An empty cell is no, unless the argument says otherwise.",
    taken: ['"yes"', '"no"', "TRUE", "FALSE", '"x"', "1", "0", '""'],
    refused: ['"maybe"', "2"],
  },
  "assumed-rate": {
    title: "Assumed rate",
    told: "A fraction a year for the days beyond the last published rate, or `latest` for the last published one carried on. Left out or 0, such days answer `#N/A`. A percentage typed into a cell is a fraction already.",
    taken: ["7%", "0.07", '"7%"', '"latest"'],
    refused: ["7", "-1%", '"current"'],
  },
  share: {
    title: "Share",
    told: 'A fraction of the whole, such as `90%`, `0.9` or `"90%"`. A percentage typed into a cell is a fraction already.',
    taken: [],
    refused: [],
  },
  target: {
    title: "Aim",
    told: "`full`, also where the cell is empty: the whole shortfall. `protect`: just enough for the 90% presumption. Or a fraction of total tax to have paid in all, at most 2.",
    taken: ['"full"', '"protect"', "95%", "1.1", '""'],
    refused: ['"all"', "95"],
  },
  cushion: {
    title: "Cushion",
    told: "A fraction of total tax below 1, or dollars from 1 up. Left out, nothing is added.",
    taken: ["5%", '"5%"', "500", '""'],
    refused: ['"100%"', "-5%"],
  },
  "installment-number": {
    title: "Number of an installment",
    told: "A whole number from 1 to 4.",
    taken: ["1", "4", '"2"'],
    refused: ["0", "5", '"first"'],
  },
  count: {
    title: "Count",
    told: "A whole number; an empty cell is none.",
    taken: ["2", "0", '"1"', '""'],
    refused: ["1.5", "-1", '"two"'],
  },
  "table-name": {
    title: "Name of a table",
    told: "The name or the title of a table of the rules, in any capitals, with spaces or hyphens. `EXT.RULETABLES` lists them all; for a name nobody knows the nearest is named.",
    taken: ['"underpayment rate"', '"failure-to-pay"'],
    refused: ['"rate of interest"', '""'],
  },
  word: {
    title: "One of a few words",
    told: "One of the words named with the argument; capitals do not matter. An empty cell is the default named there, or counts as left out.",
    taken: [],
    refused: [],
  },
  carrier: {
    title: "Carrier",
    told: "Empty or no for the postal service; yes for a private delivery service, or its name and level of service as the carrier writes it.",
    taken: [],
    refused: [],
  },
  text: {
    title: "Text",
    told: "Any text.",
    taken: [],
    refused: [],
  },
} as const satisfies Readonly<Record<string, ArgumentKind>>;
