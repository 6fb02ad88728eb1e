import {
  agreementFrom,
  assumedRate,
  extended,
  filedOn,
  filer,
  paidOn,
  paidOnTime,
  postponedTo,
  reliefBegins,
  state,
  taxYear,
} from "./guideArguments";
import type { GuideArgument, GuideFunction } from "./guideFunction";

const task = "Weigh what lateness costs";

const charged: readonly GuideArgument[] = [
  taxYear,
  { name: "totalTax", meaning: "Total tax as the return will show it." },
  paidOnTime,
  paidOn,
  filedOn,
  extended,
  state,
  filer,
  assumedRate,
  agreementFrom,
  reliefBegins,
  postponedTo,
];

/** The functions that weigh what lateness costs. */
export const chargesGuide: readonly GuideFunction[] = [
  {
    task,
    name: "UNDERPAYRATE",
    purpose: "The interest rate on underpayments in force on a day.",
    arguments: [{ name: "day", meaning: "Day the interest accrues." }, assumedRate],
  },
  {
    task,
    name: "INTEREST",
    purpose: "Interest from one day to another, compounded daily over every rate in between.",
    arguments: [
      { name: "amount", meaning: "Amount that is owed." },
      { name: "from", meaning: "Day it was due." },
      { name: "to", meaning: "Day it is paid." },
      assumedRate,
    ],
  },
  {
    task,
    name: "LATEFILE",
    purpose: "The addition to tax for filing late, alone.",
    arguments: [
      taxYear,
      { name: "netTax", meaning: "Tax less what was paid or credited by the last day to pay." },
      filedOn,
      extended,
      state,
      filer,
      reliefBegins,
      postponedTo,
    ],
  },
  {
    task,
    name: "LATEPAY",
    purpose: "The addition to tax for paying late, alone; the 90% presumption is in CHARGES.",
    arguments: [
      taxYear,
      { name: "unpaid", meaning: "Tax unpaid after the last day to pay." },
      paidOn,
      state,
      filer,
      agreementFrom,
      reliefBegins,
      postponedTo,
    ],
  },
  {
    task,
    name: "CHARGES",
    purpose: "Both additions and interest together, with every reduction and presumption applied.",
    arguments: charged,
  },
  {
    task,
    name: "CHARGELINES",
    purpose: "The parts that add up to CHARGES, each with its source. Fills several rows.",
    arguments: charged,
  },
];
