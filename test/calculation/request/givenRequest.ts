import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { Filer } from "../../../src/calculation/filer";
import type { Carrier, RequestToCheck } from "../../../src/calculation/request/requestToCheck";
import type { RequestRecord } from "../../../src/calculation/season/requestRecord";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import type { RequestRoute } from "../../../src/rules/requestTables";
import { rulebook } from "../../../src/rules/rulebook";
import { day, fiscalYear, state, usd } from "../given";

/** What was done when, as a test writes it. */
export type GivenRecord = Readonly<Partial<Record<keyof RequestRecord, string | undefined>>>;

/** A request as a test writes it: what differs from a plain one. */
export interface GivenRequest {
  /** A calendar year, or the last day of a fiscal one. */
  readonly taxYear?: number | string;
  readonly filer?: Filer;
  readonly state?: string | undefined;
  readonly relief?: readonly [begins: string, postponedTo: string] | undefined;
  /** `null` for a blank estimate. */
  readonly totalTax?: string | null;
  readonly payments?: string;
  readonly paying?: string;
  readonly asOf?: string;
  readonly record?: GivenRecord;
  readonly route?: RequestRoute;
  readonly carrier?: Carrier;
  readonly outOfCountry?: boolean;
  readonly priorTax?: string;
  /** `null` for an estimate that nothing is said of. */
  readonly firstInstallment?: string | null;
}

/** The days of a record, read. */
export function givenRecord(given: GivenRecord): RequestRecord {
  const days = Object.entries(given).flatMap(([name, written]) =>
    written === undefined ? [] : [[name, day(written)] as const]
  );
  return Object.fromEntries(days);
}

/** A request of which nothing is to be said: tax of $20,000 all paid, five days before the last day to ask, no first estimate needed. */
export function givenRequest(given: GivenRequest = {}): RequestToCheck {
  const { taxYear = 2025, filer = "resident", totalTax = "20000", firstInstallment = "0" } = given;
  const year = typeof taxYear === "number" ? calendarTaxYear(taxYear) : fiscalYear(taxYear);
  const circumstances = {
    state: given.state === undefined ? undefined : state(given.state),
    relief: given.relief && { begins: day(given.relief[0]), postponedTo: day(given.relief[1]) },
  };
  return {
    taxYear: year,
    filer,
    circumstances,
    dates: clientDates(year, filer, circumstances, rulebook),
    totalTax: totalTax === null ? undefined : usd(totalTax),
    payments: usd(given.payments ?? "15000"),
    paying: usd(given.paying ?? "5000"),
    asOf: day(given.asOf ?? "2026-04-10"),
    record: givenRecord(given.record ?? {}),
    route: given.route,
    carrier: given.carrier,
    outOfCountry: given.outOfCountry,
    priorTax: given.priorTax === undefined ? undefined : usd(given.priorTax),
    firstInstallment: firstInstallment === null ? undefined : usd(firstInstallment),
  };
}
