import { describe, expect, it } from "vitest";
import { totalTax } from "../../../src/calculation/liability/totalTax";
import { rulebook } from "../../../src/rules/rulebook";
import { known, statusOf, year, type Written } from "./givenTax";

const total = (taxYear: number, status: string, written: Written) =>
  totalTax(year(taxYear), statusOf(status), known(written), rulebook);
const amount = (...given: Parameters<typeof total>): number => total(...given).amount.toNumber();

/** The tax lines: what stands between taxable income and the total. */
function taxes(...given: Parameters<typeof total>) {
  const shown = total(...given).lines.map(({ what, amount }) => [what, amount.toNumber()]);
  return shown.slice(shown.findIndex(([what]) => what === "Taxable income") + 1, -1);
}

// Each return worked by hand through the lines of the forms; no publication has them whole.
describe("a return worked by hand", () => {
  it("wages of a single filer, 2025", () => {
    // 75,750 - 15,750 = 60,000; 5,578.50 + 22% of (60,025 - 48,475) = 8,119.50, half up
    expect(amount(2025, "single", { wages: 75_750 })).toBe(8_120);
  });

  it("a couple with two children, 2025", () => {
    // 120,000 - 31,500 = 88,500; 2,385 + 12% of (88,525 - 23,850) = 10,146; 2 x 2,200
    expect(
      taxes(2025, "joint", { wages: 120_000, childrenUnder17: 2, withholding: 14_000 })
    ).toEqual([
      ["Income tax", 10_146],
      ["Less child tax credit and credit for other dependents", -4_400],
    ]);
  });

  it("a single filer with a parent to care for, 2025: $500, section 24(h)(4)", () => {
    expect(taxes(2025, "single", { wages: 75_750, otherDependents: 1 })).toEqual([
      ["Income tax", 8_120],
      ["Less child tax credit and credit for other dependents", -500],
    ]);
  });

  it("no income at all shows its tax of nothing", () => {
    expect(taxes(2025, "single", { wages: 0 })).toEqual([["Income tax", 0]]);
  });

  it("a sole proprietor, 2025", () => {
    // half of 14,130: 7,065; 92,935 - 15,750 = 77,185; less 20%, 15,437: 61,748; 5,578.50 + 22% of (61,725 - 48,475) = 8,493.50
    expect(taxes(2025, "single", { businessProfit: 100_000 })).toEqual([
      ["Income tax", 8_494],
      ["Self-employment tax", 14_130],
    ]);
  });

  it("wages, dividends and a gain above the thresholds, 2025", () => {
    // 364,250, of it 65,000 preferential: 57,231 + 35% of 48,725 = 74,284.75, and 15% of 65,000; 0.9% of 100,000; 3.8% of 80,000
    const given = {
      wages: 300_000,
      interest: 10_000,
      ordinaryDividends: 20_000,
      qualifiedDividends: 15_000,
      longTermGain: 50_000,
    };
    expect(taxes(2025, "single", given)).toEqual([
      ["Income tax", 84_035],
      ["Additional Medicare Tax", 900],
      ["Net investment income tax", 3_040],
    ]);
  });

  it("a couple that itemizes in the highest bracket, 2026", () => {
    // 110,000 itemized less 2/37 of it: 104,054; 895,946: 206,583.50 + 37% of 127,246 = 253,664.52; 0.9% of 750,000
    const given = { wages: 1_000_000, itemizedDeductions: 100_000, stateAndLocalTaxes: 60_000 };
    expect(taxes(2026, "joint", given)).toEqual([
      ["Income tax", 253_665],
      ["Additional Medicare Tax", 6_750],
    ]);
  });

  it("retired, both 65, with benefits, 2025", () => {
    // 85% of 40,000: 34,000; 134,000 - 34,700 - 12,000 = 87,300; 2,385 + 12% of (87,325 - 23,850)
    expect(
      amount(2025, "joint", { pensions: 100_000, socialSecurityBenefits: 40_000, aged: 2 })
    ).toBe(10_002);
  });

  it("tips, overtime and a car loan, 2025", () => {
    // 80,000 - 15,750 - 18,000 = 46,250; 1,192.50 + 12% of (46,275 - 11,925) = 5,314.50
    const given = { wages: 80_000, tips: 10_000, overtime: 5_000, carLoanInterest: 3_000 };
    expect(amount(2025, "single", given)).toBe(5_315);
  });

  it("an early distribution, 2025", () => {
    // 20,000 - 15,750 = 4,250: 428; 10% of 20,000 (26 U.S.C. 72(t))
    const given = { retirementDistributions: 20_000, earlyDistributions: 20_000 };
    expect(taxes(2025, "single", given)).toEqual([
      ["Income tax", 428],
      ["Additional tax on early distributions", 2_000],
    ]);
    expect(amount(2025, "single", given)).toBe(2_428);
  });

  // Form 5329, line 1: early distributions included in income.
  it.each<[string, Written]>([
    ["alone", {}],
    ["among pensions", { pensions: 20_000 }],
    ["beyond the retirement distributions", { retirementDistributions: 5_000 }],
    [
      "beyond pensions and retirement distributions",
      { pensions: 8_000, retirementDistributions: 5_000 },
    ],
  ])("an early distribution given %s is income once, 2025", (_how, given) => {
    expect(amount(2025, "single", { ...given, earlyDistributions: 20_000 })).toBe(2_428);
  });

  it("a full return below the seam, where the Tax Table and not 10% flat governs", () => {
    // printed row 1,600 to 1,625 is 161; a test scenario of the Internal Revenue Service enters 162
    expect(amount(2025, "joint", { wages: 33_120 })).toBe(161);
  });
});

