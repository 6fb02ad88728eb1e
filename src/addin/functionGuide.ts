/** A worksheet function and the preparer's task it serves. */
export interface GuideFunction {
  readonly task: string;
  readonly name: string;
}

const TASKS: Readonly<Record<string, string>> = {
  "Find the dates": "DUE EXTENDED PAYBY INSTALLMENT DISASTERDATE COMBATZONE CALENDAR",
  "Estimate total tax for line 4":
    "LIABILITY LIABILITYLINES PAYMENTSTOTAL PROJECTEDTAX INCOMETAX STANDARDDEDUCTION SETAX EXTRAMEDICARE " +
    "NETINVESTMENTTAX MINIMUMTAX BUSINESSDEDUCTION CHILDCREDIT",
  "Prepare the request": "SHORTFALL SUGGEST LINES",
  "Get it in, and look it over": "METHOD METHODLINES MAILTO ISDESIGNATED ISSUES ISSUECOUNT MEMO",
  "Watch the season": "STAGE DAYSLEFT NEXTDATE ROSTER",
  "Mind the state return": "STATEDUE STATEEXTENDED STATERULE",
  "Weigh what lateness costs": "UNDERPAYRATE INTEREST LATEFILE LATEPAY CHARGES CHARGELINES",
  "Pay in parts, compare choices": "LEDGER WHATIF EFFECTIVERATE",
  "Estimate the new year, and what short estimates cost":
    "REQUIREDPAYMENT FIRSTINSTALLMENT ESTPENALTY ESTPENALTYLINES",
  "Check the rules behind an answer": "SOURCE KNOWNTHROUGH RULETABLES",
};

/** Every worksheet function, in the order the guide shows it: the tasks as they come up in a season. */
export const functionGuide: readonly GuideFunction[] = Object.entries(TASKS).flatMap(
  ([task, names]) => names.split(" ").map((name) => ({ task, name }))
);
