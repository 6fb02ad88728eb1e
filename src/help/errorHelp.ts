import type { FunctionHelp } from "./helpModel";

/** An error that a cell can show. */
export interface ErrorHelp {
  /** Its code, between backticks. */
  readonly code: string;
  readonly cause: string;
  /** What to do about it. Code is between backticks. */
  readonly remedy: string;
}

const RELOAD =
  "select the icon of the add-in under Home, Add-ins, open the function guide and select Recalculate this workbook";

const BAD_ARGUMENT: ErrorHelp = {
  code: "`#VALUE!`",
  cause: "An argument cannot be read.",
  remedy:
    "Select the cell and open the warning sign beside it. The message names the argument, the value entered and what is accepted.",
};
const NOT_IN_TABLE: ErrorHelp = {
  code: "`#N/A`",
  cause: "A rule table has no figure for the date, or the figure is unverified.",
  remedy:
    "The message behind the warning sign names the table and the dates it covers. A figure of one year is never used for another. Check for a newer version of the add-in, or use the official text.",
};
const NO_RATE: ErrorHelp = {
  ...NOT_IN_TABLE,
  remedy: `${NOT_IN_TABLE.remedy} For interest after the last published quarter, enter \`assumedRate\`.`,
};
const NO_ROOM_FOR_COLUMN: ErrorHelp = {
  code: "`#SPILL!`",
  cause:
    "The arguments are columns, and the cells below are not empty or the formula is in an Excel table.",
  remedy: "Clear those cells, or move the formula. In an Excel table, use one formula per row.",
};
const NO_ROOM_FOR_TABLE: ErrorHelp = {
  code: "`#SPILL!`",
  cause: "Cells that the answer needs are not empty, or the formula is in an Excel table.",
  remedy: "Clear those cells, or move the formula.",
};
const TOO_NARROW: ErrorHelp = {
  code: "`########`",
  cause: "The column is too narrow for a date or an amount.",
  remedy:
    "Widen the column: double-click the line to the right of its letter. The guide widens the columns of what it inserts.",
};
const STILL_LOADING: ErrorHelp = {
  code: "`#BUSY!`",
  cause: "The add-in is still loading.",
  remedy: `Wait a few seconds. If the error stays, ${RELOAD}.`,
};
const UNKNOWN_NAME: ErrorHelp = {
  code: "`#NAME?`",
  cause: "The function name is misspelled, or the add-in is not loaded on this computer.",
  remedy: `Check the name. To load the add-in, ${RELOAD}.`,
};
const FROM_ARGUMENT: ErrorHelp = {
  code: "Any other error",
  cause: "A cell among the arguments shows it.",
  remedy: "Correct that cell.",
};

/** Every error, for the page on errors. */
export const ALL_ERRORS: readonly ErrorHelp[] = [
  BAD_ARGUMENT,
  NO_RATE,
  NO_ROOM_FOR_COLUMN,
  NO_ROOM_FOR_TABLE,
  TOO_NARROW,
  STILL_LOADING,
  UNKNOWN_NAME,
  FROM_ARGUMENT,
];

/**
 * The errors that a function may show, by its arguments, its rule tables and its form.
 *
 * @param help - The function.
 */
export function errorsOf({ arguments: given, tables, form }: FunctionHelp): readonly ErrorHelp[] {
  const takesRate = given.some(({ kind }) => kind.id === "assumed-rate");
  const looksUpTable =
    given.some(({ kind }) => kind.id === "table-name") &&
    given.some(({ kind }) => kind.id === "date");
  const hasArguments = given.length > 0;
  return [
    ...(hasArguments ? [BAD_ARGUMENT] : []),
    ...(takesRate ? [NO_RATE] : tables.length > 0 || looksUpTable ? [NOT_IN_TABLE] : []),
    ...(form === "row" ? [NO_ROOM_FOR_COLUMN] : form === "table" ? [NO_ROOM_FOR_TABLE] : []),
    STILL_LOADING,
    UNKNOWN_NAME,
    ...(hasArguments ? [FROM_ARGUMENT] : []),
  ];
}
