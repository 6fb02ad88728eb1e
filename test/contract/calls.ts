import type { WorksheetFunction } from "../../src/host/customFunctions";

/** A call of a worksheet function: its id, and a single value or a range for each argument. */
export type Call = readonly [id: string, ...values: unknown[]];

/** Dates on which an error of a clock or a time zone would show: changes of daylight saving time, ends of quarters, leap days. */
const DATES = [
  "2024-02-29",
  "2024-03-10",
  "2024-06-30",
  "2024-11-03",
  "2024-12-31",
  "2025-01-01",
  "2025-03-09",
  "2025-04-06",
  "2025-09-28",
  "2025-11-02",
  "2026-03-08",
  "2026-04-15",
  "2026-04-16",
  "2026-10-15",
  "2026-12-31",
];
/** 2025-03-09, 2025-04-05 and 2026-04-15 as worksheet dates, at the start, in the middle and at the end of the day. */
const SERIALS = [45725, 45752, 46127].flatMap((day) => [day, day + 0.5, day + 0.9999]);
const YEARS = [2010, 2015, 2017, 2019, 2020, 2021, 2022, 2023, 2024, 2025];
const FISCAL = ["2023-02-28", "2024-02-29", "2025-06-30", "2026-09-30"];
const CLIENTS = [[], ["ME"], ["MA", "nonresident"], ["foreign", "out of country"]] as const;
const POSTPONEMENT = ["CA", "", "2025-01-07", "2025-10-15"];

