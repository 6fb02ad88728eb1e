import { longDate, shortDate } from "../../calendar/writtenDate";
import type { CalendarDate } from "../../calendar/calendarDate";
import { readAll } from "../../functions/arguments/argumentKind";
import { clientPlan } from "../../functions/season/rosterClient";
import { letterFacts, type LetterFacts } from "../../functions/request/letterFacts";
import { letterParagraphs, type LetterChoices } from "../../functions/request/letterParagraphs";
import { hostError } from "../../functions/cells/hostError";
import { NotInTableError } from "../../rules/notInTableError";
import { rulebook } from "../../rules/rulebook";
import { rosterClientOf } from "../list/clientReading";
import { sentenceAtCell, type ClientRow } from "../list/clientRow";
import type { PaneSettings } from "../list/rosterAnswers";
import type { NewSheet } from "../workbook/newSheet";
import { sheetName } from "../workbook/sheetName";
import { NotDone } from "../workbook/workbookHost";

/** A blank to fill in by hand, where no name is entered for the greeting. */
const BLANK_NAME = "____________________";

/** A letter to the client. */
export interface ClientLetter {
  /** Which version of the letter it is, in a few words. */
  readonly version: string;
  /** The paragraphs, without the greeting. */
  readonly paragraphs: readonly string[];
  /** What the letter leaves out and why; empty if nothing. */
  readonly leftOut: string;
}

/** Which version of the letter follows from the record. */
function versionOf({ record, request, givesTime }: LetterFacts): string {
  if (record.filedOn !== undefined) return "return filed";
  switch (request.missed) {
    case "not requested on time":
      return "no extension requested, return late";
    case "requested late":
      return "requested too late, return late";
    case "perfection period over":
      return "request rejected and not resent in time";
    case "extended date missed":
      return "extended due date passed";
    case undefined:
      break;
  }
  if (!givesTime) return "disaster postponement";
  switch (request.stage) {
    case "not requested":
      return "extension not yet requested";
    case "unconfirmed":
      return "requested, no proof yet";
    case "rejected":
      return "request rejected, to be resent";
    case "extended":
      return "extension confirmed";
    case "filed":
    case "past due":
      return "return late";
  }
}

function costOf(work: () => LetterChoices["cost"]): Pick<LetterChoices, "cost"> & {
  readonly leftOut: string;
} {
  try {
    return { cost: work(), leftOut: "" };
  } catch (thrown) {
    if (!(thrown instanceof NotInTableError)) throw thrown;
    return {
      cost: undefined,
      leftOut: `The letter does not state the cost of waiting. ${thrown.message}`,
    };
  }
}

/**
 * The letter to a client on the as-of date, as MEMO writes it, by paragraphs.
 *
 * @param client - The client's row.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @param stillNeeded - What the client still has to send, in the preparer's words; empty for nothing.
 * @returns The letter with the cost, if the rates for it are known.
 * @throws NotDone when a cell that the letter needs cannot be read.
 */
export function clientLetter(
  client: ClientRow,
  settings: PaneSettings,
  stillNeeded: string
): ClientLetter {
  try {
    const read = rosterClientOf(client, settings);
    const { given, totalTax, payments, dates, record } = read;
    const input = {
      ...readAll(clientPlan, given),
      totalTax: totalTax(),
      payments: payments(),
      dates: dates(),
      record: record(),
    };
    const facts = letterFacts(input, rulebook);
    const { cost, leftOut } = costOf(() => read.chargesWith(facts.plan.validExtension).total);
    const needed = stillNeeded.trim().replace(/\.$/, "");
    const paragraphs = letterParagraphs(facts, { cost, stillNeeded: needed });
    return {
      version: versionOf(facts),
      paragraphs: paragraphs.map(({ sentences }) => sentences.join(" ")),
      leftOut,
    };
  } catch (thrown) {
    const { message = "" } = hostError(thrown);
    throw new NotDone(`The letter cannot be written. ${sentenceAtCell(message, client)}`);
  }
}

/** The greeting, with a blank where no name is entered. */
export function greetingLine(name: string): string {
  return `Dear ${name.trim() === "" ? BLANK_NAME : name.trim()}:`;
}

/** The letter as text with a blank line between paragraphs, for the clipboard. */
export function letterText(greeting: string, { paragraphs }: ClientLetter): string {
  return [greetingLine(greeting), ...paragraphs].join("\n\n");
}

/**
 * The letter as a sheet that prints on one page.
 *
 * @param name - The client's name, for the name of the sheet and its footer.
 * @param asOf - The date of the letter.
 * @param greeting - The name in the greeting; empty for a blank to fill in.
 * @param letter - The letter.
 */
export function letterSheet(
  name: string,
  asOf: CalendarDate,
  greeting: string,
  { paragraphs }: ClientLetter
): NewSheet {
  const lines = [greetingLine(greeting), ...paragraphs].flatMap((text) => [[""], [text]]);
  return {
    name: sheetName(`Letter ${name}`),
    cells: [[longDate(asOf)], ...lines],
    widths: [88],
    formats: [],
    choices: [],
    headingRow: 1,
    isTable: false,
    page: { footer: `${name}, ${shortDate(asOf)}`, isLandscape: false, wrapsText: true },
  };
}
