import type { CostCurveInput } from "../../../src/addin/costCurve/costOnDate";
import { calendarDate } from "../../../src/calendar/calendarDate";

/** A client whose cost of waiting was also calculated outside the project, day by day, at the rates of 2026. */
export const costCurveClient: CostCurveInput = {
  taxYear: 2025,
  totalTax: 42_000,
  payments: 27_000,
  state: "OH",
  filerType: "",
  postponementBegins: "",
  postponementEnds: "",
  assumedRate: 0.07,
  asOf: calendarDate("2026-06-01"),
};
