import type { CalendarDate } from "../../calendar/calendarDate";
import { longDate } from "../../calendar/writtenDate";
import type { Decimal } from "../../money/dollars";
import { writtenDollars } from "../cells/writtenDollars";
import type { LetterFacts } from "./letterFacts";

/** What is still to be done by the plan, and when. */
interface OpenActs {
  readonly fileOn: CalendarDate | undefined;
  readonly payOn: CalendarDate | undefined;
}

function openActs({ asOf, record, plan }: LetterFacts): OpenActs {
  const isPaid = plan.balance.isZero() || record.paidOn !== undefined || plan.paidOn < asOf;
  return {
    fileOn: record.filedOn === undefined ? plan.filedOn : undefined,
    payOn: isPaid ? undefined : plan.paidOn,
  };
}

function condition({ fileOn, payOn }: OpenActs): string {
  if (fileOn === undefined)
    return payOn === undefined
      ? "with these dates"
      : `if you pay the balance on ${longDate(payOn)}`;
  if (payOn === undefined) return `if you file on ${longDate(fileOn)}`;
  return payOn === fileOn
    ? `if you file and pay the balance on ${longDate(fileOn)}`
    : `if you pay the balance on ${longDate(payOn)}, and file on ${longDate(fileOn)}`;
}

const capitalized = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * The sentences on the penalties and interest that follow from the record and the plan.
 *
 * @param facts - The facts of the letter.
 * @param cost - Dollars and cents of penalties and interest.
 * @returns The sentences in order.
 */
export function costSentences(facts: LetterFacts, cost: Decimal): readonly string[] {
  const { asOf, dates, request, extension, givesTime, plan } = facts;
  const acts = openActs(facts);
  const { fileOn, payOn } = acts;
  const dependsOnRequest =
    extension === "may hold" && givesTime && plan.filedOn > dates.regular.lastDay;
  const when = dependsOnRequest
    ? `With the extension, ${condition(acts)}`
    : capitalized(condition(acts));
  if (cost.isZero()) return [`${when}, we expect no penalties or interest.`];

  const due = plan.validExtension ? dates.extended.lastDay : dates.regular.lastDay;
  const isFiledLate = fileOn !== undefined && fileOn > due;
  const canFileEarlier = isFiledLate && fileOn > asOf;
  const canPayEarlier = payOn !== undefined && payOn > asOf;
  const sooner = canPayEarlier
    ? [`${canFileEarlier ? "Filing and paying" : "Paying"} earlier reduces this amount.`]
    : canFileEarlier
      ? ["Filing earlier can reduce this amount."]
      : [];
  return [
    `${when}, we expect about ${writtenDollars(cost)} in penalties and interest.`,
    ...sooner,
    ...(isFiledLate && request.missed === undefined
      ? [`A return filed after ${longDate(due)}, is late, and the cost increases each month.`]
      : []),
  ];
}
