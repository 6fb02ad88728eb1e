import { deliveryService } from "../calculation/request/deliveryService";
import { mailingAddress } from "../calculation/request/mailingAddress";
import { requestMethods, type MethodForClient } from "../calculation/request/requestMethods";
import { InputError } from "../inputError";
import { rulebook } from "../rules/rulebook";
import { cellValue, isBlankOrZero, shown } from "./cells";
import { client, datesOf, type ClientCells } from "./client";
import {
  day as readDay,
  optionalDay,
  requireAfterTaxYear,
  taxYear as readTaxYear,
} from "./dayArguments";
import { carrierOf, isPaying, mailingResidence } from "./filingArguments";
import { money } from "./moneyArguments";
import { citation, dayCell, EMPTY, fromMemory, type AnswerTable } from "./results";
import { answered, answerRows, answerTable, single, singles } from "./rows";
import { yesNo } from "./wordArguments";

interface RouteCells extends ClientCells {
  readonly paidWithRequest: unknown;
  readonly asOf: unknown;
  readonly rejectedOn: unknown;
}

function waysOf(cells: RouteCells): readonly MethodForClient[] {
  const who = client(cells);
  const rejectedOn = optionalDay("rejectedOn", cells.rejectedOn);
  if (rejectedOn !== undefined) requireAfterTaxYear("rejectedOn", rejectedOn, who.taxYear);
  const input = {
    taxYear: who.taxYear,
    dates: datesOf(who),
    paidWithRequest: money("paidWithRequest", cells.paidWithRequest),
    asOf: readDay("asOf", cells.asOf),
    rejectedOn,
  };
  return requestMethods(input, rulebook);
}

/**
 * How the request is best made on a day: electronic payment marked for it, e-file, paper, or too late.
 *
 * @customfunction METHOD
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param paidWithRequest Dollars paid with the request, 0 if nothing.
 * @param asOf The day looked at.
 * @param [rejectedOn] Day an e-filed request made in time was rejected: opens the days to send it again.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} One of electronic payment, e-file, paper, too late.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year, or days to send again, that are not held.
 * @see Form 4868, how to ask; 26 CFR 1.6081-4(b); Pub. 1345
 * @example =EXT.METHOD(2025,1500,"2026-04-10") is electronic payment; =EXT.METHOD(2025,0,"2026-04-10") is e-file; =EXT.METHOD(2025,0,"2026-04-16") is too late
 */
export function method(
  taxYear: unknown[][],
  paidWithRequest: unknown[][],
  asOf: unknown[][],
  rejectedOn?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  const given = {
    taxYear,
    paidWithRequest,
    asOf,
    rejectedOn,
    state,
    filerType,
    postponementBegins,
    postponementEnds,
  };
  return answerRows(given, (cells) => {
    const [best] = waysOf(cells);
    return best && best.closedBecause === undefined ? best.method : "too late";
  });
}

/**
 * Every way to make the request: open or why not, its last day, what it needs, what proves it. Spills; put it outside tables.
 *
 * @customfunction METHODLINES
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year.
 * @param paidWithRequest Dollars paid with the request, 0 if nothing.
 * @param asOf The day looked at.
 * @param [rejectedOn] Day an e-filed request made in time was rejected: opens the days to send it again.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} A header row, then a row a way, the open ones first.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year, or days to send again, that are not held.
 * @see Form 4868, how to ask; 26 CFR 1.6081-4(b); Pub. 1345
 * @example =EXT.METHODLINES(2025,1500,"2026-04-10") begins with electronic payment
 */
