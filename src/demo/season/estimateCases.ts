/** One invented client's return as far as it is known in April. */
export interface EstimateCase {
  readonly client: string;
  readonly status: string;
  readonly about: string;
  /** Rows of label and amount, as a preparer would type them. */
  readonly items: readonly (readonly [label: string, amount: number])[];
}

/** Five typical clients; every name is a plant's. */
export const ESTIMATE_CASES: readonly EstimateCase[] = [
  {
    client: "Anise",
    status: "joint",
    about: "employee couple with two children",
    items: [
      ["wages", 68500],
      ["wages", 54200],
      ["interest", 840],
      ["ordinary dividends", 1150],
      ["qualified dividends", 900],
      ["children under 17", 2],
      ["withholding", 6100],
      ["withholding", 3900],
    ],
  },
  {
    client: "Chicory",
    status: "single",
    about: "sole proprietor",
    items: [
      ["business profit", 92400],
      ["interest", 310],
      ["adjustments", 7200],
      ["estimated payments", 14000],
      ["overpayment applied", 1200],
    ],
  },
  {
    client: "Fern",
    status: "joint",
    about: "retired with gains",
    items: [
      ["pensions", 46800],
      ["social security benefits", 41400],
      ["ordinary dividends", 6200],
      ["qualified dividends", 5600],
      ["long-term gain", 38000],
      ["short-term gain", -4500],
      ["65 or older", 2],
      ["withholding", 7300],
    ],
  },
  {
    client: "Lupin",
    status: "head of household",
    about: "one income, two children and a parent",
    items: [
      ["wages", 61300],
      ["qualified overtime", 2400],
      ["unemployment", 1900],
      ["children under 17", 2],
      ["other dependents", 1],
      ["withholding", 1450],
    ],
  },
  {
    client: "Verbena",
    status: "separate",
    about: "high earner with investment income",
    items: [
      ["wages", 388000],
      ["interest", 21500],
      ["ordinary dividends", 34000],
      ["qualified dividends", 29000],
      ["long-term gain", 120000],
      ["rental income", 18200],
      ["state and local taxes", 38000],
      ["itemized deductions", 16400],
      ["withholding", 98000],
      ["estimated payments", 42000],
    ],
  },
];
