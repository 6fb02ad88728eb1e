import { describe, expect, it } from "vitest";
import {
  annualizedColumns,
  type AnnualizedColumn,
} from "../../../src/calculation/estimatedTax/annualizedColumns";
import { annualizedInstallments } from "../../../src/calculation/estimatedTax/annualizedInstallments";
import type { FilerType } from "../../../src/calculation/filerType";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/annualized-installments.json";
import { usd } from "./givenEstimates";
import { amountsOf, rulesOfYear } from "./givenPeriods";

const texts = (
  columns: readonly AnnualizedColumn[],
  amount: (column: AnnualizedColumn) => { toString(): string }
): readonly string[] => columns.map((column) => amount(column).toString());

describe("Schedule AI as published", () => {
  it.each(published.schedules)(
    "$case: every line ($source.document)",
    ({ figures, inputs, expected }) => {
      const periods = inputs.adjustedGrossIncome.map((adjustedGrossIncome, index) =>
        amountsOf({
          adjustedGrossIncome,
          itemizedDeductions: inputs.itemizedDeductions[index] ?? "0",
          businessIncomeDeduction: inputs.exemptions,
          otherTaxes: inputs.selfEmploymentTax[index] ?? "0",
        })
      );
      const columns = annualizedColumns(
        {
          taxYear: calendarTaxYear(figures.taxYear),
          status: "single",
          filerType: "resident",
          periods,
        },
        rulesOfYear(figures)
      );
      expect(texts(columns, ({ tax }) => tax.income)).toEqual(expected.income);
      expect(texts(columns, ({ tax }) => tax.itemized)).toEqual(expected.itemized);
      expect(texts(columns, ({ tax }) => tax.chosen)).toEqual(expected.chosen);
      expect(texts(columns, ({ tax }) => tax.taxableIncome)).toEqual(expected.taxableIncome);
      expect(texts(columns, ({ tax }) => tax.incomeTax)).toEqual(expected.incomeTax);
      expect(texts(columns, ({ dueThrough }) => dueThrough)).toEqual(expected.dueThrough);
      const quarter = usd(inputs.requiredAnnualPayment).div(4);
      const installments = annualizedInstallments(
        columns.map(({ dueThrough }) => dueThrough),
        columns.map(() => quarter)
      );
      expect(installments.map(({ required }) => required.toString())).toEqual(
        expected.installments
      );
    }
  );

  const { worksheet } = published;
  it(`${worksheet.case} (${worksheet.source.document})`, () => {
    const { figures, inputs, expected } = worksheet;
    const periods = inputs.adjustedGrossIncome.map((adjustedGrossIncome, index) =>
      amountsOf({
        adjustedGrossIncome,
        itemizedDeductions: inputs.itemizedDeductions[index] ?? "0",
      })
    );
    const taxYear = calendarTaxYear(figures.taxYear);
    const columns = annualizedColumns(
      { taxYear, status: "joint", filerType: "resident", periods },
      rulesOfYear(figures)
    );
    expect(texts(columns, ({ tax }) => tax.income)).toEqual(expected.income);
    expect(texts(columns, ({ tax }) => tax.itemized)).toEqual(expected.itemized);
    expect(texts(columns, ({ tax }) => tax.chosen)).toEqual(expected.chosen);
    expect(columns[0]?.tax.afterDeductions.toString()).toBe(expected.afterDeductionsOfFirst);
  });
});

describe("the columns of Schedule AI", () => {
  const columnsOf = (filerType: FilerType, year = 2025): readonly AnnualizedColumn[] =>
    annualizedColumns(
      {
        taxYear: calendarTaxYear(year),
        status: "single",
        filerType,
        periods: [10_000, 20_000, 60_000, 120_000].map((adjustedGrossIncome) =>
          amountsOf({ adjustedGrossIncome })
        ),
      },
      rulebook
    );

  // 26 U.S.C. 6654(d)(2)(C)(ii).
  it("have 22.5%, 45%, 67.5% and 90%", () => {
    const columns = columnsOf("resident");
    expect(texts(columns, ({ share }) => share)).toEqual(["0.225", "0.45", "0.675", "0.9"]);
    expect(texts(columns, ({ tax }) => tax.income)).toEqual(["40000", "48000", "90000", "120000"]);
  });

  // Form 2210 instructions (2008), page 5, and (2017), page 8: skip column (a); columns (b) to (d) stay as they are.
  it("of a nonresident are the last three", () => {
    const columns = columnsOf("nonresident");
    expect(texts(columns, ({ share }) => share)).toEqual(["0.45", "0.675", "0.9"]);
    expect(texts(columns, ({ tax }) => tax.income)).toEqual(["48000", "90000", "120000"]);
    expect(texts(columns, ({ tax }) => tax.taxableIncome)).toEqual(["48000", "90000", "120000"]);
  });

  it("need a period for each installment", () => {
    const year = { taxYear: calendarTaxYear(2025), status: "single" } as const;
    const periods = [1, 2, 3].map((adjustedGrossIncome) => amountsOf({ adjustedGrossIncome }));
    expect(() => annualizedColumns({ ...year, filerType: "resident", periods }, rulebook)).toThrow(
      RangeError
    );
    expect(
      annualizedColumns({ ...year, filerType: "nonresident", periods }, rulebook)
    ).toHaveLength(3);
  });

  it.each([2021, 2027])("are refused for %d with the table of rates", (year) => {
    expect(() => columnsOf("resident", year)).toThrow(NotInTableError);
    expect(() => columnsOf("resident", year)).toThrow("Income tax rate schedules");
  });
});
