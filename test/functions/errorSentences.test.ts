import { describe, expect, it } from "vitest";
import { answerToFormula } from "./fromCatalog";
import { tableTitle } from "./sheet";

const STATES = tableTitle("state-extensions");
const RATES = tableTitle("underpayment-rate");

/** One formula for each sentence, with the sentence whole. */
const BAD_INPUT: readonly (readonly [formula: string, sentence: string])[] = [
  ['=EXT.UNDERPAYRATE("soon")', 'date: "soon" is not a date. Enter a date such as 4/15/2026.'],
  [
    '=EXT.UNDERPAYRATE("15/4/2026")',
    'date: "15/4/2026" is not a date. Enter a date such as 4/15/2026.',
  ],
  ["=EXT.UNDERPAYRATE()", "date: The cell is blank. Enter a date such as 4/15/2026."],
  [
    "=EXT.UNDERPAYRATE(200000)",
    "date: 7/30/2447 is out of range. Enter a date from 3/1/1900 through 12/31/2199.",
  ],
  [
    '=EXT.DUE("next year")',
    'taxYear: "next year" is not a tax year. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.',
  ],
  [
    '=EXT.DUE("6/15/2026")',
    "taxYear: 6/15/2026 is not within six days before or three days after the end of a month, so no tax year ends on it. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.",
  ],
  [
    '=EXT.STATEDUE("6/30/2026","NY")',
    "taxYear: 6/30/2026 is the end of a fiscal year. The state rules cover calendar years only. Enter a year such as 2025.",
  ],
  [
    '=EXT.LATEFILE(2025,2000,"12/31/2025")',
    "filedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system.",
  ],
  [
    '=EXT.STAGE(2025,"5/1/2026","4/10/2026","4/9/2026")',
    "confirmedOn: 4/9/2026 is before the request date, 4/10/2026. Correct one of the two dates.",
  ],
  [
    '=EXT.STAGE(2025,"5/1/2026",,"4/9/2026")',
    "requestedOn: The cell is blank, but confirmedOn is 4/9/2026. Enter the date the request was made.",
  ],
  ["=EXT.MEMO(2025,20000,15000,5000)", "asOf: The cell is blank. Enter a date such as 4/15/2026."],
  [
    '=EXT.INTEREST(100,"4/16/2026","4/15/2026")',
    "paidOn: 4/15/2026 is before dueOn, 4/16/2026. Correct one of the two dates.",
  ],
  [
    '=EXT.COMBATZONE(2025,"3/1/2026","2/28/2026")',
    "leftZoneOn: 2/28/2026 is before enteredZoneOn, 3/1/2026. Correct one of the two dates.",
  ],
  [
    '=EXT.COMBATZONE(2025,"4/16/2026","9/30/2026")',
    "enteredZoneOn: 4/16/2026 is after the regular due date, 4/15/2026, so service does not move it. Check the date and the year.",
  ],
  [
    '=EXT.DUE(2025,,,,"6/8/2026")',
    "postponementBegins: The cell is blank, but postponementEnds has a date. Enter both dates, or neither.",
  ],
  [
    '=EXT.DUE(2025,,,"1/22/2026")',
    "postponementEnds: The cell is blank, but postponementBegins has a date. Enter both dates, or neither.",
  ],
  [
    '=EXT.DUE(2025,,,"6/8/2026","1/22/2026")',
    "postponementEnds: 1/22/2026 is before the postponement begins on 6/8/2026. Correct one of the two dates.",
  ],
  [
    '=EXT.SHORTFALL("1.234,50",0)',
    'totalTax: "1.234,50" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
  ],
  ["=EXT.SHORTFALL(-200,0)", "totalTax: -200 is negative. Enter zero or a positive dollar amount."],
  [
    "=EXT.SHORTFALL(,0)",
    "totalTax: The cell is blank. Enter a dollar amount, or 0 if there is none.",
  ],
  [
    "=EXT.SHORTFALL(10000000000000,0)",
    "totalTax: 10000000000000 is too large. Enter an amount below $10,000,000,000,000.",
  ],
  [
    '=EXT.INCOMETAX(2025,"married",1)',
    'filingStatus: "married" can mean two filing statuses. Enter joint (MFJ) or separate (MFS).',
  ],
  [
    '=EXT.INCOMETAX(2025,"sigle",1)',
    'filingStatus: "sigle" is not a filing status. The closest is single. Enter single, joint, separate, head or survivor, or S, MFJ, MFS, HOH or QSS.',
  ],
  [
    '=EXT.DUE(2025,"XX")',
    'state: "XX" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.',
  ],
  [
    '=EXT.DUE(2025,"Texass")',
    'state: "Texass" is not a state. The closest is Texas. Enter a postal code or a name, such as ME or Maine, or foreign.',
  ],
  [
    "=EXT.STATEDUE(2025)",
    "state: The cell is blank. Enter a postal code or a name, such as ME or Maine.",
  ],
  [
    "=EXT.MAILTO(2025)",
    "state: The cell is blank. Enter a postal code or a name, foreign, estate or nonresident.",
  ],
  [
    '=EXT.DUE(2025,,"overseas")',
    'filerType: "overseas" is not a filer type. Enter resident, out of country or nonresident, or leave it blank.',
  ],
  [
    '=EXT.LATEFILE(2025,2000,"5/20/2026","maybe")',
    'validExtension: "maybe" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.',
  ],
  [
    '=EXT.LATEFILE(2025,2000,"5/20/2026","4/10/2026")',
    'validExtension: "4/10/2026" is a date, not yes or no. Enter yes or no here; STAGE, ISSUES and ROSTER take the date of the request.',
  ],
  [
    '=EXT.UNDERPAYRATE("1/1/2098",7)',
    "assumedRate: 7 is not an annual rate. Enter a percent such as 7%, or the word latest.",
  ],
  [
    '=EXT.ANNUALIZED(2025,"single",{"","Q1","Q2","Q3","Q4";"AGI",1,2,3,4})',
    'periods row 1, column 2: "Q1" is not the period of this column. Enter the headings January–March, January–May, January–August, January–December, in this order.',
  ],
  [
    '=EXT.ANNUALIZED(2025,"single",{"","Mar","May","Aug";"AGI",1,2,3})',
    "periods: The range has 4 columns. Select a column of labels and the four columns January–March, January–May, January–August, January–December.",
  ],
  [
    '=EXT.ANNUALIZED(2025,"single",{"","Mar","May","Aug","Dec"})',
    "periods: The range has no row below its headings. Select the headings and the labeled rows.",
  ],
  [
    '=EXT.ANNUALIZED(2025,"single",{"","Mar","May","Aug","Dec";"wages",1,2,3,4})',
    "periods: The range has no row for AGI. Add that row.",
  ],
  [
    '=EXT.ESTPENALTY(2025,8000,0,,,,,"yes",,,,,"single",{"","Mar","May","Aug","Dec";"AGI",1,2,3,4})',
    "periods: Farmers and fishermen have one installment, which is not annualized. Leave periods blank, or correct farmerOrFisherman.",
  ],
  [
    '=EXT.ESTPENALTY(2025,8000,0,,,,,,,,,,,{"","Mar","May","Aug","Dec";"AGI",1,2,3,4})',
    "filingStatus: The cell is blank, but periods is entered. Enter a filing status such as single or MFJ.",
  ],
  [
    '=EXT.SUGGEST(20000,15000,"all")',
    'target: "all" is not a target. Enter full, reasonable cause, or a percent of total tax such as 95%.',
  ],
  [
    '=EXT.SUGGEST(20000,15000,"reasonble cause")',
    'target: "reasonble cause" is not a target. The closest is reasonable cause. Enter full, reasonable cause, or a percent of total tax such as 95%.',
  ],
  [
    '=EXT.UNDERPAYRATE("1/1/2098","lastest")',
    'assumedRate: "lastest" is not an annual rate. The closest is latest. Enter a percent such as 7%, or the word latest.',
  ],
  [
    '=EXT.MAILTO(2025,"nonresidant",0)',
    'state: "nonresidant" is not a state. The closest is nonresident. Enter a postal code or a name, such as ME or Maine, or foreign.',
  ],
  [
    '=EXT.SUGGEST(20000,15000,,"100%")',
    'cushion: "100%" is not a cushion. Enter a percent of total tax such as 5%, or dollars.',
  ],
  [
    '=EXT.STATEEXTENDED(2025,"MA",,90)',
    "percentPaid: 90 is not a percent of a tax. Enter a percent such as 90%.",
  ],
  [
    '=EXT.STATEEXTENDED(2025,"MA")',
    "percentPaid: The cell is blank. Massachusetts grants the extension only if 80% of its tax is paid by the due date. Enter the percent paid.",
  ],
  [
    "=EXT.INSTALLMENT(2026,5)",
    "installmentNumber: 5 is not an installment number. Enter 1, 2, 3 or 4.",
  ],
  [
    '=EXT.STANDARDDEDUCTION(2025,"S",5)',
    "ageBlindBoxes: 5 is not a valid number. Enter a whole number from 0 to 4.",
  ],
  [
    '=EXT.ISSUES(2025,1,0,0,"4/10/2026",,,,,,,"fax")',
    'method: "fax" is not a method. Enter electronic payment, e-file or paper.',
  ],
  [
    '=EXT.ISSUECOUNT(2025,1,0,0,"4/10/2026",,,,,,,,,,,,,,"all")',
    'minimumSeverity: "all" is not a severity. Enter problem, risk or reminder.',
  ],
  [
    '=EXT.MEMO(2025,20000,15000,,"4/10/2026",,,,,,,,"long")',
    'length: "long" is not a length. Enter short or full.',
  ],
  [
    '=EXT.MAILTO(2025,"NY",0,"UPS Ground")',
    'carrier: "UPS Ground" is not a designated private delivery service, so mailing by it would not count as filing on time. Use U.S. mail or a designated service.',
  ],
  [
    '=EXT.MAILTO(2025,"NY",0,"UPS")',
    'carrier: "UPS" has no service level. Only these are designated: Next Day Air Early AM, Next Day Air, Next Day Air Saver, 2nd Day Air, 2nd Day Air A.M., Worldwide Express Plus, Worldwide Express. Enter one of them.',
  ],
  [
    '=EXT.ISSUES(2025,1,0,0,"4/10/2026",,,,,,,,"n/a")',
    'carrier: "n/a" is not a carrier. Enter no for U.S. mail, or the carrier and its service.',
  ],
  [
    '=EXT.ISDESIGNATED("USPS")',
    'service: "USPS" is U.S. mail, for which timely mailing counts as timely filing. Enter the carrier and its service level, such as UPS 2nd Day Air.',
  ],
  [
    '=EXT.MEMO(2025,20000,15000,,"4/10/2026",,,,,,,,,"n/a")',
    'stillNeeded: "n/a" is not text for a letter. Enter the words, or leave the cell blank.',
  ],
  [
    "=EXT.ISDESIGNATED()",
    "service: The cell is blank. Enter the carrier and its service level, such as UPS 2nd Day Air.",
  ],
  [
    '=EXT.SOURCE("failure to pey")',
    'table: "failure to pey" is not a rule table. The closest name is failure-to-pay. EXT.RULETABLES lists them all.',
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"wagse",1})',
    'items row 1: "wagse" is not a recognized label. The closest label is "wages".',
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"K-1",1})',
    'items row 1: "K-1" can mean several items. Enter "partnership income", "rental income", "interest", "ordinary dividends" or "long-term gain".',
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"W-2 Ana",1})',
    'items row 1: "W-2 Ana" is not a recognized label. Enter "wages", with a note of your own in parentheses.',
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"n/a",1})',
    'items row 1: "n/a" is not a recognized label. Enter a label such as "wages".',
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"wages (state)",1})',
    'items row 1: The note in "wages (state)" may change the meaning of "wages". Enter the label for what it is, or another note.',
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"intrest",1;"wages",2;"interest","TBD"})',
    'items: 2 entries must be corrected. Row 1: "intrest" is not a recognized label. The closest label is "interest". Row 3: "TBD" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
  ],
  ['=EXT.LIABILITY(2025,"S",{"",5})', "items row 1: 5 has no label. Enter a label such as wages."],
  [
    '=EXT.LIABILITY(2025,"S",{"blind",3})',
    "items row 1: 3 is not a number of persons. Enter a whole number from 0 to 2.",
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"",""})',
    "items: The range has no item. Enter rows of label and amount.",
  ],
  [
    '=EXT.LIABILITY(2025,"S",{"wages"})',
    "items: The range has 1 column. Select two columns, label and amount.",
  ],
  [
    '=EXT.PROJECTEDTAX(2025,"S",{"wages",5000},{"wages",-6000})',
    'changes row 1: "wages" would be -1000. Enter a decrease of no more than last year\'s amount.',
  ],
  [
    '=EXT.PROJECTEDTAX(2025,"S",{"wages",5000},{"interest","5%"})',
    'changes row 1: "interest" has no amount in priorYearItems, so a percent of it cannot be calculated. Enter dollars.',
  ],
  [
    '=EXT.PROJECTEDTAX(2025,"S",{"wages",5000;"children",1},{"interest",5;"children",-2})',
    'changes row 2: "children under 17" would be -1. Enter a change that leaves a whole number from 0 to 30.',
  ],
  [
    '=EXT.LEDGER(2025,100,{"12/31/2024",5},"4/15/2026")',
    "payments row 1: 12/31/2024 is before the tax year begins on 1/1/2025. Check the date and the year.",
  ],
  [
    '=EXT.DUE({2025;2024;2023},{"ME";"NY"})',
    "state: The range has 2 cells, but taxYear has 3. Ranges used together must have the same number of cells.",
  ],
  [
    "=EXT.DUE({2025,2024;2023,2022})",
    "taxYear: The range has 2 rows and 2 columns. Select one cell, one column or one row.",
  ],
  ["=EXT.CALENDAR({2025;2024})", "taxYear: The range has 2 cells. Select one cell."],
  [
    '=EXT.WHATIF(2025,100,0,{""},"4/15/2026")',
    "extraPayments: The range is empty. Select at least one cell with a value.",
  ],
  [
    '=EXT.ROSTER({"Client";"Alder"},2025,"4/10/2026")',
    "clientList: The first row has no heading for estimated total tax and total payments. Add those columns.",
  ],
  [
    '=EXT.ROSTER({"Total tax","Line 4","Payments";1,2,3},2025,"4/10/2026")',
    'clientList: The headings "Total tax" and "Line 4" mean the same column. Keep one of them.',
  ],
  [
    '=EXT.ROSTER({"Total tax","Payments"},2025,"4/10/2026")',
    "clientList: The range has no row below its headings. Select the whole client list.",
  ],
];

