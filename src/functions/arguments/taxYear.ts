import { yearOf } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";
import {
  calendarTaxYear,
  fiscalTaxYear,
  isFiscalYear,
  type TaxYear,
} from "../../calculation/taxYear";
import { isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import type { CellKind } from "./argumentKind";
import { readDate } from "./date";

const ENTER = "Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.";
/** A whole number below this one is a year. A worksheet date that small is before 1928. */
export const FIRST_SERIAL_READ_AS_DATE = 10_000;
const FIRST_YEAR = 1000;

function taxYearOf(value: CellValue, name: string): TaxYear {
  const number = typeof value === "string" && /^\s*\d{4}\s*$/.test(value) ? Number(value) : value;
  const notAYear = (): InputError =>
    new InputError(name, `${shown(value)} is not a tax year. ${ENTER}`);
  if (typeof number === "number" && number < FIRST_SERIAL_READ_AS_DATE) {
    if (Number.isInteger(number) && number >= FIRST_YEAR) return calendarTaxYear(number);
    throw notAYear();
  }
  const lastDay = readDate(value);
  if (lastDay === undefined || yearOf(lastDay) <= FIRST_YEAR) throw notAYear();
  const fiscal = fiscalTaxYear(lastDay);
  if (!fiscal)
    throw new InputError(
      name,
      `${shortDate(lastDay)} is not within six days before or three days after the end of a month, so no tax year ends on it. ${ENTER}`
    );
  return fiscal;
}

/** A tax year: the number of a calendar year, or the last date of a fiscal year. */
export const taxYear: CellKind<TaxYear> = {
  id: "tax-year",
  title: "Tax year",
  description:
    "The tax year in four digits, or the last date of a fiscal year. All dates then follow that year. A 52/53-week year takes the date on which it ends; its dates count from the nearest end of a month (IRC section 441(f)(2)(A)). A blank cell returns an error.",
  accepted: ["2025", '"2025"', '"6/30/2026"', '"12/27/2025"'],
  notAccepted: ["25", '"6/15/2026"', '""'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { enter: ENTER },
  read: taxYearOf,
};

/** A tax year that is a calendar year: the state rules cover no others. */
export const calendarYear: CellKind<TaxYear> = {
  ...taxYear,
  id: "calendar-year",
  title: "Calendar year",
  description:
    "The number of the tax year, such as `2025`. A fiscal year or a blank cell returns an error.",
  accepted: [],
  notAccepted: [],
  read: (value, name) => {
    const year = taxYearOf(value, name);
    if (!isFiscalYear(year)) return year;
    throw new InputError(
      name,
      `${shortDate(year.closesOn ?? year.lastDay)} is the end of a fiscal year. The state rules cover calendar years only. Enter a year such as 2025.`
    );
  },
};
