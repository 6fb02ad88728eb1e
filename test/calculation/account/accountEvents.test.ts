import { describe, expect, it } from "vitest";
import { accountEvents } from "../../../src/calculation/account/accountEvents";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { written } from "../../../src/calendar/calendarDate";
import { ledgerInput, paid, type GivenAccount } from "./givenAccount";

const events = (given: Partial<GivenAccount>): readonly string[] => {
  const input = ledgerInput({ payments: [], filedOn: "2026-04-15", ...given });
  return accountEvents(input, input.dates.regular, rulebook).map(
    ({ date, event }) => `${written(date)} ${event}`
  );
};

// What comes first on one date is the project's choice: a payment reduces what is due on its date.
describe("the events of a payment history", () => {
  it("are in order of dates, and on one date in the order of payment, due dates, filing and what follows", () => {
    const given = {
      payments: [paid("2026-04-15", 1), paid("2026-06-02", 1)],
      agreementOn: "2026-06-02",
      noticeOn: "2026-06-02",
      levyNoticeOn: "2026-06-02",
    };
    expect(events(given)).toEqual([
      "2026-04-15 payment",
      "2026-04-15 tax due",
      "2026-04-15 return due",
      "2026-04-15 return filed",
      "2026-06-02 payment",
      "2026-06-02 agreement accepted",
      "2026-06-02 notice and demand",
      "2026-06-02 levy notice",
    ]);
  });

  it("are three without payments and notices", () => {
    expect(events({})).toHaveLength(3);
  });

  it("are refused for a levy notice before the table", () => {
    expect(() => events({ levyNoticeOn: "2008-12-31" })).toThrow(NotInTableError);
  });
});
