import addresses from "../../rules/mailing-addresses.json";
import services from "../../rules/private-delivery-services.json";
import perfectionPeriod from "../../rules/perfection-period.json";
import checks from "../../rules/request-issues.json";
import requestLines from "../../rules/request-lines.json";
import methods from "../../rules/request-methods.json";
import streets from "../../rules/service-center-streets.json";
import { readDatedTable } from "./datedTable";
import { oneOf, readListTable } from "./listTable";

/** A line of the request. */
export interface RequestLine {
  readonly line: string;
  readonly what: string;
}

/** Ways to make the request. */
export const METHODS = ["electronic payment", "e-file", "paper"] as const;

/** A way to make the request. */
export type RequestMethod = (typeof METHODS)[number];

/** What a way needs and gives. */
export interface MethodRule {
  readonly method: RequestMethod;
  /** Open only to those who pay with the request. */
  readonly needsPayment: boolean;
  /** Open to fiscal-year filers. */
  readonly fiscalYear: boolean;
  readonly needs: string;
  readonly proof: string;
}

/** The centers that a private carrier can reach. */
export const CENTERS = ["Austin", "Kansas City", "Ogden"] as const;

/** A center that a private carrier can reach. */
export type ServiceCenter = (typeof CENTERS)[number];

/** One address of the chart on the form. */
export interface MailingAddress {
  /** Tax year of the form. */
  readonly edition: number;
  readonly residences: readonly string[];
  readonly paidWithRequest: boolean;
  readonly lines: readonly string[];
  /** The center itself, where the address is not a post office box. */
  readonly center: ServiceCenter | undefined;
}

/** Where a private carrier finds a center. */
export interface CenterStreet {
  readonly center: ServiceCenter;
  readonly lines: readonly string[];
}

/** A private delivery service whose record of mailing counts. */
export interface DeliveryService {
  readonly carrier: string;
  readonly service: string;
}

/** How grave a finding is: it fails as it stands, it may cost money, it is not to be forgotten. */
export const SEVERITIES = ["problem", "risk", "reminder"] as const;

/** How grave a finding is. */
export type Severity = (typeof SEVERITIES)[number];

/** What may be wrong with a request; the list runs from the gravest down. */
export const CHECKS = [
  ...["not asked in time", "asked late", "extended date missed", "reject window over"],
  ...["reject window open", "estimate blank", "fiscal year not on paper", "no payment to mark"],
  ...["carrier to a post office box", "carrier not designated", "abroad ticked"],
  ...["abroad not ticked", "zero beside last year", "paying less than protects"],
  ...["not confirmed", "state asks for its own", "state rule not sure", "interest"],
  ...["estimate below payments", "relief moves dates", "first estimate due"],
] as const;

/** What may be wrong with a request. */
export type RequestCheck = (typeof CHECKS)[number];

/** How a finding is worded and what to do about it. */
export interface IssueRule {
  readonly check: RequestCheck;
  readonly severity: Severity;
  readonly what: string;
  readonly remedy: string;
}

/** The rules of the request itself. */
export const requestTables = {
  requestLines: readListTable(requestLines, requestLines.lines, (row): RequestLine => ({
    line: row.line,
    what: row.what,
  })),
  requestMethods: readListTable(methods, methods.methods, (row): MethodRule => ({
    method: oneOf(METHODS, row.method),
    needsPayment: row.needsPayment,
    fiscalYear: row.fiscalYear,
    needs: row.needs,
    proof: row.proof,
  })),
  perfectionPeriod: readDatedTable(perfectionPeriod, ["days"]),
  mailingAddresses: readListTable(addresses, addresses.addresses, (row): MailingAddress => ({
    edition: row.edition,
    residences: row.residences,
    paidWithRequest: row.paidWithRequest,
    lines: row.lines,
    center: row.center === undefined ? undefined : oneOf(CENTERS, row.center),
  })),
  serviceCenterStreets: readListTable(streets, streets.centers, (row): CenterStreet => ({
    center: oneOf(CENTERS, row.center),
    lines: row.lines,
  })),
  privateDeliveryServices: readListTable(services, services.services, (row): DeliveryService => ({
    carrier: row.carrier,
    service: row.service,
  })),
  requestIssues: readListTable(checks, checks.checks, (row): IssueRule => ({
    check: oneOf(CHECKS, row.check),
    severity: oneOf(SEVERITIES, row.severity),
    what: row.what,
    remedy: row.remedy,
  })),
};
