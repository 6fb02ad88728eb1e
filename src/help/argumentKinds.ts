import type { ArgumentKind } from "./argumentKind";
import { blockKinds } from "./blockKinds";
import { singleKinds } from "./singleKinds";

const kinds = { ...singleKinds, ...blockKinds };

/** What an argument may be a kind of. */
export type KindName = keyof typeof kinds;

/** Every kind, by its name. */
export const argumentKinds: Readonly<Record<KindName, ArgumentKind>> = kinds;

/** The names of the arguments of each kind, the same in every function but those below. */
const NAMES: Readonly<Record<KindName, string>> = {
  "tax-year": "taxYear",
  "calendar-year": "",
  day: "day entered left from to paidOn filedOn agreementFrom reliefBegins postponedTo asOf askedOn confirmedOn rejectedOn plannedOn",
  money:
    "totalTax payments paying paidOnTime amount netTax unpaid firstInstallment currentTax priorTax priorAdjustedGrossIncome " +
    "expectedTax withholding credited requiredPayment taxableIncome preferential wages selfEmployment addedBack " +
    "adjustedGrossIncome earnedIfDependent qualifiedIncome property priorTaxableIncome",
  "money-or-yes-no": "",
  "signed-money": "profit netInvestment",
  status: "status",
  state: "state",
  "state-of-return": "",
  "residence-on-form": "",
  filerType: "filerType",
  "yes-no":
    "extended farmer specifiedService asLines acceptOld federalExtended ownRequest outOfCountry",
  "assumed-rate": "assumedRate",
  share: "percentPaid",
  target: "target",
  cushion: "cushion",
  "installment-number": "number",
  count: "additions children otherDependents",
  "table-name": "figure",
  word: "route length counted",
  carrier: "carrier",
  text: "service missing",
  "payment-rows": "",
  "item-rows": "items",
  "change-rows": "changes",
  "money-range": "extraPayments",
  "day-range": "days",
  "client-list": "grid",
};

/** Arguments that are of another kind in one function than their name is elsewhere. */
const IN_ONE_FUNCTION: Readonly<Record<string, KindName>> = {
  "LEDGER payments": "payment-rows",
  "ESTPENALTY payments": "payment-rows",
  "ESTPENALTYLINES payments": "payment-rows",
  "NETINVESTMENTTAX adjustedGrossIncome": "signed-money",
  "MAILTO state": "residence-on-form",
  "MAILTO paying": "money-or-yes-no",
  "STATEDUE taxYear": "calendar-year",
  "STATEEXTENDED taxYear": "calendar-year",
  "STATERULE taxYear": "calendar-year",
  "STATEDUE state": "state-of-return",
  "STATEEXTENDED state": "state-of-return",
  "STATERULE state": "state-of-return",
};

const byName = new Map(
  (Object.entries(NAMES) as [KindName, string][]).flatMap(([kind, names]) =>
    names.split(" ").map((name) => [name, kind] as const)
  )
);

/**
 * The kind of an argument.
 *
 * @param functionName - The worksheet function.
 * @param name - The argument.
 * @returns Its kind, or `undefined` for a name not listed here yet.
 */
export function kindOf(functionName: string, name: string): KindName | undefined {
  return IN_ONE_FUNCTION[`${functionName} ${name}`] ?? byName.get(name);
}
