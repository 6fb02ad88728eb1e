/**
 * Total tax of a whole return by the lines of the forms, in whole dollars, once with the standard deduction and once with itemized
 * deductions: Schedule A, Schedule 1-A, Form 8995-A, Form 6251, Schedule 8812, Forms 8959 and 8960. Imports nothing from src or rules.
 */
import { figuresOf } from "./liabilityFigures";
import { DOLLAR } from "./liabilityTaxTable";
import { form6251 } from "./liabilityWorksheets";
import { COLUMN, returnFigures } from "./returnFigures";
import { given, incomeOf, positive, rounded, type Filer, type Income } from "./returnIncome";

/** A return with one of the deductions. */
export interface Choice {
  /** Deduction taken, with gifts of cash beside the standard deduction. */
  readonly deduction: number;
  readonly cut: number;
  readonly gifts: number;
  readonly businessDeduction: number;
  readonly taxableIncome: number;
  readonly minimumTax: number;
  readonly beforeCredits: number;
  readonly afterCredits: number;
}

/** A calculated return. */
export interface Whole {
  readonly filer: Filer;
  readonly income: Income;
  readonly standard: Choice;
  readonly itemized: Choice;
  readonly chosen: "standard" | "itemized";
  readonly medicare: number;
  readonly investment: number;
  readonly totalTax: number;
}

/** Section 63(c), (f) and (c)(5). */
function standardDeduction(filer: Filer): number {
  const { standard, boxes, dependent } = returnFigures(filer.year);
  const regular = standard[COLUMN[filer.status]];
  const isUnmarried = filer.status === "single" || filer.status === "head";
  const box = isUnmarried ? boxes[0] : boxes[1];
  const more = box * (given(filer, "aged") + given(filer, "blind"));
  const earned = filer.items["earnedIfDependent"];
  if (earned === undefined) return regular + more;
  return Math.min(regular, Math.max(dependent[0], earned + dependent[1])) + more;
}

/** Schedule A, line 5e: section 164(b)(6) and (7). */
function stateTaxes(filer: Filer, agi: number): number {
  const share = filer.status === "separate" ? 0.5 : 1;
  const paid = given(filer, "stateAndLocalTaxes");
  if (filer.year < 2025) return Math.min(paid, 10_000 * share);
  const [cap, above] = filer.year === 2025 ? [40_000, 500_000] : [40_400, 505_000];
  const reduced = cap * share - positive(agi - above * share) * 0.3;
  return Math.min(paid, Math.max(reduced, 10_000 * share));
}

/** Schedule 1-A, parts II to V: tips, overtime, car loans and seniors, each rounded. */
function schedule1A(filer: Filer, agi: number): Readonly<Record<string, number>> {
  if (filer.year < 2025) return {};
  const isJoint = filer.status === "joint";
  const work = (name: string, cap: number): number =>
    positive(
      Math.min(given(filer, name), cap) -
        Math.floor(positive(agi - (isJoint ? 300_000 : 150_000)) / 1_000) * 100
    );
  const carSteps = Math.ceil(positive(agi - (isJoint ? 200_000 : 100_000)) / 1_000);
  const car = positive(Math.min(given(filer, "carLoanInterest"), 10_000) - carSteps * 200);
  if (filer.status === "separate") return { car };
  const each = positive(6_000 - positive(agi - (isJoint ? 150_000 : 75_000)) * 0.06);
  return {
    car,
    tips: work("tips", 25_000),
    overtime: work("overtime", isJoint ? 25_000 : 12_500),
    senior: rounded(each * given(filer, "aged")),
  };
}

/** Form 8995-A, one business; section 199A. */
function businessDeduction(filer: Filer, income: Income, before: number): number {
  const { businessThreshold } = returnFigures(filer.year);
  const place = filer.status === "joint" ? 0 : filer.status === "separate" ? 1 : 2;
  const range = (filer.year < 2026 ? 50_000 : 75_000) * (place === 0 ? 2 : 1);
  const phased = Math.min(1, positive(positive(before) - businessThreshold[place]) / range);
  const applicable = given(filer, "specifiedService") > 0 ? 1 - phased : 1;
  const profit = positive(given(filer, "businessProfit") - income.halfOfIt);
  const qualified = (filer.items["qualifiedBusinessIncome"] ?? profit) * applicable;
  const [wages, property] = [given(filer, "businessWages"), given(filer, "businessProperty")];
  const cap = Math.max(wages / 2, wages / 4 + property / 40) * applicable;
  const full = qualified / 5;
  const component = full - positive(full - cap) * phased;
  const gain = income.netGain + income.qualifiedDividends;
  const deduction = Math.min(component, positive(positive(before) - gain) / 5);
  return filer.year >= 2026 && qualified >= 1_000 ? Math.max(deduction, 400) : deduction;
}