const NOT_IN_TABLE: readonly (readonly [formula: string, sentence: string])[] = [
  [
    '=EXT.UNDERPAYRATE("1/1/2027")',
    `${RATES}: There is no figure for 1/1/2027. The table covers dates through 12/31/2026 (rules/underpayment-rate.json). Check for a newer version of the add-in.`,
  ],
  [
    '=EXT.UNDERPAYRATE("12/31/1994")',
    `${RATES}: There is no figure for 12/31/1994. The table begins on 1/1/1995 (rules/underpayment-rate.json). Use the official text of that time.`,
  ],
  [
    '=EXT.STATEEXTENDED(2025,"MS")',
    `${STATES}: Mississippi is not shown because the rule is unverified. Check the state's current instructions, or set allowUnverified to yes.`,
  ],
  [
    '=EXT.STATEDUE(2024,"NH")',
    `${STATES}: New Hampshire is covered from tax year 2025 (rules/state-extensions.json). Check the state's instructions for that year.`,
  ],
  [
    '=EXT.STATEDUE(2025,"PR")',
    `${STATES}: There is no rule for PR (rules/state-extensions.json). Check the state's current instructions.`,
  ],
  [
    '=EXT.MAILTO(2025,"MP",0)',
    `${tableTitle("mailing-addresses")}: The chart of 2025 has no address for MP (rules/mailing-addresses.json). Check the form's instructions.`,
  ],
];

describe("the sentence of an error", () => {
  it.each(BAD_INPUT)("of bad input: %s", (formula, message) => {
    expect(answerToFormula(formula)).toEqual({ code: "#VALUE!", message });
  });

  it.each(NOT_IN_TABLE)("of a figure that is not in the rule tables: %s", (formula, message) => {
    expect(answerToFormula(formula)).toEqual({ code: "#N/A", message });
  });
});
