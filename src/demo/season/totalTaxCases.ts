/** The items of a fictional client's return that are known in April. */
export interface TotalTaxCase {
  readonly client: string;
  readonly filingStatus: string;
  readonly description: string;
  /** Rows of label and amount as a preparer enters them: dollars, or a count of people. */
  readonly items: readonly (readonly [label: string, amount: number])[];
}

/** Five typical clients of the sample firm. */
export const TOTAL_TAX_CASES: readonly TotalTaxCase[] = [
  {
    client: "Anise",
    filingStatus: "married filing jointly",
    description: "employees with two children",
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
    filingStatus: "single",
    description: "sole proprietor",
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
    filingStatus: "married filing jointly",
    description: "retired with capital gains",
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
    filingStatus: "head of household",
    description: "wages, two children and a dependent parent",
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
    filingStatus: "married filing separately",
    description: "high wages and investment income",
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
