import { assumedRate, postponedTo, reliefBegins, status, taxYear } from "./guideArguments";
import type { GuideArgument, GuideFunction } from "./guideFunction";

const task = "Estimate the new year, and what short estimates cost";

const estimatedYear: GuideArgument = { ...taxYear, meaning: "Year whose tax is estimated." };
const priorTax: GuideArgument = {
  name: "priorTax",
  meaning: "Tax on last year's return; empty if none was filed, 0 if there was no tax.",
};
const priorIncome: GuideArgument = {
  name: "priorAdjustedGrossIncome",
  meaning: "Last year's adjusted gross income.",
};
const farmer: GuideArgument = {
  name: "farmer",
  meaning: "Yes if two thirds of gross income is from farming or fishing.",
  optional: true,
};
const estimates: readonly GuideArgument[] = [
  estimatedYear,
  { name: "requiredPayment", meaning: "Required annual payment, see REQUIREDPAYMENT." },
  { name: "withholding", meaning: "Withheld in the year; counted in four equal parts." },
  { name: "payments", meaning: "Estimated payments as rows of day and amount, in any order." },
  { name: "paidOn", meaning: "Day the rest was paid, if before April 15.", optional: true },
  assumedRate,
  {
    name: "currentTax",
    meaning: "The year's tax: nothing is charged where under $1,000 is left after withholding.",
    optional: true,
  },
  farmer,
  reliefBegins,
  postponedTo,
];

/** The functions about estimated tax. */
export const estimatesGuide: readonly GuideFunction[] = [
  {
    task,
    name: "REQUIREDPAYMENT",
    purpose: "The required annual payment of estimated tax.",
    arguments: [
      estimatedYear,
      status,
      { name: "currentTax", meaning: "Tax of that year, expected or known." },
      priorTax,
      priorIncome,
      farmer,
    ],
  },
  {
    task,
    name: "FIRSTINSTALLMENT",
    purpose: "The first estimate, often sent with the extension of the year before.",
    arguments: [
      estimatedYear,
      status,
      { name: "expectedTax", meaning: "Tax expected for that year." },
      priorTax,
      priorIncome,
      { name: "withholding", meaning: "Expected to be withheld in the year.", optional: true },
      { name: "credited", meaning: "Last year's overpayment applied.", optional: true },
      farmer,
    ],
  },
  {
    task,
    name: "ESTIMATECHARGE",
    purpose: "The addition to tax for underpaid estimates, by the regular method.",
    arguments: estimates,
  },
  {
    task,
    name: "ESTIMATELINES",
    purpose: "The parts that add up to ESTIMATECHARGE. Fills several rows.",
    arguments: estimates,
  },
];
