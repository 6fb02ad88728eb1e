import { chartResidence } from "../../calculation/request/chartResidence";
import { deliveryService } from "../../calculation/request/deliveryService";
import { mailingAddress, type PaperAddress } from "../../calculation/request/mailingAddress";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { Given } from "../arguments/argumentKind";
import { designatedCarrier, service } from "../arguments/carrier";
import { dollarsOrYesNo } from "../arguments/dollars";
import { mailingResidence } from "../arguments/state";
import { taxYear } from "../arguments/taxYear";
import { filerType } from "../arguments/words";
import { yesNo } from "../arguments/yesNo";
import { BLANK, citation } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import {
  cellFunction,
  rowFunction,
  tableFunction,
  type WorksheetFunction,
} from "../worksheetFunction";

/** What the two forms of MAILTO have in common. */
const mailingArguments = {
  arguments: {
    taxYear,
    state: mailingResidence,
    paidWithRequest: dollarsOrYesNo,
    carrier: designatedCarrier,
    filerType,
    asLines: yesNo,
    allowUnverified: yesNo,
  },
  tables: ["mailingAddresses", "serviceCenterStreets", "privateDeliveryServices"] as const,
  law: ["Form 4868, Where To File a Paper Form 4868", "IRC section 7502(f)"],
  examples: [
    {
      formula: '=EXT.MAILTO(2025,"TX",1500)',
      answer: "Internal Revenue Service, P.O. Box 1302, Charlotte, NC 28201-1302",
    },
  ],
  note: "With a payment the address is a P.O. box, which only U.S. mail reaches. For a private delivery service it is the street address of the center.",
};

function addressFor(
  given: Given<typeof mailingArguments.arguments>,
  rules: Pick<Rulebook, "mailingAddresses" | "serviceCenterStreets">
): PaperAddress {
  const residence = chartResidence(given.state, given.filerType);
  if (residence === undefined)
    throw new InputError(
      "state",
      "The cell is blank. Enter a postal code or a name, foreign, estate or nonresident."
    );
  const isCarried = given.carrier !== undefined;
  const address = mailingAddress(given.taxYear, residence, given.paidWithRequest, isCarried, rules);
  if (address.source.confidence === "memory" && !given.allowUnverified)
    throw new NotInTableError(
      rules.mailingAddresses,
      "The address is not shown because it is unverified. Check the form's instructions, or set allowUnverified to yes."
    );
  return address;
}

const MAILTO_LINE = rowFunction({
  ...mailingArguments,
  calculate: (given, rules) => addressFor(given, rules).lines.join(", "),
});

const MAILTO_LINES = tableFunction({
  ...mailingArguments,
  calculate: (given, rules) => {
    const { lines, source } = addressFor(given, rules);
    return [
      ["Line", "Source"],
      ...lines.map((line, index) => [line, index === 0 ? citation(source) : BLANK]),
    ];
  },
});

const ASKED_AS_LINES = cellFunction({
  arguments: { asLines: yesNo },
  tables: [],
  law: [],
  examples: [],
  calculate: ({ asLines }) => asLines,
});
const AS_LINES_INDEX = Object.keys(mailingArguments.arguments).indexOf("asLines");

const MAILTO = {
  ...MAILTO_LINES,
  form: "row",
  answer: (cells) =>
    ASKED_AS_LINES.answer([cells[AS_LINES_INDEX]]) === true
      ? MAILTO_LINES.answer(cells)
      : MAILTO_LINE.answer(cells),
} satisfies WorksheetFunction;

/**
 * Mailing address for a paper Form 4868; a private delivery service gets the street address of the center.
 *
 * @customfunction MAILTO
 * @param taxYear Tax year of the form, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param state Postal code or name of the state of residence, foreign, estate (foreign estate or trust) or nonresident (Form 1040-NR).
 * @param paidWithRequest Amount paid with the request, line 7, in dollars, or yes or no; blank is no.
 * @param [carrier] Blank or no for U.S. mail; yes, or the name of a designated service, for a private delivery service.
 * @param [filerType] Blank or resident; out of country and nonresident have addresses of their own.
 * @param [asLines] Yes to return the address as lines in several cells, for one client.
 * @param [allowUnverified] Yes to return an address that is unverified; blank returns #N/A for such an address.
 * @returns {any[][]} The address on one line, or a row of headings and its lines with their source.
 */
export function mailTo(
  taxYear: unknown[][],
  state: unknown[][],
  paidWithRequest: unknown[][],
  carrier?: unknown[][],
  filerType?: unknown[][],
  asLines?: unknown[][],
  allowUnverified?: unknown[][]
): unknown[][];
export function mailTo(...cells: unknown[]): unknown[][] {
  return MAILTO.answer(cells);
}

const ISDESIGNATED = rowFunction({
  arguments: { service },
  tables: ["privateDeliveryServices"],
  law: ["IRC section 7502(f)", "Notice 2016-30"],
  examples: [
    { formula: '=EXT.ISDESIGNATED("UPS 2nd Day Air")', answer: "TRUE" },
    { formula: '=EXT.ISDESIGNATED("UPS Ground")', answer: "FALSE" },
  ],
  calculate: (given, rules) => deliveryService(given.service, rules) !== undefined,
});

/**
 * TRUE if a service is a designated private delivery service, so that timely mailing counts as timely filing.
 *
 * @customfunction ISDESIGNATED
 * @param service Carrier and service level, as the carrier writes it. One cell or a column.
 * @returns {any[][]} TRUE or FALSE.
 */
export function isDesignated(service: unknown[][]): unknown[][];
export function isDesignated(...cells: unknown[]): unknown[][] {
  return ISDESIGNATED.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const mailingFunctions = { MAILTO, ISDESIGNATED };
