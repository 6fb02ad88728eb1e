import { QUALIFYING_TESTS, type QualifyingTest } from "../../calculation/dueDate/abroadDate";
import { FILER_TYPES, type FilerType } from "../../calculation/filerType";
import { FILING_STATUSES, type FilingStatus } from "../../calculation/filingStatus";
import { CALENDAR_SUBJECTS, type CalendarSubject } from "../../rules/calendarWords";
import { METHODS, SEVERITIES, type RequestMethod, type Severity } from "../../rules/requestWords";
import { isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";

/** The abbreviations and names of each status, beside the words themselves. */
const STATUS_WORDS: Readonly<Record<FilingStatus, readonly string[]>> = {
  single: ["s"],
  joint: ["mfj", "married filing jointly", "married joint"],
  separate: ["mfs", "married filing separately", "married separate"],
  head: ["hoh", "head of household"],
  survivor: ["qss", "qualifying surviving spouse", "surviving spouse"],
};

const ENTER_STATUS = "Enter single, joint, separate, head or survivor, or S, MFJ, MFS, HOH or QSS.";

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
    const word = plainWord(value);
    const known = FILING_STATUSES.find(
      (status) =>
        status === word || (typeof word === "string" && STATUS_WORDS[status].includes(word))
    );
    if (known) return known;
    throw new InputError(name, `${shown(value)} is not a filing status. ${ENTER_STATUS}`);
  },
};

const FILER_TYPE_WORDS: Readonly<Record<FilerType, readonly string[]>> = {
  resident: [],
  "out of country": ["out of the country", "abroad"],
  nonresident: ["nonresident alien"],
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
  read: (value, name) => {
    const word = plainWord(value);
    const known = FILER_TYPES.find(
      (type) => type === word || (typeof word === "string" && FILER_TYPE_WORDS[type].includes(word))
    );
    if (known) return known;
    throw new InputError(
      name,
      `${shown(value)} is not a filer type. Enter resident, out of country or nonresident, or leave it blank.`
    );
  },
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
  read: (value, name) => {
    const known = METHODS.find((word) => word === plainWord(value));
    if (known) return known;
    throw new InputError(
      name,
      `${shown(value)} is not a method. Enter electronic payment, e-file or paper.`
    );
  },
};

const COUNTED_BY_DEFAULT: Severity = "risk";
const from = (least: Severity): readonly Severity[] =>
  SEVERITIES.slice(0, SEVERITIES.indexOf(least) + 1);

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
  read: (value, name) => {
    const least = SEVERITIES.find((word) => word === plainWord(value));
    if (least) return from(least);
    throw new InputError(
      name,
      `${shown(value)} is not a severity. Enter problem, risk or reminder.`
    );
  },
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
  read: (value, name) => {
    const word = plainWord(value);
    if (word === "short" || word === "full") return word;
    throw new InputError(name, `${shown(value)} is not a length. Enter short or full.`);
  },
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
  read: (value, name) => {
    const known = SUBJECTS.find((word) => word === plainWord(value));
    if (known) return known;
    throw new InputError(
      name,
      `${shown(value)} is not a subject. Enter return, retirement, gift, foreign, elections or all.`
    );
  },
};

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
  whenBlank: { enter: "Enter physical presence or bona fide residence." },
  read: (value, name) => {
    const known = QUALIFYING_TESTS.find((word) => word === plainWord(value));
    if (known) return known;
    throw new InputError(
      name,
      `${shown(value)} is not a qualifying test. Enter physical presence or bona fide residence.`
    );
  },
};
