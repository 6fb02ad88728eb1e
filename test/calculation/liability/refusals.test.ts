import { describe, expect, it } from "vitest";
import { additionalMedicareTax } from "../../../src/calculation/liability/additionalMedicareTax";
import { alternativeMinimumTax } from "../../../src/calculation/liability/alternativeMinimumTax";
import { businessIncomeDeduction } from "../../../src/calculation/liability/businessIncomeDeduction";
import { capitalGain } from "../../../src/calculation/liability/capitalGain";
import { carLoanDeduction } from "../../../src/calculation/liability/carLoanDeduction";
import { childTaxCredit } from "../../../src/calculation/liability/childTaxCredit";
import { excessBusinessLoss } from "../../../src/calculation/liability/excessBusinessLoss";
import { grossIncome } from "../../../src/calculation/liability/grossIncome";
import { incomeTax } from "../../../src/calculation/liability/incomeTax";
import { limitedItemizedDeductions } from "../../../src/calculation/liability/limitedItemizedDeductions";
import { netInvestmentIncomeTax } from "../../../src/calculation/liability/netInvestmentIncomeTax";
import { ordinaryTax } from "../../../src/calculation/liability/ordinaryTax";
import { scheduleTax } from "../../../src/calculation/liability/scheduleTax";
import { selfEmploymentTax } from "../../../src/calculation/liability/selfEmploymentTax";
import { selfEmploymentTaxDeduction } from "../../../src/calculation/liability/selfEmploymentTaxDeduction";
import { seniorDeduction } from "../../../src/calculation/liability/seniorDeduction";
import { standardDeduction } from "../../../src/calculation/liability/standardDeduction";
import { stateAndLocalDeduction } from "../../../src/calculation/liability/stateAndLocalDeduction";
import { taxableBenefits } from "../../../src/calculation/liability/taxableBenefits";
import { totalTax } from "../../../src/calculation/liability/totalTax";
import { workDeduction } from "../../../src/calculation/liability/workDeduction";
import type { TaxYear } from "../../../src/calculation/taxYear";
import { liabilityReaders } from "../../../src/rules/liabilityTables";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { known, NOT_HELD, usd, year } from "./givenTax";

const some = usd(50_000);
const business = {
  qualifiedIncome: some,
  taxableIncome: some,
  preferentialIncome: usd(0),
  wages: some,
  property: some,
  specifiedService: false,
};
const minimum = { taxableIncome: some, amtAdjustments: some, preferentialIncome: usd(0) };

/** Each calculation with the table that refuses the year first. */
const CALCULATIONS: Readonly<Record<string, readonly [string, (of: TaxYear) => unknown]>> = {
  scheduleTax: ["income-tax-rates", (of) => scheduleTax(of, "single", some, rulebook)],
  ordinaryTax: ["income-tax-rates", (of) => ordinaryTax(of, "single", some, rulebook)],
  incomeTax: ["income-tax-rates", (of) => incomeTax(of, "single", some, some, rulebook)],
  standardDeduction: [
    "standard-deduction",
    (of) => standardDeduction(of, "single", 0, undefined, rulebook),
  ],
  selfEmploymentTax: ["self-employment-tax", (of) => selfEmploymentTax(of, some, some, rulebook)],
  selfEmploymentTaxDeduction: [
    "self-employment-tax",
    (of) => selfEmploymentTaxDeduction(of, some, rulebook),
  ],
  additionalMedicareTax: [
    "additional-medicare-tax",
    (of) => additionalMedicareTax(of, "single", some, some, rulebook),
  ],
  netInvestmentIncomeTax: [
    "net-investment-income-tax",
    (of) => netInvestmentIncomeTax(of, "single", some, some, rulebook),
  ],
  alternativeMinimumTax: [
    "alternative-minimum-tax",
    (of) => alternativeMinimumTax({ taxYear: of, status: "single", ...minimum }, rulebook),
  ],
  businessIncomeDeduction: [
    "business-income-deduction",
    (of) => businessIncomeDeduction({ taxYear: of, status: "single", ...business }, rulebook),
  ],
  childTaxCredit: ["child-tax-credit", (of) => childTaxCredit(of, "single", 1, 0, some, rulebook)],
  stateAndLocalDeduction: [
    "state-and-local-cap",
    (of) => stateAndLocalDeduction(of, "single", some, some, rulebook),
  ],
  seniorDeduction: [
    "additional-deductions",
    (of) => seniorDeduction(of, "separate", 1, some, rulebook),
  ],
  workDeduction: [
    "additional-deductions",
    (of) => workDeduction("tips", of, "separate", some, some, rulebook),
  ],
  carLoanDeduction: [
    "additional-deductions",
    (of) => carLoanDeduction(of, "single", some, some, rulebook),
  ],
  excessBusinessLoss: [
    "excess-business-loss",
    (of) => excessBusinessLoss(of, "single", some, rulebook),
  ],
  capitalGain: ["capital-loss-limit", (of) => capitalGain(of, "single", some, some, rulebook)],
  taxableBenefits: [
    "social-security-benefits",
    (of) => taxableBenefits(of, "separate", false, some, some, rulebook),
  ],
  limitedItemizedDeductions: [
    "itemized-limit",
    (of) => limitedItemizedDeductions(of, "single", some, some, rulebook),
  ],
  grossIncome: ["", (of) => grossIncome(of, "single", known({ wages: 1 }), rulebook)],
  totalTax: ["", (of) => totalTax(of, "single", known({ wages: 1 }), rulebook)],
};
const cases = Object.entries(CALCULATIONS).flatMap(([name, [file, work]]) =>
  NOT_HELD.map((taxYear) => ({ name, file, work, taxYear }))
);

describe("a tax year that the tables do not cover", () => {
  it.each(cases)("$taxYear is refused by $name", ({ taxYear, file, work }) => {
    const date = `1/1/${String(taxYear)}`;
    expect(() => work(year(taxYear))).toThrow(NotInTableError);
    expect(() => work(year(taxYear))).toThrow(`no figure for ${date}.`);
    expect(() => work(year(taxYear))).toThrow(`(rules/${file}`);
  });

  it.each(Object.values(liabilityReaders).map((read) => read()))(
    "is outside the dates of $id",
    ({ knownFrom, knownThrough }) => {
      expect([knownFrom, knownThrough]).toEqual([
        calendarDate("2022-01-01"),
        calendarDate("2026-12-31"),
      ]);
    }
  );
});
