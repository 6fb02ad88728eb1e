import { filer, payments, totalTax } from "./guideArguments";
import type { GuideFunction } from "./guideFunction";

const task = "Prepare the request";

/** The functions that prepare the request. */
export const requestGuide: readonly GuideFunction[] = [
  {
    task,
    name: "SHORTFALL",
    purpose: "The balance due, line 6; never below zero.",
    arguments: [totalTax, payments],
  },
  {
    task,
    name: "SUGGEST",
    purpose: "What to pay with the request.",
    arguments: [
      totalTax,
      payments,
      {
        name: "aim",
        meaning:
          "full (or blank), protect (just enough for the 90% presumption) or a fraction of the total tax.",
        optional: true,
      },
      {
        name: "cushion",
        meaning: "Added for safety: a fraction of the total tax below 1, or dollars.",
        optional: true,
      },
      {
        name: "firstInstallment",
        meaning:
          "First estimate of the new year in dollars. With any aim but full, send it as a payment of its own.",
        optional: true,
      },
    ],
  },
  {
    task,
    name: "LINES",
    purpose: "Lines 4 to 9 in whole dollars, as the form wants them. Fills several rows.",
    arguments: [
      totalTax,
      payments,
      { name: "paying", meaning: "Amount the client pays with the request, line 7." },
      filer,
    ],
  },
];
