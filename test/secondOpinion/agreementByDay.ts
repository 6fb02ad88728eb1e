import { civil, dayNumber, daysInMonth, isLeap } from "./civilDays";

/** A balance paid in equal monthly payments, without code or tables from src. Amounts are dollars in binary numbers. */
export interface PaidMonthly {
  readonly owed: number;
  readonly tax: number;
  /** The day of the agreement. */
  readonly from: number;
  readonly months: number;
  readonly payment: number;
  /** The payment due date of the tax. */
  readonly due: number;
  readonly halved: boolean;
  /** Annual rate after the agreement. */
  readonly rate: number;
}

const monthsAfter = (day: number, months: number): number => {
  const { year, month, date } = civil(day);
  const all = year * 12 + month - 1 + months;
  const inYear = Math.floor(all / 12);
  const inMonth = (all % 12) + 1;
  return dayNumber(inYear, inMonth, Math.min(date, daysInMonth(inYear, inMonth)));
};

/**
 * The penalty and interest of the plan, day by day. Each day has interest on the unpaid balance and on the interest to date (section
 * 6622), and each month of delinquency that begins has penalty on the tax then unpaid (section 6651(b)(2)), up to 25% in all.
 */
export function agreementByDay(plan: PaidMonthly): number {
  const paydays = Array.from({ length: plan.months }, (_, index) =>
    monthsAfter(plan.from, index + 1)
  );
  const last = paydays.at(-1) ?? plan.from;
  const firstDayOfMonth = civil(plan.due).date + 1;
  let paid = 0;
  let interest = 0;
  let penalty = 0;
  let hundredths = 0;
  for (let day = plan.due + 1; day <= last; day++) {
    if (civil(day).date === firstDayOfMonth) {
      // A payment on the first day of a month does not reduce the penalty of that month: paid is that of the day before.
      const ends = monthsAfter(day, 1) - 1;
      const rate = plan.halved && ends >= plan.from ? 25 : 50;
      const share = Math.min(rate, 2500 - hundredths);
      const unpaid = Math.max(0, plan.tax - paid);
      if (unpaid > 0) {
        hundredths += share;
        if (day > plan.from) penalty += (unpaid * share) / 10_000;
      }
    }
    if (day > plan.from && plan.owed - paid > 0)
      interest +=
        ((plan.owed - paid + interest) * plan.rate) / (isLeap(civil(day).year) ? 366 : 365);
    if (paydays.includes(day)) paid += plan.payment;
  }
  return Math.round(penalty * 100) / 100 + Math.round(interest * 100) / 100;
}
