import { QUALIFYING_TESTS, type QualifyingTest } from "../../calculation/dueDate/abroadDate";
import type { FilerType } from "../../calculation/filerType";
import type { FilingStatus } from "../../calculation/filingStatus";
import { CALENDAR_SUBJECTS, type CalendarSubject } from "../../rules/calendarWords";
import { SEVERITIES, type RequestMethod, type Severity } from "../../rules/requestWords";
import { isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";
import { wordReader, wordsAlone } from "./wordReader";

/** The abbreviations and names of each status, beside the words themselves. */
const STATUS_WORDS: Readonly<Record<FilingStatus, readonly string[]>> = {
  single: ["s"],
  joint: ["mfj", "married filing jointly", "married filing joint", "married joint", "jointly"],
  separate: [
    "mfs",
    "married filing separately",
    "married filing separate",
    "married separate",
    "separately",
  ],
  head: ["hoh", "head of household"],
  survivor: ["qss", "qualifying surviving spouse", "surviving spouse", "qualifying widow(er)"],
};
/** Words that two statuses share. */
const MARRIED = ["m", "married", "married filing"];

const ENTER_STATUS = "Enter single, joint, separate, head or survivor, or S, MFJ, MFS, HOH or QSS.";
const statusOf = wordReader({
  words: STATUS_WORDS,
  what: "a filing status",
  enter: ENTER_STATUS,
});

/** A filing status. A blank cell returns an error. */
export const filingStatus: CellKind<FilingStatus> = {
  id: "filing-status",
  title: "Filing status",
  description:
    "One of the five statuses, by its word, its abbreviation or its full name, in any case. `survivor` is a qualifying surviving spouse. A blank cell returns an error.",
  accepted: ['"single"', '"joint"', '"MFS"', '"head of household"', '"QSS"'],
  notAccepted: ['"married"', '""'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { enter: ENTER_STATUS },
  read: (value, name) => {
    if (MARRIED.includes(String(plainWord(value))))
      throw new InputError(
        name,
        `${shown(value)} can mean two filing statuses. Enter joint (MFJ) or separate (MFS).`
      );
    return statusOf(value, name);
  },
};

const FILER_TYPE_WORDS: Readonly<Record<FilerType, readonly string[]>> = {
  resident: [],
  "out of country": ["out of the country", "abroad"],
  nonresident: ["nonresident alien", "nra"],
};

/** The type of filer, as far as it moves dates. A blank cell is a resident. */
export const filerType: CellKind<FilerType> = {
  id: "filer-type",
  title: "Filer type",
  description:
    "`resident`, also if blank. `out of country`: a U.S. citizen or resident who lives and works outside the United States and Puerto Rico on the due date (line 8). `nonresident`: Form 1040-NR without wages subject to withholding (line 9).",
  accepted: ['""', '"resident"', '"out of country"', '"nonresident"'],
  notAccepted: ['"overseas"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: "resident" },
  read: wordReader({
    words: FILER_TYPE_WORDS,
    what: "a filer type",
    enter: "Enter resident, out of country or nonresident, or leave it blank.",
  }),
};

/** The words of the form for each method. */
const METHOD_WORDS: Readonly<Record<RequestMethod, readonly string[]>> = {
  "electronic payment": ["direct pay", "eftps", "pay electronically"],
  "e-file": ["e-filed", "e-filing", "electronically", "electronic filing"],
  paper: ["paper form", "mail", "by mail"],
};

/** How the request is made. A blank cell means that it is not known. */
export const method: CellKind<RequestMethod | undefined> = {
  id: "method",
  title: "Method",
  description:
    "`electronic payment`, `e-file` or `paper`, in any case. A blank cell means not chosen yet.",
  accepted: ['"electronic payment"', '"e-file"', '"paper"', '""'],
  notAccepted: ['"fax"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: undefined },
  read: wordReader({
    words: METHOD_WORDS,
    what: "a method",
    enter: "Enter electronic payment, e-file or paper.",
  }),
};

const COUNTED_BY_DEFAULT: Severity = "risk";
const from = (least: Severity): readonly Severity[] =>
  SEVERITIES.slice(0, SEVERITIES.indexOf(least) + 1);

const severityOf = wordReader({
  words: wordsAlone(SEVERITIES),
  what: "a severity",
  enter: "Enter problem, risk or reminder.",
});

/** The severities that are counted, from the most serious down to the one entered. A blank cell counts problems and risks. */
export const minimumSeverity: CellKind<readonly Severity[]> = {
  id: "minimum-severity",
  title: "Minimum severity",
  description:
    "`problem`, `risk` or `reminder`. A blank cell is risk: problems and risks are counted.",
  accepted: ['"problem"', '"risk"', '"reminder"', '""'],
  notAccepted: ['"all"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: from(COUNTED_BY_DEFAULT) },
  read: (value, name) => from(severityOf(value, name)),
};

/** The length of a letter. A blank cell is short. */
export const letterLength: CellKind<"short" | "full"> = {
  id: "length",
  title: "Length",
  description: "`short` or `full`. A blank cell is short.",
  accepted: ['"short"', '"full"', '""'],
  notAccepted: ['"long"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: "short" },
  read: wordReader({
    words: { short: [], full: [] },
    what: "a length",
    enter: "Enter short or full.",
  }),
};

const SUBJECTS: readonly (CalendarSubject | "all")[] = [...CALENDAR_SUBJECTS, "all"];

/** The subject of a calendar. A blank cell is the return. */
export const calendarSubject: CellKind<CalendarSubject | "all"> = {
  id: "calendar-subject",
  title: "Subject",
  description:
    "`return`, also if blank: the return, its payment and the new year's estimated tax. `retirement`: contributions to plans and accounts, and their withdrawal. `gift`: Form 709. `foreign`: FBAR, Forms 8938, 3520 and 2350, and the two more months by letter out of the country. `elections`: elections and like-kind exchanges. `all`: every deadline.",
  accepted: ['""', '"return"', '"retirement"', '"gift"', '"foreign"', '"elections"', '"All"'],
  notAccepted: ['"state"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: "return" },
  read: wordReader({
    words: wordsAlone(SUBJECTS),
    what: "a subject",
    enter: "Enter return, retirement, gift, foreign, elections or all.",
  }),
};

const ENTER_TEST = "Enter physical presence or bona fide residence.";

/** How a client qualifies for the foreign earned income exclusion. */
export const qualifyingTest: CellKind<QualifyingTest> = {
  id: "qualifying-test",
  title: "Qualifying test",
  description:
    "`physical presence` (330 full days in 12 months) or `bona fide residence` (a full tax year), in any case. A blank cell returns an error.",
  accepted: ['"physical presence"', '"Bona Fide Residence"'],
  notAccepted: ['"tax home"', '""'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { enter: ENTER_TEST },
  read: wordReader({
    words: wordsAlone(QUALIFYING_TESTS),
    what: "a qualifying test",
    enter: ENTER_TEST,
  }),
};
