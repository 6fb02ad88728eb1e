import {
  agreementFrom,
  assumedRate,
  extended,
  filedOn,
  filer,
  paidOn,
  paidOnTime,
  postponedTo,
  reliefBegins,
  state,
  taxYear,
} from "./guideArguments";
import type { GuideArgument, GuideFunction } from "./guideFunction";

const task = "Pay in parts, compare choices";

const totalTax: GuideArgument = {
  name: "totalTax",
  meaning: "Total tax as the return will show it.",
};
const circumstances: readonly GuideArgument[] = [
  extended,
  state,
  filer,
  assumedRate,
  agreementFrom,
  reliefBegins,
  postponedTo,
];

/** The functions for part payments and for choices side by side. */
export const accountGuide: readonly GuideFunction[] = [
  {
    task,
    name: "LEDGER",
    purpose: "The running account of a return paid in parts. Fills several rows.",
    arguments: [
      taxYear,
      totalTax,
      { name: "payments", meaning: "Every payment as rows of day and amount, in any order." },
      filedOn,
      ...circumstances,
    ],
  },
  {
    task,
    name: "WHATIF",
    purpose: "Charges by extra payment (down) and day (across). Fills several rows.",
    arguments: [
      taxYear,
      totalTax,
      paidOnTime,
      { name: "extraPayments", meaning: "Extra payments with the request to try." },
      { name: "days", meaning: "Days to try, on which the rest is paid and the return filed." },
      ...circumstances,
    ],
  },
  {
    task,
    name: "EFFECTIVERATE",
    purpose: "What the delay costs a year, to hold against the rate of a loan.",
    arguments: [taxYear, totalTax, paidOnTime, paidOn, filedOn, ...circumstances],
  },
];
