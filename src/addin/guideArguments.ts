import type { GuideArgument } from "./guideFunction";

/** The year of the return. */
export const taxYear: GuideArgument = {
  name: "taxYear",
  meaning: "Tax year such as 2025, or the last day of a fiscal tax year.",
};

/** The client's filing status. */
export const status: GuideArgument = {
  name: "status",
  meaning: "Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.",
};

/** Where the client lives. */
export const state: GuideArgument = {
  name: "state",
  meaning:
    "Postal code of the state where the client lives, or foreign; Maine and Massachusetts have a holiday of their own.",
  optional: true,
};

/** Which due date applies to the client. */
export const filer: GuideArgument = {
  name: "filer",
  meaning:
    "resident (or blank), abroad (out of the country, line 8) or nonresident (1040-NR without wages, line 9).",
  optional: true,
};

/** Line 4 of the request. */
export const totalTax: GuideArgument = {
  name: "totalTax",
  meaning: "Estimate of the total tax, line 4.",
};

/** Line 5 of the request. */
export const payments: GuideArgument = {
  name: "payments",
  meaning: "Withholding, estimates and credits, line 5, without what goes with the request.",
};

/** What stops both additions and interest from the start. */
export const paidOnTime: GuideArgument = {
  name: "paidOnTime",
  meaning: "Everything paid or credited by the last day to pay.",
};

/** When the rest is paid. */
export const paidOn: GuideArgument = {
  name: "paidOn",
  meaning: "Day the rest was or will be paid.",
};

/** When the return is filed. */
export const filedOn: GuideArgument = {
  name: "filedOn",
  meaning: "Day the return was or will be filed.",
};

/** Whether the extension stands. */
export const extended: GuideArgument = {
  name: "extended",
  meaning: "Yes when the extension was validly requested; blank means no.",
  optional: true,
};

/** The rate where none is published. */
export const assumedRate: GuideArgument = {
  name: "assumedRate",
  meaning:
    "Rate for quarters not yet published, such as 7%, or latest. Without it such a quarter gives #N/A.",
  optional: true,
};

/** Half the late-payment rate. */
export const agreementFrom: GuideArgument = {
  name: "agreementFrom",
  meaning: "First day of an installment agreement; counts only if the return is timely.",
  optional: true,
};

/** Disaster relief begins. */
export const reliefBegins: GuideArgument = {
  name: "reliefBegins",
  meaning: "First day of a disaster-relief period announced for the client's address.",
  optional: true,
};

/** Disaster relief ends. */
export const postponedTo: GuideArgument = {
  name: "postponedTo",
  meaning: "Day to which that relief postpones what falls inside it.",
  optional: true,
};

/** A rule table. */
export const figure: GuideArgument = {
  name: "figure",
  meaning: "Name of a rule table, such as underpayment rate; EDITION lists them.",
};
