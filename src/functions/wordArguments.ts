import { closest } from "fastest-levenshtein";
import { FILER_TYPES, type FilerType } from "../calculation/filerType";
import { FILING_STATUSES, type FilingStatus } from "../calculation/filingStatus";
import type { InstallmentNumber } from "../calculation/dueDate/installmentDueDate";
import { isState, type State } from "../calculation/state";
import { InputError } from "../inputError";
import { SEVERITIES, type Severity } from "../rules/requestWords";
import { ruleTables, type RuleTable } from "../rules/ruleTables";
import { cellValue, isBlankOrZero, shown, type CellValue } from "./cells";

const YES: readonly CellValue[] = [true, 1, "yes", "y", "x", "true", "1"];
const NO: readonly CellValue[] = [false, 0, "no", "n", "false", "0"];

const LONGEST_WORD = 200;

/** A word as it is compared: small letters, single spaces. What is too long for any word stays as it is. */
function plain(value: CellValue): CellValue {
  return typeof value === "string" && value.length <= LONGEST_WORD
    ? value.trim().toLowerCase().replace(/\s+/g, " ")
    : value;
}

/**
 * Reads who files.
 *
 * @returns `resident` when left out.
 */
export function filerType(name: string, cell: unknown): FilerType {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return "resident";
  const word = plain(value);
  const known = FILER_TYPES.find((filerType) => filerType === word);
  if (!known) throw new InputError(name, `${shown(value)} is none of ${FILER_TYPES.join(", ")}`);
  return known;
}

/** What the trade writes for each status, beside the words themselves. */
const STATUS_WORDS: Readonly<Record<FilingStatus, readonly string[]>> = {
  single: ["s"],
  joint: ["mfj", "married filing jointly", "married joint"],
  separate: ["mfs", "married filing separately", "married separate"],
  head: ["hoh", "head of household"],
  survivor: ["qss", "qualifying surviving spouse", "surviving spouse"],
};

/** Reads a filing status by its word or the trade's abbreviation. */
export function filingStatus(name: string, cell: unknown): FilingStatus {
  const value = cellValue(cell);
  const word = plain(value);
  const known = FILING_STATUSES.find(
    (status) => status === word || (typeof word === "string" && STATUS_WORDS[status].includes(word))
  );
  if (known) return known;
  const wanted = `give ${FILING_STATUSES.join(", ")}, or S, MFJ, MFS, HOH, QSS`;
  if (isBlankOrZero(value)) throw new InputError(name, `is empty; ${wanted}`);
  throw new InputError(name, `${shown(value)} is no filing status; ${wanted}`);
}

/**
 * Reads a state by its postal code, or `foreign`.
 *
 * @returns `undefined` when left out.
 */
export function state(name: string, cell: unknown): State | undefined {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return undefined;
  const word = plain(value);
  const code = word === "foreign" ? word : typeof word === "string" ? word.toUpperCase() : "";
  if (!isState(code)) {
    throw new InputError(
      name,
      `${shown(value)} is no state; give a postal code such as ME, or foreign`
    );
  }
  return code;
}

/** Reads a yes or no; blank is no. */
export function yesNo(name: string, cell: unknown): boolean {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return false;
  const word = plain(value);
  if (YES.includes(word)) return true;
  if (NO.includes(word)) return false;
  throw new InputError(
    name,
    `${shown(value)} is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0`
  );
}

/** Reads the number of an installment, 1 to 4. */
export function installmentNumber(name: string, cell: unknown): InstallmentNumber {
  const value = cellValue(cell);
  const number = typeof value === "string" && value.trim() !== "" ? Number(value) : value;
  if (number === 1 || number === 2 || number === 3 || number === 4) return number;
  throw new InputError(name, `${shown(value)} is no installment; give 1, 2, 3 or 4`);
}

/** Reads a small count, such as of children; blank is none. */
export function count(name: string, cell: unknown, most: number): number {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return 0;
  const number = typeof value === "string" ? Number(value) : value;
  if (typeof number === "number" && Number.isInteger(number) && number > 0 && number <= most)
    return number;
  throw new InputError(
    name,
    `${shown(value)} is no count; give a whole number from 0 to ${String(most)}`
  );
}

/** Reads down to which gravity findings count; blank is down to a risk. */
export function gravityCounted(name: string, cell: unknown): readonly Severity[] {
  const value = cellValue(cell);
  const least = isBlankOrZero(value) ? "risk" : SEVERITIES.find((word) => word === plain(value));
  if (!least) throw new InputError(name, `${shown(value)} is none of ${SEVERITIES.join(", ")}`);
  return SEVERITIES.slice(0, SEVERITIES.indexOf(least) + 1);
}

/** Reads the length of a memo: short, the default, or full. */
export function memoLength(name: string, cell: unknown): "short" | "full" {
  const value = cellValue(cell);
  const word = isBlankOrZero(value) ? "short" : plain(value);
  if (word === "short" || word === "full") return word;
  throw new InputError(name, `${shown(value)} is neither short nor full`);
}

/** Reads the name of a rules table: its id or its title, with spaces or hyphens. */
export function figure(name: string, cell: unknown): RuleTable {
  const value = cellValue(cell);
  const ids = [...ruleTables.keys()];
  if (isBlankOrZero(value))
    throw new InputError(
      name,
      "is empty; give the name of a table such as underpayment rate, EXT.RULETABLES lists them all"
    );
  const word = String(plain(value)).slice(0, LONGEST_WORD);
  const byTitle = [...ruleTables.values()].find(({ title }) => plain(title) === word);
  const table = ruleTables.get(word.replace(/ /g, "-")) ?? byTitle;
  if (table) return table;
  const nearest = closest(word.slice(0, 60).replace(/ /g, "-"), ids);
  throw new InputError(
    name,
    `${shown(value)} is no figure of the rules; the nearest is ${nearest}, EXT.RULETABLES lists them all`
  );
}
