import { describe, expect, it } from "vitest";
import { formulaCall } from "../../src/addin/formulaCall";
import { argumentKinds, type KindName } from "../../src/help/argumentKinds";
import { inCell } from "../functions/sheet";
import { worksheetFunction } from "../functions/worksheetFunctions";

/** A call for each kind of argument, with a gap where one goes. */
const CALLS: Readonly<Partial<Record<KindName, string>>> = {
  "tax-year": "=EXT.DUE(#)",
  day: "=EXT.UNDERPAYRATE(#)",
  money: "=EXT.SHORTFALL(#,0)",
  "signed-money": "=EXT.SETAX(2025,#)",
  status: "=EXT.STANDARDDEDUCTION(2025,#)",
  state: "=EXT.DUE(2025,#)",
  filerType: "=EXT.DUE(2025,,#)",
  "yes-no": '=EXT.LATEFILE(2025,2000,"2026-05-20",#)',
  "assumed-rate": '=EXT.UNDERPAYRATE("2098-01-01",#)',
  target: "=EXT.SUGGEST(20000,15000,#)",
  cushion: "=EXT.SUGGEST(20000,15000,,#)",
  "installment-number": "=EXT.INSTALLMENT(2026,#)",
  count: '=EXT.CHILDCREDIT(2025,"joint",#)',
  "table-name": "=EXT.SOURCE(#)",
  "payment-rows": '=EXT.LEDGER(2025,20000,#,"2026-10-15")',
  "item-rows": '=EXT.LIABILITY(2025,"single",#)',
  "change-rows": '=EXT.PROJECTEDTAX(2025,"single",8341,60000,#)',
  "money-range": '=EXT.WHATIF(2025,20000,15000,#,"2026-10-15")',
  "day-range": "=EXT.WHATIF(2025,20000,15000,0,#)",
};

const kinds = Object.entries(argumentKinds) as [KindName, (typeof argumentKinds)[KindName]][];

function answerTo(kind: KindName, form: string): unknown {
  const { id, values } = formulaCall((CALLS[kind] ?? "").replace("#", () => form));
  return inCell(worksheetFunction(id), ...values);
}

const forms = (which: "taken" | "refused") =>
  kinds.flatMap(([kind, told]) => told[which].map((form) => ({ kind, form })));

describe("what the help says of a kind of argument", () => {
  it.each(forms("taken"))("is true where it is taken: $kind $form", ({ kind, form }) => {
    expect(answerTo(kind, form)).not.toBeInstanceOf(CustomFunctions.Error);
  });

  it.each(forms("refused"))("is true where it is refused: $kind $form", ({ kind, form }) => {
    expect(answerTo(kind, form)).toMatchObject({ code: "#VALUE!" });
  });

  it("is tried out for every kind that shows how it is written", () => {
    const shown = kinds.filter(([, { taken }]) => taken.length > 0).map(([kind]) => kind);
    expect(Object.keys(CALLS).toSorted()).toEqual(shown.toSorted());
  });

  it.each(kinds)("is told in sentences: %s", (_kind, { title, told }) => {
    expect(title).toMatch(/^[A-Z]/);
    expect(told).toMatch(/\.$/);
    expect(told.split("`").length % 2).toBe(1);
  });
});
