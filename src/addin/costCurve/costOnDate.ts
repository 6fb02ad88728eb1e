import type { ChargeKind } from "../../calculation/penalty/chargeLines";
import { catalog } from "../../functions/catalog";
import { withFormattedNumbers } from "../../functions/cells/numberFormats";
import { CHARGE_LABELS } from "../../functions/penalty/chargeTable";

/** One client as worksheet cells, each as the host passes it. */
export interface CostCurveInput {
  readonly taxYear: unknown;
  readonly totalTax: unknown;
  /** Everything paid by the payment due date, with the amount paid with the request. */
  readonly payments: unknown;
  readonly state: unknown;
  readonly filerType: unknown;
  readonly postponementBegins: unknown;
  readonly postponementEnds: unknown;
  /** The rate after the last published quarter; the curve ends there without one. */
  readonly assumedRate?: unknown;
  readonly asOf?: unknown;
}

/** The kinds of cost, from the bottom of the stack to its top. */
export const COST_PARTS = ["interest", "failureToPay", "failureToFile"] as const;

/** A kind of cost. */
export type CostPart = (typeof COST_PARTS)[number];

/** The cost of filing and paying on a date, in dollars and cents. */
export interface Cost extends Readonly<Record<CostPart, number>> {
  /** The answer of CHARGES. */
  readonly total: number;
  /** Whether the 90% test excuses the failure-to-pay penalty. */
  readonly isExcused: boolean;
  /** Whether the minimum raises the failure-to-file penalty. */
  readonly isMinimum: boolean;
}

/** The costs of filing and paying on a date, a worksheet date. */
export interface CostPoint {
  readonly date: number;
  readonly extended: Cost;
  readonly notExtended: Cost;
}

const PART_OF: Readonly<Record<ChargeKind, CostPart>> = {
  "failure-to-file penalty": "failureToFile",
  "less failure-to-pay penalty": "failureToFile",
  "increase to minimum penalty": "failureToFile",
  "failure-to-pay penalty": "failureToPay",
  "reasonable cause": "failureToPay",
  "interest on tax": "interest",
  "interest on failure-to-file penalty": "interest",
};
const KIND_OF: ReadonlyMap<unknown, ChargeKind> = new Map(
  Object.entries(CHARGE_LABELS).map(([kind, label]) => [label, kind as ChargeKind])
);
/** The answer of a function as plain cells, row by row. */
function called(name: string, cells: readonly unknown[]): readonly (readonly unknown[])[] {
  const answer = withFormattedNumbers("plain", () => catalog[name]?.answer(cells));
  return answer as readonly (readonly unknown[])[];
}

/** The answer of a function in one cell, as a number. */
export const numberFrom = (name: string, ...cells: readonly unknown[]): number =>
  Number(called(name, cells)[0]?.[0]);

function costOf(input: CostCurveInput, date: number, validExtension: "yes" | "no"): Cost {
  const { taxYear, totalTax, payments, state, filerType } = input;
  const paidAndFiled = [taxYear, totalTax, payments, date, date, validExtension];
  const agreementOn = null;
  const circumstances = [state, filerType, input.assumedRate, agreementOn];
  const postponement = [input.postponementBegins, input.postponementEnds];
  const cells = [...paidAndFiled, ...circumstances, ...postponement];
  const [headings = [], ...lines] = called("CHARGELINES", cells);
  const amountAt = headings.indexOf("Amount");
  const cents = { interest: 0, failureToPay: 0, failureToFile: 0 };
  const kinds = new Set<ChargeKind>();
  for (const line of lines) {
    const kind = KIND_OF.get(line[0]);
    if (kind === undefined) continue;
    kinds.add(kind);
    cents[PART_OF[kind]] += Math.round(Number(line[amountAt]) * 100);
  }
  const { interest, failureToPay, failureToFile } = cents;
  return {
    interest: interest / 100,
    failureToPay: failureToPay / 100,
    failureToFile: failureToFile / 100,
    total: (interest + failureToPay + failureToFile) / 100,
    isExcused: kinds.has("reasonable cause"),
    isMinimum: kinds.has("increase to minimum penalty"),
  };
}

/** The costs of filing and paying on a date, with and without the extension. */
export function costsOn(input: CostCurveInput, date: number): CostPoint {
  return {
    date,
    extended: costOf(input, date, "yes"),
    notExtended: costOf(input, date, "no"),
  };
}