const dates: Call[] = [...YEARS, ...FISCAL].flatMap((year) => [
  ...["DUE", "EXTENDED", "PAYBY"].map((id): Call => [id, year, "MA", "out of country"]),
  ["INSTALLMENT", year, [[1], [2], [3], [4]]],
  ["CALENDAR", year],
]);
const clients: Call[] = CLIENTS.flatMap((client) => [
  ["DUE", [[2019], [2022], [2023], [2025]], ...client],
  ["CALENDAR", 2023, ...client],
  ["LATEFILE", 2024, 5000, "2025-11-02", "yes", ...client],
  ["LATEPAY", 2024, 5000, "2025-11-02", ...client],
  ["CHARGES", 2024, 20000, 12345.67, "2025-11-02", "2025-11-03", "", ...client],
  ["CHARGELINES", 2024, 20000, 12345.67, "2025-11-02", "2025-11-03", "x", ...client],
]);
const single: Call[] = [...DATES, ...SERIALS].flatMap((date): Call[] => [
  ["UNDERPAYRATE", date],
  ["INTEREST", 10000, "2024-02-28", date],
  ["DISASTERDATE", date, "2025-01-07", "2025-10-15"],
  ["SOURCE", "underpayment rate", date],
]);
const PAYMENTS = [
  ["2025-04-15", 12000],
  ["2025-11-02", 3000],
  ["2026-03-08", 4000],
];
const ITEMS = [
  ["wages", 90000],
  ["business profit", 20000],
  ["qualified dividends", 1500],
  ["ordinary dividends", 2000],
  ["long-term gain", 12000],
  ["children under 17", 2],
  ["withholding", 9000],
];
const PERIODS = [
  ["", "Jan-Mar", "Jan-May", "Jan-Aug", "Jan-Dec"],
  ["AGI", 9000, 20000, 52000, 121000.5],
  ["net self-employment earnings", 4000, 9000, 20000, 60000],
];
const money: Call[] = [
  ["LEDGER", 2024, 20000, PAYMENTS, "2025-11-03", "yes"],
  [
    "LEDGER",
    2024,
    20000,
    PAYMENTS,
    "2025-10-03",
    "yes",
    "MA",
    "",
    "",
    "2025-12-01",
    "",
    "",
    "2025-11-03",
    "2026-03-08",
  ],
  ["AGREEMENT", 12000, "yes", "2026-03-08", 11000, 2024, 24, "latest"],
  ["AGREEMENT", 12000, "", "2024-11-03"],
  ["WHATIF", 2025, 20000, 15000, [[0], [1000]], [["2026-04-15", "2026-10-15"]], "yes"],
  ["EFFECTIVERATE", 2024, 20000, 15000, "2025-11-02", "2025-10-15", "yes"],
  ["REQUIREDPAYMENT", 2025, "MFS", 30000, [[""], [0], [20000]], 80000],
  ["FIRSTTIME", 2025, [[2023, "estimated tax penalty"]]],
  ["FIRSTINSTALLMENT", 2026, "joint", 24000, 20000, 120000, 8000],
  ["ESTPENALTY", 2025, 16000, 2000, PAYMENTS],
  ["ESTPENALTYLINES", 2023, 16000, 2000, [["2023-09-28", 3000]], "2024-03-10"],
  ["ANNUALIZED", 2025, "single", PERIODS, 16000],
  [
    "ESTPENALTY",
    2025,
    16000,
    2000,
    PAYMENTS,
    "2026-01-31",
    "",
    "",
    "",
    "",
    "",
    "",
    "2026-02-02",
    "single",
    PERIODS,
  ],
  ["LIABILITY", 2025, "joint", ITEMS],
  ["LIABILITYLINES", 2026, "head", ITEMS],
  ["PAYMENTSTOTAL", ITEMS],
  [
    "PROJECTEDTAX",
    2025,
    "single",
    ITEMS,
    [
      ["wages", 5000],
      ["business profit", "-10%"],
    ],
  ],
  ["INCOMETAX", 2025, "single", [[99999.99], [100000], [900000]], [[0], [5000], [700000]]],
  ["STANDARDDEDUCTION", 2025, "head", 1],
  ["SETAX", 2025, 250000, 50000],
  ["EXTRAMEDICARE", 2025, "single", 225000, 10000],
  ["NETINVESTMENTTAX", 2025, "joint", 40000, 270000],
  ["MINIMUMTAX", 2026, "joint", 1200000, 60000, 200000],
  ["BUSINESSDEDUCTION", 2025, "single", 250000, 220000, 0, 30000, 100000, "yes"],
  ["CHILDCREDIT", 2025, "joint", 2, 1, 410001],
];
const others: Call[] = [
  ["DUE", 2024, ...POSTPONEMENT],
  ["CALENDAR", 2024, ...POSTPONEMENT],
  ["CALENDAR", 2025, "MA", "out of country", "", "", "all"],
  ["EXCHANGEBY", "2025-11-10", 2025, [["yes"], ["no"]]],
  ["REFUNDBY", [[2019], [2022], [2024]], "", "yes"],
  ["REFUNDBY", 2024, "2025-11-02", "", ...POSTPONEMENT],
  ["ABROADDATE", "2025-03-09", [["physical presence"], ["bona fide residence"]]],
  ["CHARGES", 2025, 9000, 0, "2028-03-12", "2027-11-07", "", "", "", "latest"],
  ["CHARGELINES", 2025, 9000, 0, "2028-03-12", "2027-11-07", "", "", "", "8%", "2027-03-14"],
  ["COMBATZONE", 2025, "2026-03-08", "2026-11-01"],
  ["SHORTFALL", [[1.005], ["$2,000.10"]], [[0], [0.1]]],
  ["SUGGEST", 20000, 15000, "reasonable cause", "5%", 2500],
  ["LINES", 2025, 18249.5, 15000.49, 3000, "out of country"],
  ["KNOWNTHROUGH", [["underpayment rate"], ["legal holidays"]]],
  ["RULETABLES"],
  ["METHOD", 2025, 1500, "2026-04-10"],
  ["METHOD", "2025-06-30", [[0], [500]], "2025-10-01"],
  ["METHODLINES", 2025, 0, "2026-04-18", "2026-04-15"],
  [
    "MAILTO",
    2025,
    [["TX"], ["pa"], ["foreign"], ["estate"], ["MP"]],
    [["yes"], [0], [100], [0], [0]],
  ],
  ["MAILTO", 2022, "NY", 0, "", "", "yes"],
  ["MAILTO", 2025, "OR", 100, "UPS Next Day Air"],
  ["ISDESIGNATED", [["FedEx 2 Day"], ["DHL express 9:00"], ["UPS Ground"]]],
  [
    "STAGE",
    2025,
    "2026-04-17",
    [["2026-04-14"], ["2026-04-16"], [null]],
    "",
    [["2026-04-15"], [null], [null]],
  ],
  [
    "DAYSLEFT",
    2025,
    "2026-05-01",
    [["2026-04-10"], [null]],
    [["2026-04-10"], [null]],
    "",
    "",
    "2026-04-15",
  ],
  ["NEXTDATE", 2025, [["2026-04-01"], ["2026-05-01"]], "", "", "", "", "", "CA", "out of country"],
  ["ISSUES", 2025, "", 100, 0, "2026-04-16", "", "", "", "", "NY", "", "paper", "yes", "x", 900],
  [
    "ISSUECOUNT",
    2025,
    [[20000], [0]],
    15000,
    1000,
    "2026-04-10",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    500,
  ],
  ["STATEDUE", 2025, [["VA"], ["HI"], ["TX"], ["KS"], ["PR"]]],
  ["STATEEXTENDED", 2025, [["IN"], ["MA"], ["NY"]], "yes", [[null], [0.8], [1]]],
  ["STATERULE", 2025, "DE", "yes", "100%", "", "yes"],
  [
    "MEMO",
    2025,
    20000,
    15000,
    3000,
    [["2026-04-01"], ["2026-04-12"], ["2026-06-01"]],
    "2026-04-10",
    [["2026-04-11"], [null], ["2026-04-12"]],
    "",
    "",
    "",
    "2026-09-15",
    "",
    "full",
    "K-1 of the partnership",
  ],
  ["MEMOLINES", 2025, 20000, 15000, 3000, "2026-06-01", "", "", "", "", "", "2026-09-15"],
  [
    "ROSTERHEADINGS",
    [
      ["Name", "Est. tax", "W/H", "ES paid", "Fee"],
      ["Alder", 20000, 9000, 6000, 450],
    ],
    2025,
  ],
  [
    "ROSTER",
    [
      ["Client", "Line 4", "PAYMENTS", "FilerType", "Requested on", "Color"],
      ["Alder", 20000, 15000, "", "2026-04-10", "green"],
      ["", "", "", "", "", ""],
      ["Birch", "", 15000, "out of country", "", ""],
    ],
    2025,
    "2026-04-12",
  ],
  [
    "ROSTERROWS",
    [["Client", "Line 4", "PAYMENTS"]],
    [
      ["Alder", 20000, 15000],
      ["Birch", "", 15000],
    ],
    2025,
    "2026-04-12",
    "",
    "Balance due",
  ],
  ["DUE", "6/30/2026", [["Maine"], ["new york"], ["District of Columbia"]]],
  ["UNDERPAYRATE", [["4/15/2026"], ["04/16/26"], ["Apr. 15, 2026"], ["15/4/2026"]]],
  ["LATEFILE", 2025, 2000, "May 20, 2026", "4/10/2026"],
  ["DUE", "next year"],
  ["DUE", 2099],
  ["UNDERPAYRATE", "2199-12-31"],
  ["LATEPAY", 2025, 100, { code: "#DIV/0!" }],
];

/** About 220 calls that reach every function. */
export const calls: readonly Call[] = [...dates, ...clients, ...single, ...money, ...others];

/** The answers of built functions to these calls as JSON: one line per call, errors with their sentences. */
export function answersOf(functions: ReadonlyMap<string, WorksheetFunction>): string[] {
  return calls.map(([id, ...values]) => {
    const answer = functions.get(id);
    if (!answer) throw new RangeError(`${id} is not associated`);
    try {
      return JSON.stringify(answer(...values));
    } catch (thrown) {
      if (typeof thrown === "object" && thrown !== null && "code" in thrown)
        return JSON.stringify(thrown);
      throw thrown;
    }
  });
}
