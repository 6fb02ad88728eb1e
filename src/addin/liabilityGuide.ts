import { status, taxYear } from "./guideArguments";
import type { GuideArgument, GuideFunction } from "./guideFunction";

const task = "Estimate total tax for line 4";

const items: GuideArgument = {
  name: "items",
  meaning: "Rows of label and amount, such as wages, interest, business profit, in any order.",
};
const taxableIncome: GuideArgument = { name: "taxableIncome", meaning: "Taxable income." };
const preferential: GuideArgument = {
  name: "preferential",
  meaning: "Net long-term gain and qualified dividends in it.",
  optional: true,
};
const optional = (name: string, meaning: string): GuideArgument => ({
  name,
  meaning,
  optional: true,
});

/** The functions that estimate total tax. */
export const liabilityGuide: readonly GuideFunction[] = [
  {
    task,
    name: "LIABILITY",
    purpose: "Total tax from what is known of the return: an estimate, not a return.",
    arguments: [taxYear, status, items],
  },
  {
    task,
    name: "LIABILITYLINES",
    purpose: "Its working from income to total tax, and what it leaves out. Fills several rows.",
    arguments: [taxYear, status, items],
  },
  {
    task,
    name: "PAYMENTSTOTAL",
    purpose: "Payments for line 5 from the same rows.",
    arguments: [items],
  },
  {
    task,
    name: "PROJECT",
    purpose: "Total tax projected from last year's and a few changes.",
    arguments: [
      taxYear,
      status,
      { name: "priorTax", meaning: "Total tax on last year's return." },
      { name: "priorTaxableIncome", meaning: "Taxable income on last year's return." },
      optional("changes", "Rows of label and difference from last year, falls negative."),
    ],
  },
  {
    task,
    name: "INCOMETAX",
    purpose: "Income tax on taxable income, by table, worksheet and gain rates.",
    arguments: [taxYear, status, taxableIncome, preferential],
  },
  {
    task,
    name: "STANDARDDEDUCTION",
    purpose: "The standard deduction with its additions.",
    arguments: [
      taxYear,
      status,
      optional("additions", "How many of 65 or older and blind apply, 0 to 4."),
      optional("earnedIfDependent", "Earned income, only for somebody's dependent."),
    ],
  },
  {
    task,
    name: "SETAX",
    purpose: "Self-employment tax on a net profit.",
    arguments: [
      taxYear,
      { name: "profit", meaning: "Net profit of one person." },
      optional("wages", "The same person's wages under Social Security."),
    ],
  },
  {
    task,
    name: "EXTRAMEDICARE",
    purpose: "Additional Medicare tax above the threshold.",
    arguments: [
      taxYear,
      status,
      { name: "wages", meaning: "Medicare wages, of both spouses on a joint return." },
      optional("selfEmployment", "Net profit from self-employment."),
    ],
  },
  {
    task,
    name: "NETINVESTMENTTAX",
    purpose: "Net investment income tax above the threshold.",
    arguments: [
      taxYear,
      status,
      { name: "netInvestment", meaning: "Net investment income." },
      { name: "adjustedGrossIncome", meaning: "Adjusted gross income." },
    ],
  },
  {
    task,
    name: "MINIMUMTAX",
    purpose: "Alternative minimum tax above the regular tax.",
    arguments: [
      taxYear,
      status,
      taxableIncome,
      { name: "addedBack", meaning: "Standard deduction or state taxes, and the like." },
      preferential,
    ],
  },
  {
    task,
    name: "BUSINESSDEDUCTION",
    purpose: "Deduction for the qualified income of one business.",
    arguments: [
      taxYear,
      status,
      { name: "qualifiedIncome", meaning: "Qualified business income." },
      { name: "taxableIncome", meaning: "Taxable income before this deduction." },
      preferential,
      optional("wages", "Wages the business paid."),
      optional("property", "Its depreciable property, unadjusted."),
      optional("specifiedService", "Yes for health, law, accounting and the like."),
    ],
  },
  {
    task,
    name: "CHILDCREDIT",
    purpose: "Credit for children under 17 and other dependents.",
    arguments: [
      taxYear,
      status,
      { name: "children", meaning: "Children under 17." },
      optional("otherDependents", "Other dependents."),
      optional("adjustedGrossIncome", "Adjusted gross income; left out, nothing shrinks."),
    ],
  },
];