export function routeLines(
  taxYear: unknown,
  paidWithRequest: unknown,
  asOf: unknown,
  rejectedOn?: unknown,
  state?: unknown,
  filerType?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  const header = ["Way", "Open", "Last day", "Needs", "Proof", "Source"];
  return answerTable(header, (): AnswerTable => {
    const given = {
      taxYear,
      paidWithRequest,
      asOf,
      rejectedOn,
      state,
      filerType,
      postponementBegins,
      postponementEnds,
    };
    return waysOf(singles(given)).map((way) => [
      way.method,
      way.closedBecause === undefined ? "yes" : `no: ${way.closedBecause}`,
      dayCell(way.lastDay),
      way.how,
      way.proof,
      citation(way.source),
    ]);
  });
}

/**
 * Where a paper request is mailed, by the edition of the form: with payment a post office box, which only the postal service reaches; by private carrier the street address of the center.
 *
 * @customfunction MAILTO
 * @param taxYear Tax year of the form such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param state Postal code of the state of residence, foreign, estate (foreign estate or trust) or nonresident (other 1040-NR and 1040-SS).
 * @param paidWithRequest Dollars paid with the request, or yes or no; blank is no.
 * @param [carrier] Blank or no for the postal service; yes, or the name of a designated service, for a private carrier.
 * @param [filerType] Blank or resident; abroad and nonresident have addresses of their own.
 * @param [asLines] Yes to spill the address as lines, for one client.
 * @returns {any[][]} The address on one line, marked where it is from memory; or a header row and its lines with their source.
 * @throws `#VALUE!` for an argument that cannot be read, or a carrier's service that is not designated; `#N/A` for an edition of the form that is not held.
 * @see Form 4868, chart of addresses; 26 U.S.C. 7502(f)
 * @example =EXT.MAILTO(2025,"TX",1500) is Internal Revenue Service, P.O. Box 1302, Charlotte, NC 28201-1302
 */
export function mailTo(
  taxYear: unknown[][],
  state: unknown[][],
  paidWithRequest: unknown[][],
  carrier?: unknown[][],
  filerType?: unknown[][],
  asLines?: unknown[][]
): unknown[][] {
  const address = (
    cells: Readonly<
      Record<"taxYear" | "state" | "paidWithRequest" | "carrier" | "filerType", unknown>
    >
  ) => {
    const by = carrierOf("carrier", cells.carrier);
    if (by === "not designated")
      throw new InputError(
        "carrier",
        `${shown(cellValue(cells.carrier))} is no designated private delivery service; a mailing by it would not count as filed in time`
      );
    return mailingAddress(
      readTaxYear("taxYear", cells.taxYear),
      mailingResidence(cells.state, cells.filerType),
      isPaying("paidWithRequest", cells.paidWithRequest),
      by !== undefined,
      rulebook
    );
  };
  const given = { taxYear, state, paidWithRequest, carrier, filerType };
  if (!answered(() => yesNo("asLines", single("asLines", asLines)))) {
    return answerRows(given, (cells) => {
      const { lines, source } = address(cells);
      return lines.join(", ") + fromMemory(source);
    });
  }
  return answerTable(["Line", "Source"], (): AnswerTable => {
    const { lines, source } = address(singles(given));
    return lines.map((line, index) => [line, index === 0 ? citation(source) : EMPTY]);
  });
}

/**
 * Whether a private delivery service is a designated one, so that mailing by it in time is filing in time.
 *
 * @customfunction ISDESIGNATED
 * @param service Carrier and service level as the carrier names it; one cell or a column.
 * @returns {any[][]} TRUE or FALSE.
 * @throws `#VALUE!` for an empty cell.
 * @see 26 U.S.C. 7502(f); Notice 2016-30
 * @example =EXT.ISDESIGNATED("UPS 2nd Day Air") is TRUE; =EXT.ISDESIGNATED("UPS Ground") is FALSE
 */
export function carrier(service: unknown[][]): unknown[][] {
  return answerRows({ service }, (cells) => {
    const value = cellValue(cells.service);
    if (isBlankOrZero(value))
      throw new InputError("service", "is empty; give the carrier and its service level");
    return deliveryService(String(value), rulebook) !== undefined;
  });
}