/** Tax before and after credits with one of the deductions. */
function choose(filer: Filer, income: Income, itemizes: boolean): Choice {
  const { year, status } = filer;
  const column = COLUMN[status];
  const agi = income.adjustedGrossIncome;
  const taxes = stateTaxes(filer, agi);
  const listed = given(filer, "itemizedDeductions") + taxes;
  const extra = schedule1A(filer, agi);
  const extras = Object.values(extra).reduce((sum, one) => sum + one, 0);
  const giftLimit = year < 2026 ? 0 : status === "joint" ? 2_000 : 1_000;
  const gifts = itemizes ? 0 : Math.min(given(filer, "charitableCash"), giftLimit);
  const whole = itemizes ? rounded(listed) : standardDeduction(filer) + gifts;

  // Section 199A(e)(1) and section 56(b)(1): both without section 68.
  const beforeBusiness = agi - whole - extras;
  const unrounded = businessDeduction(filer, income, agi - listed - extras);
  const business = rounded(businessDeduction(filer, income, beforeBusiness));
  const topStarts = figuresOf(year).columns[column].tops[5] ?? NaN;
  const excess = positive(agi - extras - unrounded - topStarts);
  const lost = year < 2026 ? 0 : (Math.min(listed, excess) * 2) / 37;
  const deduction = itemizes ? rounded(listed - lost) : whole;
  const cut = whole - deduction;
  const taxableIncome = positive(agi - deduction - extras - business);

  // Form 6251, lines 1 to 4; its instructions for line 4 of a separate filer.
  const addedBack = itemizes ? rounded(taxes) : standardDeduction(filer);
  const { exemption, shrinksAbove } = figuresOf(year).columns.separate;
  const rate = figuresOf(year).centsPerDollar / 100;
  const line4 =
    beforeBusiness -
    business +
    addedBack +
    (extra["senior"] ?? 0) +
    given(filer, "minimumTaxItems");
  const beyond = positive(line4 - shrinksAbove - exemption / rate) * rate;
  const added = status === "separate" ? Math.min(exemption, beyond) : 0;
  const lines = form6251({
    year,
    column,
    taxableIncome: taxableIncome * 100,
    qualifiedDividends: income.qualifiedDividends * 100,
    netGain: income.netGain * 100,
    amtAdjustments: (line4 + added - taxableIncome) * 100,
  });
  const regular = rounded((lines[10] ?? NaN) / DOLLAR);
  const minimumTax = rounded((lines[11] ?? NaN) / DOLLAR);
  const beforeCredits = regular + minimumTax;

  // Schedule 8812, lines 4 to 12.
  const full =
    given(filer, "childrenUnder17") * returnFigures(year).child +
    given(filer, "otherDependents") * 500;
  const steps = Math.ceil(positive(agi - (status === "joint" ? 400_000 : 200_000)) / 1_000);
  const family = positive(full - steps * 50);
  const names = ["credits", "foreignTaxCredit", "educationCredits", "elderlyCredit"];
  const credits = names.reduce((sum, name) => sum + given(filer, name), family);
  return {
    deduction,
    cut,
    gifts,
    businessDeduction: business,
    taxableIncome,
    minimumTax,
    beforeCredits,
    afterCredits: positive(beforeCredits - credits),
  };
}

/** Works out a return with the deductions that lead to the least tax. */
export function wholeReturn(filer: Filer): Whole {
  const income = incomeOf(filer);
  const standard = choose(filer, income, false);
  const itemized = choose(filer, income, true);
  const lists = given(filer, "itemizedDeductions") + given(filer, "stateAndLocalTaxes") > 0;
  const chosen = lists && itemized.afterCredits < standard.afterCredits ? "itemized" : "standard";

  // Form 8959, parts I and II; Form 8960, lines 12 to 17.
  const wages = given(filer, "wages");
  const medicareFrom = { joint: 250_000, separate: 125_000 }[filer.status as string] ?? 200_000;
  const onWages = positive(wages - medicareFrom);
  const onEarnings = positive(income.netEarnings - positive(medicareFrom - wages));
  const medicare = rounded((onWages + onEarnings) * 0.009);
  const isPair = filer.status === "joint" || filer.status === "survivor";
  const investmentFrom = isPair ? 250_000 : filer.status === "separate" ? 125_000 : 200_000;
  const above = positive(income.adjustedGrossIncome - investmentFrom);
  const investment = rounded(Math.min(income.netInvestmentIncome, above) * 0.038);
  const early = rounded(given(filer, "earlyDistributions") * 0.1);
  const least = Math.min(standard.afterCredits, lists ? itemized.afterCredits : Infinity);
  const totalTax =
    least + income.selfEmploymentTax + medicare + investment + early + given(filer, "otherTaxes");
  return { filer, income, standard, itemized, chosen, medicare, investment, totalTax };
}
