import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { FilerType } from "../../../src/calculation/filerType";
import type { Carrier, ClientRequest } from "../../../src/calculation/request/clientRequest";
import type { RequestRecord } from "../../../src/calculation/season/requestRecord";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import type { RequestMethod } from "../../../src/rules/requestWords";
import { rulebook } from "../../../src/rules/rulebook";
import { day, fiscalYear, state, usd } from "../given";

/** What was done when, as a test writes it. */
export type GivenRecord = Readonly<Partial<Record<keyof RequestRecord, string | undefined>>>;

/** A request as a test writes it: what differs from a plain one. */
export interface GivenRequest {
  /** A calendar year, or the last day of a fiscal one. */
  readonly taxYear?: number | string;
  readonly filerType?: FilerType;
  readonly state?: string | undefined;
  readonly postponement?: readonly [begins: string, postponementEnds: string] | undefined;
  /** `null` for a blank estimate. */
  readonly totalTax?: string | null;
  readonly payments?: string;
  readonly paidWithRequest?: string;
  readonly asOf?: string;
  readonly record?: GivenRecord;
  readonly method?: RequestMethod;
  readonly carrier?: Carrier;
  readonly line8Checked?: boolean;
  readonly priorYearTax?: string;
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
export function givenRequest(given: GivenRequest = {}): ClientRequest {
  const {
    taxYear = 2025,
    filerType = "resident",
    totalTax = "20000",
    firstInstallment = "0",
  } = given;
  const year = typeof taxYear === "number" ? calendarTaxYear(taxYear) : fiscalYear(taxYear);
  const circumstances = {
    state: given.state === undefined ? undefined : state(given.state),
    postponement: given.postponement && {
      begins: day(given.postponement[0]),
      ends: day(given.postponement[1]),
    },
  };
  return {
    taxYear: year,
    filerType,
    circumstances,
    dates: clientDates(year, filerType, circumstances, rulebook),
    totalTax: totalTax === null ? undefined : usd(totalTax),
    payments: usd(given.payments ?? "15000"),
    paidWithRequest: usd(given.paidWithRequest ?? "5000"),
    asOf: day(given.asOf ?? "2026-04-10"),
    record: givenRecord(given.record ?? {}),
    method: given.method,
    carrier: given.carrier,
    line8Checked: given.line8Checked,
    priorYearTax: given.priorYearTax === undefined ? undefined : usd(given.priorYearTax),
    firstInstallment: firstInstallment === null ? undefined : usd(firstInstallment),
  };
}
