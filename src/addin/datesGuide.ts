import { filer, postponedTo, reliefBegins, state, taxYear } from "./guideArguments";
import type { GuideFunction } from "./guideFunction";

const task = "Find the dates";

/** The functions that find a date. */
export const datesGuide: readonly GuideFunction[] = [
  {
    task,
    name: "DUE",
    purpose: "The regular due date, which is also the last day to ask for the extension.",
    arguments: [taxYear, state, filer, reliefBegins, postponedTo],
  },
  {
    task,
    name: "EXTENDED",
    purpose: "The due date with the extension.",
    arguments: [taxYear, state, filer, reliefBegins, postponedTo],
  },
  {
    task,
    name: "PAYBY",
    purpose:
      "The last day to pay without interest; neither the extension nor being abroad moves it.",
    arguments: [taxYear, state, filer, reliefBegins, postponedTo],
  },
  {
    task,
    name: "INSTALLMENT",
    purpose: "The due date of an estimated tax installment.",
    arguments: [
      taxYear,
      { name: "number", meaning: "Which installment, 1 to 4." },
      reliefBegins,
      postponedTo,
    ],
  },
  {
    task,
    name: "RELIEF",
    purpose:
      "Where disaster relief moves a last day: one inside the relief period moves to its end.",
    arguments: [
      { name: "day", meaning: "Last day for any act before relief, such as a due date." },
      { name: "reliefBegins", meaning: "First day of the relief period, from the announcement." },
      { name: "postponedTo", meaning: "Day the announcement postpones to." },
    ],
  },
  {
    task,
    name: "COMBATZONE",
    purpose: "The last day to file and pay after service in a combat zone.",
    arguments: [
      taxYear,
      { name: "entered", meaning: "Day the client entered the zone." },
      { name: "left", meaning: "Day the client left the zone." },
    ],
  },
  {
    task,
    name: "CALENDAR",
    purpose:
      "Every date of the client's season, with why it moved and its source. Fills several rows.",
    arguments: [taxYear, state, filer, reliefBegins, postponedTo],
  },
];
