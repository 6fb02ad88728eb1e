import { fromCatalog } from "../fromCatalog";
import { inCell } from "../sheet";

/** A client as recorded and planned: worksheet dates, dollars, and blank cells as empty text. */
export interface PlannedClient {
  readonly taxYear: unknown;
  readonly totalTax: number;
  readonly payments: number;
  readonly paidWithRequest: number | "";
  readonly requestedOn: number | "";
  readonly confirmedOn: number | "";
  readonly rejectedOn: number | "";
  readonly filedOn: number | "";
  readonly paidOn: number | "";
  readonly plannedFilingDate: number | "";
  readonly plannedPaymentDate: number | "";
  readonly state: string;
  readonly filerType: string;
  readonly postponementBegins: unknown;
  readonly postponementEnds: unknown;
}

/** A client's dates and plan on a date, by hand: from the days alone, without the calculation of the season. */
export interface PlanByHand {
  readonly dueDay: number;
  readonly extendedDay: number;
  readonly payDay: number;
  /** Whether the extension was requested in time or, for a return that is not filed, still can be. */
  readonly isExtended: boolean;
  readonly filed: number;
  readonly paid: number;
  /** Dollars paid by the payment due date. */
  readonly paidOnTime: number;
  /** Dollars of a payment with a request made after the payment due date. */
  readonly paidWithLateRequest: number;
  /** Dollars that remain. */
  readonly balance: number;
}

const cents = (dollars: number): number => Math.round(dollars * 100) / 100;
const dateOf = (id: string, ...values: unknown[]): number =>
  Number(inCell(fromCatalog(id), ...values));

/** What had happened by a date. */
const came = (cell: number | "", asOf: number): number | undefined =>
  cell !== "" && cell <= asOf ? cell : undefined;

/**
 * Pub. 1345: five days from the e-file deadline, which a disaster postponement does not move (IR-2025-41, as reported), or from the
 * rejection, the earlier; paper through the end of the postponement.
 */
function isExtended(
  client: PlannedClient,
  dueDay: number,
  eFileDay: number,
  asOf: number
): boolean {
  const isFiled = came(client.filedOn, asOf) !== undefined;
  const requestedOn = came(client.requestedOn, asOf);
  if (requestedOn === undefined) return !isFiled && asOf <= dueDay;
  if (requestedOn > dueDay) return false;
  const rejectedOn = came(client.rejectedOn, asOf);
  const confirmedOn = came(client.confirmedOn, asOf);
  if (rejectedOn === undefined) return true;
  const byEFile = Math.max(eFileDay, Math.min(rejectedOn, eFileDay) + 5);
  const again = Math.max(byEFile, dueDay);
  if (confirmedOn === undefined || confirmedOn < rejectedOn) return !isFiled && asOf <= again;
  return confirmedOn <= again;
}

/** The plan of a client by hand. */
export function planByHand(client: PlannedClient, asOf: number): PlanByHand {
  const { taxYear, state, filerType, plannedFilingDate, plannedPaymentDate } = client;
  const who = [state, filerType, client.postponementBegins, client.postponementEnds];
  const dueDay = dateOf("DUE", taxYear, ...who);
  const extendedDay = dateOf("EXTENDED", taxYear, ...who);
  const payDay = dateOf("PAYBY", taxYear, ...who);
  const eFileDay = dateOf("DUE", taxYear, state, filerType);
  const inTime = isExtended(client, dueDay, eFileDay, asOf);
  const filed =
    came(client.filedOn, asOf) ??
    Math.max(asOf, plannedFilingDate || (inTime ? extendedDay : asOf));
  const paid = came(client.paidOn, asOf) ?? (plannedPaymentDate || filed);
  const requestedOn = came(client.requestedOn, asOf);
  const sent = client.paidWithRequest || 0;
  const isLateRequest = requestedOn !== undefined && requestedOn > payDay;
  const isOnTime = (requestedOn ?? asOf) <= payDay;
  const paidOnTime = cents(client.payments + (isOnTime ? sent : 0));
  const paidWithLateRequest = isLateRequest ? sent : 0;
  const balance = Math.max(0, cents(client.totalTax - paidOnTime - paidWithLateRequest));
  return {
    dueDay,
    extendedDay,
    payDay,
    isExtended: inTime,
    filed,
    paid,
    paidOnTime,
    paidWithLateRequest,
    balance,
  };
}

/** Penalties and interest of the plan: by CHARGES, or by LEDGER where a late request brought a payment of its own. */
export function plannedCost(client: PlannedClient, asOf: number): unknown {
  const plan = planByHand(client, asOf);
  const { taxYear, totalTax, state, filerType, requestedOn } = client;
  const extension = plan.isExtended ? "yes" : "no";
  const who = [state, filerType, "latest", ""];
  const period = [client.postponementBegins, client.postponementEnds];
  if (plan.paidWithLateRequest === 0)
    return inCell(
      fromCatalog("CHARGES"),
      taxYear,
      totalTax,
      plan.paidOnTime,
      plan.paid,
      plan.filed,
      extension,
      ...who,
      ...period
    );
  const rows = [
    [plan.payDay, plan.paidOnTime],
    [requestedOn, plan.paidWithLateRequest],
    ...(plan.balance > 0 ? [[plan.paid, plan.balance]] : []),
  ];
  const ledger = fromCatalog("LEDGER")(
    taxYear,
    totalTax,
    rows,
    plan.filed,
    extension,
    ...who,
    ...period
  ) as unknown[][];
  return ledger.at(-1)?.[ledger[0]?.indexOf("Penalties and interest to date") ?? -1];
}
