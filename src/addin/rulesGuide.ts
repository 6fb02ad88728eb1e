import { figure } from "./guideArguments";
import type { GuideFunction } from "./guideFunction";

const task = "Check the rules behind an answer";

/** The functions that show the rules behind an answer. */
export const rulesGuide: readonly GuideFunction[] = [
  {
    task,
    name: "SOURCE",
    purpose: "Where a figure comes from, and whether it was read in the official text.",
    arguments: [
      figure,
      {
        name: "day",
        meaning: "Day the figure is wanted for; blank means the newest.",
        optional: true,
      },
    ],
  },
  {
    task,
    name: "KNOWNTHROUGH",
    purpose: "The last day for which a rule table holds what is published.",
    arguments: [figure],
  },
  {
    task,
    name: "EDITION",
    purpose: "The version of the add-in and of every rule table. Fills several rows.",
    arguments: [],
  },
];