describe("the minimum tax of a return", () => {
  it("on incentive stock options, 2025", () => {
    // 134,250: 25,067; 350,000 - 88,100 = 261,900 at 28% less 4,782
    expect(taxes(2025, "single", { wages: 150_000, minimumTaxItems: 200_000 })).toEqual([
      ["Income tax", 25_067],
      ["Alternative minimum tax", 43_483],
    ]);
  });

  // Form 6251 line 13 takes the whole gain (line 4 of the gain worksheet), more than taxable income where deductions come off it.
  it("on a gain larger than taxable income keeps the gain rates for the whole of it", () => {
    expect(taxes(2025, "single", { longTermGain: 1_000_000 })).toEqual([
      ["Income tax", 162_928],
      ["Alternative minimum tax", 3_150],
      ["Net investment income tax", 30_400],
    ]);
  });

  // Form 6251 line 1: where taxable income is zero, income less all deductions, a negative number.
  it("counts deductions that found no income", () => {
    // 10,000 - 15,750 + 15,750 + 200,000 = 210,000; less 88,100 at 26%
    expect(amount(2025, "single", { wages: 10_000, minimumTaxItems: 200_000 })).toBe(31_694);
  });
});

// Each worked by hand from the statute named; no publication has them.
describe("a return with several limits", () => {
  // 26 U.S.C. 461(l): 687,000 less 15,750; 188,769.75 + 37% of 44,900 = 205,382.75; 0.9% of 800,000
  it("an excess business loss, 2025", () => {
    expect(taxes(2025, "single", { wages: 1_000_000, businessProfit: -500_000 })).toEqual([
      ["Income tax", 205_383],
      ["Additional Medicare Tax", 7_200],
    ]);
    expect(amount(2025, "single", { wages: 1_000_000, businessProfit: -500_000 })).toBe(212_583);
  });

  // 26 U.S.C. 199A(e)(1) as amended: taxable income without regard to section 68
  it("business income beside the limit on itemized deductions, 2026", () => {
    const given = {
      businessProfit: 1_000_000,
      businessWages: 600_000,
      itemizedDeductions: 100_000,
    };
    // 705,541: 192,979.25 + 37% of 64,941 = 217,007.42; 12.4% of 184,500 and 2.9% of 923,500; 0.9% of 723,500
    expect(taxes(2026, "single", given)).toEqual([
      ["Income tax", 217_007],
      ["Self-employment tax", 49_660],
      ["Additional Medicare Tax", 6_512],
    ]);
    expect(amount(2026, "single", given)).toBe(273_179);
  });

  // 26 U.S.C. 56(b)(1): 1,400,000 without the limit of section 68, no exemption left; 28% less 4,890; 0.9% of 800,000
  it("the minimum tax beside the limit on itemized deductions, 2026", () => {
    const given = { wages: 1_000_000, minimumTaxItems: 500_000, itemizedDeductions: 100_000 };
    expect(amount(2026, "single", given)).toBe(394_310);
  });

  // 26 U.S.C. 63(b)(4), 170(p): 16,100 and 1,000 are more than 16,500; 5,800 + 22% of (82,925 - 50,400) = 12,955.50
  it("cash gifts beside the standard deduction, 2026", () => {
    const given = { wages: 100_000, itemizedDeductions: 16_500, charitableCash: 1_000 };
    expect(amount(2026, "single", given)).toBe(12_956);
  });

  // 26 U.S.C. 63(e), 56(b)(1)(D): 586,000 less 88,100 at 28% less 4,782, where the standard deduction would leave 511,900
  it("itemized deductions below the standard deduction, 2025", () => {
    const given = { wages: 200_000, minimumTaxItems: 400_000, itemizedDeductions: 14_000 };
    expect(amount(2025, "single", given)).toBe(134_630);
  });
});

describe("credits", () => {
  it("are held to income tax and minimum tax, the other taxes stay", () => {
    expect(taxes(2025, "single", { wages: 20_000, credits: 10_000, otherTaxes: 300 })).toEqual([
      ["Income tax", 428],
      ["Less other credits", -428],
      ["Other taxes", 300],
    ]);
    expect(taxes(2025, "head", { wages: 30_000, childrenUnder17: 1, credits: 100 })).toEqual([
      ["Income tax", 638],
      ["Less child tax credit and credit for other dependents", -638],
    ]);
    expect(taxes(2025, "head", { wages: 60_000, childrenUnder17: 1, credits: 100 })).toEqual([
      ["Income tax", 4_025],
      ["Less child tax credit and credit for other dependents", -2_200],
      ["Less other credits", -100],
    ]);
  });

  it("income shrinks that for children before it is held to the tax", () => {
    // single 2024: 250,000 is 50,000 above, 2,500 off 4,000
    const found = taxes(2024, "single", { wages: 250_000, childrenUnder17: 2 });
    expect(found).toContainEqual(["Less child tax credit and credit for other dependents", -1_500]);
  });
});

describe("what carries over between the lines", () => {
  it("self-employment uses the Medicare threshold that wages leave", () => {
    // 150,000 and 92,350 are 42,350 above 200,000: 381.15
    const found = taxes(2025, "single", { wages: 150_000, businessProfit: 100_000 });
    expect(found).toContainEqual(["Additional Medicare Tax", 381]);
  });

  it("lines that rest on the law of the year name it, and the total stands last", () => {
    const { lines, amount: owed } = total(2025, "single", { wages: 250_000, interest: 5_000 });
    for (const what of ["Income tax", "Additional Medicare Tax", "Net investment income tax"]) {
      expect(lines.find((line) => line.what === what)?.source?.citation).not.toBe("");
      expect(lines.find((line) => line.what === what)?.source).toBeDefined();
    }
    expect(lines.at(-1)).toEqual({ what: "Total tax", amount: owed, source: undefined });
  });
});
