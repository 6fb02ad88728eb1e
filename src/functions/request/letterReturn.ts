import { longDate } from "../../calendar/writtenDate";
import type { CalendarDate } from "../../calendar/calendarDate";
import type { MissedDate } from "../../calculation/season/requestStage";
import type { LetterFacts } from "./letterFacts";

const LATE = "The return is late and should be filed as soon as possible.";

/** The date of an event that the status of the request presupposes. */
const on = (date: CalendarDate | undefined): string => (date === undefined ? "" : longDate(date));

const requested = ({ record, returnName }: LetterFacts): string =>
  `On ${on(record.requestedOn)}, we requested an extension of time to file your ${returnName}`;

/** The letter where a request gives no more time: the due date is that of the postponement. */
function postponedReturn({ record, returnName, dates }: LetterFacts): readonly string[] {
  return [
    `A disaster postponement moves the due date of your ${returnName} to ${longDate(dates.regular.lastDay)}.`,
    record.requestedOn === undefined
      ? "An extension would give no more time, so we are not requesting one."
      : `An extension gives no more time, so our request of ${on(record.requestedOn)}, does not change this date.`,
  ];
}

function missedReturn(facts: LetterFacts, missed: MissedDate): readonly string[] {
  const { record, returnName, dates, request, extension, givesTime } = facts;
  const regular = longDate(dates.regular.lastDay);
  const extended = longDate(dates.extended.lastDay);
  const wasDue = `Your ${returnName} was due ${regular}`;
  switch (missed) {
    case "not requested on time":
      return [`${wasDue}, and no extension was requested by then.`, LATE];
    case "requested late":
      return [
        `${wasDue}.`,
        `Our request for an extension was made on ${on(record.requestedOn)}, and a late request gives no extension.`,
        LATE,
      ];
    case "perfection period over":
      return [
        `${wasDue}.`,
        `The IRS rejected the request for an extension that we made on ${on(record.requestedOn)}, and no corrected request was made by ${on(request.deadline)}.`,
        "You do not have an extension.",
        LATE,
      ];
    case "extended date missed":
      if (!givesTime) return [`${wasDue}, the end of the disaster postponement.`, LATE];
      return extension === "holds"
        ? [`Your ${returnName} was due ${extended}, the extended due date.`, LATE]
        : [
            `${requested(facts)}, but we have not received proof of the request.`,
            `Even with the extension, the return was due ${extended}.`,
            LATE,
          ];
  }
}

function openReturn(facts: LetterFacts): readonly string[] {
  const { asOf, record, returnName, dates, request } = facts;
  const regular = longDate(dates.regular.lastDay);
  const extended = longDate(dates.extended.lastDay);
  const isDue = asOf <= dates.regular.lastDay ? "is" : "was";
  switch (request.stage) {
    case "not requested":
      return [
        `We plan to request, by ${regular}, an extension of time to file your ${returnName}.`,
        `With the extension, the return will be due ${extended}.`,
      ];
    case "unconfirmed":
      return isDue === "is"
        ? [
            `${requested(facts)}.`,
            "We have not yet received proof of the request.",
            `Once we have it, you will have until ${extended}, to file.`,
          ]
        : [
            `${requested(facts)}, but we have not received proof of the request.`,
            "Please do not rely on the extension until we confirm it.",
            `If the request was received on time, the return is due ${extended}.`,
          ];
    case "rejected":
      return [
        `The IRS rejected the request of ${on(record.requestedOn)}, for an extension of time to file your ${returnName}.`,
        "You do not have an extension now.",
        `We plan to correct the request and resend it by ${on(request.deadline)}.`,
        `If the IRS accepts it, the return will be due ${extended}.`,
        `Otherwise, the return ${isDue} due ${regular}.`,
      ];
    case "extended":
      return [
        `${requested(facts)}.`,
        record.rejectedOn === undefined || record.confirmedOn === undefined
          ? "We have proof of the request."
          : `The IRS rejected it, we resent it by ${on(record.confirmedOn)}, and we have proof of that request.`,
        `You have until ${extended}, to file.`,
      ];
    case "filed":
    case "past due":
      return [];
  }
}

function whyNoExtension({ request }: LetterFacts): string {
  if (request.stage === "rejected" || request.missed === "perfection period over")
    return "The request for an extension was rejected, so the return had no extension.";
  return request.missed === "requested late"
    ? "The extension was requested after that date, and a late request gives no extension."
    : "No extension was requested by then.";
}

function filedReturn(facts: LetterFacts, filedOn: CalendarDate): readonly string[] {
  const { record, returnName, dates, extension } = facts;
  const regular = dates.regular.lastDay;
  const extended = dates.extended.lastDay;
  const filed = `Your ${returnName} was filed on ${longDate(filedOn)}`;
  if (filedOn <= regular) return [`${filed}, on time.`];
  if (extension === "none")
    return [`${filed}, after its due date, ${longDate(regular)}.`, whyNoExtension(facts)];
  const isLate = filedOn > extended;
  if (extension === "holds")
    return [`${filed}, ${isLate ? "after" : "by"} the extended due date, ${longDate(extended)}.`];
  const noProof = `We have not received proof of the request for an extension that we made on ${on(record.requestedOn)}.`;
  return isLate
    ? [`${filed}, late even with an extension to ${longDate(extended)}.`, noProof]
    : [`${filed}.`, noProof, "If it was received on time, the return was on time."];
}

/**
 * The sentences on the return and its extension, by the status of the request. An extension is stated as a fact only if there is proof
 * of the request; until then its date comes with the condition.
 *
 * @returns The sentences in order.
 */
export function returnSentences(facts: LetterFacts): readonly string[] {
  const { record, request, givesTime } = facts;
  if (record.filedOn !== undefined) return filedReturn(facts, record.filedOn);
  if (request.missed !== undefined) return missedReturn(facts, request.missed);
  return givesTime ? openReturn(facts) : postponedReturn(facts);
}
