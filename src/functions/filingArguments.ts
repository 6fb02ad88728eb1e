import { deliveryService } from "../calculation/request/deliveryService";
import type { MailingResidence } from "../calculation/request/mailingAddress";
import type { Carrier } from "../calculation/request/clientRequest";
import { InputError } from "../inputError";
import { METHODS, type RequestMethod } from "../rules/requestWords";
import { rulebook } from "../rules/rulebook";
import { cellValue, isBlankOrZero, shown } from "./cells";
import { money } from "./moneyArguments";
import { filerType, state, yesNo } from "./wordArguments";

/** A word as it is compared: small letters, single spaces. */
function wordIn(cell: unknown): string {
  const value = cellValue(cell);
  return typeof value === "string" ? value.trim().toLowerCase().replace(/\s+/g, " ") : "";
}

/** Whether a cell says yes or no, rather than naming something. */
function isYesOrNo(cell: unknown): boolean {
  const value = cellValue(cell);
  return (
    typeof value !== "string" ||
    ["yes", "y", "x", "true", "1", "no", "n", "false", "0"].includes(wordIn(cell))
  );
}

/** Reads how a request goes in; nothing where it is left out. */
export function requestRoute(name: string, cell: unknown): RequestMethod | undefined {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return undefined;
  const known = METHODS.find((method) => method === wordIn(cell));
  if (!known) throw new InputError(name, `${shown(value)} is none of ${METHODS.join(", ")}`);
  return known;
}

/**
 * Reads whether a payment goes with the request: dollars, or a yes or no; blank is no.
 */
export function isPaying(name: string, cell: unknown): boolean {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return false;
  if (typeof value === "boolean" || (typeof value === "string" && isYesOrNo(cell)))
    return yesNo(name, cell);
  return money(name, cell).greaterThan(0);
}

/**
 * Reads whose request is mailed, as the chart on the form tells them apart.
 *
 * @param stateCell - Postal code, foreign, estate or nonresident.
 * @param filerCell - Abroad and nonresident have addresses of their own, whatever the state.
 * @returns The residence.
 */
export function mailingResidence(stateCell: unknown, filerCell: unknown): MailingResidence {
  const word = wordIn(stateCell);
  if (word === "estate" || word === "nonresident") return word;
  const who = filerType("filerType", filerCell);
  const residence = state("state", stateCell);
  if (who === "nonresident") return "nonresident";
  if (who === "out of country") return state("state", "foreign") ?? "nonresident";
  if (residence === undefined)
    throw new InputError("state", "is empty; give a postal code, foreign, estate or nonresident");
  return residence;
}

/**
 * Reads who brings a paper request: blank or no is the postal service, yes a private carrier not yet chosen, else a service's name.
 *
 * @returns Nothing for the postal service.
 */
export function carrierOf(name: string, cell: unknown): Carrier | undefined {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return undefined;
  if (isYesOrNo(cell)) return yesNo(name, cell) ? "designated" : undefined;
  return deliveryService(String(value), rulebook) ? "designated" : "not designated";
}
