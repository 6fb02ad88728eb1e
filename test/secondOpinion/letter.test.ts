/** Reads letters to random clients (letterReading.ts) and compares them with STAGE, DUE, EXTENDED, PAYBY, NEXTDATE and CHARGES. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromCatalog } from "../functions/fromCatalog";
import { planByHand, plannedCost, type PlannedClient } from "../functions/season/plannedCost";
import { inCell } from "../functions/sheet";
import { runLength, tell } from "../soak/runLength";
import { readLetter, type LetterReading } from "./letterReading";

const CASES = runLength(1_500, 40_000);

const answer = (id: string, ...values: unknown[]): unknown => inCell(fromCatalog(id), ...values);
const april15 = (taxYear: number): number => Date.UTC(taxYear + 1, 3, 15) / 86_400_000 + 25_569;

const dollars = fc.oneof(
  fc.integer({ min: 0, max: 3_000_000 }).map((cents) => cents / 100),
  fc.integer({ min: 0, max: 30 }).map((thousands) => thousands * 1000)
);
const blankOr = <Value>(values: fc.Arbitrary<Value>): fc.Arbitrary<Value | ""> =>
  fc.oneof({ weight: 1, arbitrary: fc.constant("" as const) }, { weight: 1, arbitrary: values });

/** Dates are days from April 15 of the filing year. */
const drawn = fc.record({
  // The perfection period is covered from 2023, so from tax year 2022.
  taxYear: fc.integer({ min: 2022, max: 2025 }),
  state: fc.constantFrom("", "ME", "TX"),
  filerType: fc.constantFrom("", "", "out of country", "nonresident"),
  totalTax: dollars,
  payments: dollars,
  paidWithRequest: blankOr(dollars),
  requestedOn: blankOr(fc.oneof(fc.integer({ min: -20, max: 4 }), fc.integer({ min: 0, max: 65 }))),
  confirmedAfter: blankOr(fc.integer({ min: 0, max: 9 })),
  rejectedAfter: blankOr(fc.integer({ min: 0, max: 4 })),
  filedOn: blankOr(fc.integer({ min: -10, max: 230 })),
  paidOn: blankOr(fc.integer({ min: -10, max: 230 })),
  plannedFilingDate: blankOr(fc.integer({ min: -10, max: 260 })),
  plannedPaymentDate: blankOr(fc.integer({ min: -10, max: 260 })),
  asOf: fc.oneof(fc.integer({ min: -10, max: 8 }), fc.integer({ min: -20, max: 240 })),
  // None, to June, to the extended due date or past it, and one that begins after April.
  postponement: fc.constantFrom(null, null, null, [-80, 54], [-80, 183], [-80, 250], [60, 200]),
});

const clients: fc.Arbitrary<{ client: PlannedClient & { taxYear: number }; asOf: number }> =
  drawn.map(({ confirmedAfter, rejectedAfter, postponement, asOf, ...given }) => {
    const origin = april15(given.taxYear);
    const on = (days: number | ""): number | "" => (days === "" ? "" : origin + days);
    const after = (days: number | ""): number | "" =>
      days === "" || given.requestedOn === "" ? "" : origin + given.requestedOn + days;
    const client = {
      ...given,
      requestedOn: on(given.requestedOn),
      confirmedOn: after(confirmedAfter),
      rejectedOn: after(rejectedAfter),
      filedOn: on(given.filedOn),
      paidOn: on(given.paidOn),
      plannedFilingDate: on(given.plannedFilingDate),
      plannedPaymentDate: on(given.plannedPaymentDate),
      postponementBegins: postponement ? on(postponement[0]) : "",
      postponementEnds: postponement ? on(postponement[1]) : "",
    };
    return { client, asOf: origin + asOf };
  });

function letterTo(client: PlannedClient, asOf: number, length: "short" | "full"): string {
  return String(
    answer(
      "MEMO",
      client.taxYear,
      client.totalTax,
      client.payments,
      client.paidWithRequest,
      asOf,
      client.requestedOn,
      client.confirmedOn,
      client.rejectedOn,
      client.filedOn,
      client.paidOn,
      client.plannedFilingDate,
      client.plannedPaymentDate,
      length,
      "",
      client.state,
      client.filerType,
      "latest",
      client.postponementBegins,
      client.postponementEnds
    )
  );
}

const whoOf = (client: PlannedClient): unknown[] => [
  client.state,
  client.filerType,
  client.postponementBegins,
  client.postponementEnds,
];
const recordOf = (client: PlannedClient): unknown[] => [
  client.requestedOn,
  client.confirmedOn,
  client.rejectedOn,
  client.filedOn,
];

/** What CHARGES answers to the letter's own statements. */
function costAsRead(client: PlannedClient, read: LetterReading): unknown {
  const filed = read.filedOn ?? read.fileOn;
  const paid = read.payOn ?? read.balancePaidOn ?? filed;
  return answer(
    "CHARGES",
    client.taxYear,
    read.totalTax,
    Math.round(((read.payments ?? 0) + read.withRequest) * 100) / 100,
    paid,
    filed,
    read.countsOnExtension ? "yes" : "no",
    client.state,
    client.filerType,
    "latest",
    "",
    client.postponementBegins,
    client.postponementEnds
  );
}

describe("a letter, read by itself", () => {
  it(`agrees with STAGE, the due dates and CHARGES for ${String(CASES)} random clients`, () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(clients, ({ client, asOf }) => {
        const text = letterTo(client, asOf, "full");
        const read = readLetter(text);
        const who = whoOf(client);
        const record = recordOf(client);
        const stage = answer("STAGE", client.taxYear, asOf, ...record, ...who);
        const { dueDay, extendedDay, payDay, isExtended, ...plan } = planByHand(client, asOf);
        const givesTime = extendedDay > dueDay;
        const kind = `${String(stage)}${givesTime ? "" : ", no time to give"}`;
        seen.set(kind, (seen.get(kind) ?? 0) + 1);

        // The extension: a fact only with proof, never where it does not hold.
        expect(read.hasUntil, text).toBe(
          stage === "extended" && givesTime ? extendedDay : undefined
        );
        if (givesTime) expect(read.countsOnExtension && !isExtended, text).toBe(false);
        const facts = read.sentences.filter((sentence) => !/^(With|If|Once|Even)/.test(sentence));
        if (stage !== "extended" && givesTime)
          for (const { isDue } of facts.map(readLetter))
            expect(isDue, text).not.toContain(extendedDay);

        // The status.
        expect(text.includes("The return is late"), text).toBe(stage === "past due");
        expect(read.filedOn !== undefined, text).toBe(stage === "filed");
        if (stage === "filed") {
          expect(read.filedOn).toBe(client.filedOn);
          expect(text.includes(", on time."), text).toBe(Number(client.filedOn) <= dueDay);
        }
        if (stage === "past due")
          expect(read.wasDue.at(-1), text).toBe(isExtended && givesTime ? extendedDay : dueDay);
        if (stage === "not requested" && givesTime) expect(read.requestBy, text).toBe(dueDay);
        if (stage === "unconfirmed" && givesTime) expect(text).toMatch(/not (yet )?received proof/);
        expect(text.includes("You do not have an extension now"), text).toBe(
          stage === "rejected" && givesTime
        );
        if (stage === "rejected" && givesTime) {
          const next = answer("NEXTDATE", client.taxYear, asOf, ...record, asOf, ...who);
          const [, month, day, year] = /by (\d+)\/(\d+)\/(\d+)$/.exec(String(next)) ?? [];
          const nextDay = Date.UTC(Number(year), Number(month) - 1, Number(day));
          expect(read.resendBy, text).toBe(nextDay / 86_400_000 + 25_569);
        }

        // The tense follows the as-of date.
        for (const date of read.future) expect(date, text).toBeGreaterThanOrEqual(asOf);
        for (const date of read.past) expect(date, text).toBeLessThanOrEqual(asOf);

        // The amounts.
        expect([read.totalTax, read.payments]).toEqual([client.totalTax, client.payments]);
        const owes = client.totalTax > client.payments;
        expect(text.includes("your payments cover the tax"), text).toBe(!owes);
        if (owes) {
          const short = answer("SHORTFALL", client.totalTax, client.payments);
          expect(read.balance, text).toBe(answer("SHORTFALL", short, read.withRequest));
          expect(read.balance, text).toBe(plan.balance);
        }
        for (const sentence of read.sentences)
          if (/payment due date was|not paid by|is paid by|Please pay/.test(sentence))
            expect(sentence).toContain(
              new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" }).format(
                (payDay - 25_569) * 86_400_000
              )
            );

        // The cost: what CHARGES answers to the record and the plan, and to the letter's own statements.
        expect(read.cost, text).toBe(plannedCost(client, asOf));
        if (read.withRequestOn === undefined)
          expect(read.cost, text).toBe(costAsRead(client, read));
      }),
      { numRuns: CASES, seed: 4868 }
    );
    for (const [kind, count] of seen) tell(`letter ${kind}: ${String(count)}`);
    expect(seen.size).toBeGreaterThanOrEqual(10);
  });

  it("in short says nothing else than in full, and ignores what happened later", () => {
    fc.assert(
      fc.property(clients, ({ client, asOf }) => {
        const full = readLetter(letterTo(client, asOf, "full")).sentences;
        const short = readLetter(letterTo(client, asOf, "short")).sentences;
        expect(full.filter((sentence) => short.includes(sentence))).toEqual(short);
        const known = (cell: number | ""): number | "" => (cell !== "" && cell <= asOf ? cell : "");
        const asKnown = {
          ...client,
          requestedOn: known(client.requestedOn),
          confirmedOn: known(client.confirmedOn),
          rejectedOn: known(client.rejectedOn),
          filedOn: known(client.filedOn),
          paidOn: known(client.paidOn),
        };
        expect(letterTo(asKnown, asOf, "full")).toBe(letterTo(client, asOf, "full"));
      }),
      { numRuns: 300, seed: 4868 }
    );
  });

  it("neither threatens nor shouts", () => {
    const harsh = /\b(must|immediately|fines?|enforce\w*|warn\w*|urgent\w*|fail\w*)\b|!/i;
    fc.assert(
      fc.property(clients, ({ client, asOf }) => {
        expect(letterTo(client, asOf, "full")).not.toMatch(harsh);
      }),
      { numRuns: 300, seed: 4868 }
    );
  });
});
