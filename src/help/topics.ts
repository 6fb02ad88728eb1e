import { coverageDateText } from "../addin/guide/coverageDate";
import { CLIENT_LIST_HEADINGS, PAYMENT_PARTS } from "../functions/arguments/clientListHeadings";
import { ITEM_KINDS, ITEM_LABELS, UNCLEAR_LABELS } from "../functions/arguments/itemLabels";
import { OWNER_WORDS } from "../functions/arguments/labelOwner";
import type { RuleTableSummary } from "../rules/ruleTables";
import { ALL_ERRORS } from "./errorHelp";
import { EXCEL_LIMITS, FIRST_RUN } from "./excelNotes";
import type { Help } from "./helpModel";
import { START_LIMITS, START_OPTIONS } from "./startCommand";

/** A term and what is said of it. */
export interface Term {
  readonly id?: string;
  readonly term: string;
  readonly text: string;
}

/** A part of a topic: a paragraph, a list of terms, perhaps with a title, or a list of sentences. Code is between backticks. */
export type Block =
  | string
  | { readonly title?: string; readonly terms: readonly Term[] }
  | { readonly items: readonly string[] };

/** A subject that concerns several functions. It is a page of the help and a section of the reference. */
export interface Topic {
  readonly file: string;
  readonly title: string;
  /** One sentence for the contents page. */
  readonly summary: string;
  readonly blocks: readonly Block[];
}

/** A column or an item with its first name, and its other names. */
function nameTerms(names: readonly (readonly string[])[]): readonly Term[] {
  return names.map(([first = "", ...others]) => ({
    term: first,
    text: others.length === 0 ? "No other name." : `Also: ${others.join(", ")}.`,
  }));
}

function tableTerm(table: RuleTableSummary): Term {
  const { id, title, keyedBy, knownFrom, knownThrough, entries, fromMemory } = table;
  const covers = `Covers from: ${coverageDateText(knownFrom)}. Covers through: ${coverageDateText(knownThrough)}.`;
  const unverified =
    fromMemory === 0 ? "" : ` Unverified entries: ${String(fromMemory)} of ${String(entries)}.`;
  return {
    id: `table-${id}`,
    term: title,
    text: `\`${id}\`. Looked up by: ${keyedBy}. ${covers}${unverified}`,
  };
}

/** The last row of LIABILITYLINES, which lists what the estimate leaves out. */
function leftOut({ functions }: Help): string {
  const lines = functions.find(({ name }) => name === "LIABILITYLINES")?.examples[0]?.cells;
  return String(lines?.at(-1)?.[0]?.value ?? "");
}

/**
 * The subjects that concern several functions.
 *
 * @param help - The whole help.
 */
export function topics(help: Help): readonly Topic[] {
  return [
    {
      file: "labels.html",
      title: "Return item labels",
      summary: "The labels that LIABILITY, LIABILITYLINES and PAYMENTSTOTAL accept.",
      blocks: [
        "Enter one row per item, in any order: a label and a dollar amount. Case and punctuation do not matter. Repeated labels add up.",
        "Lived apart is yes or no: whether a client filing separately lived apart from the spouse all year. Social Security benefits are then taxed as those of a single filer.",
        "A net operating loss carryforward is the amount that this year may deduct, after the limit of 80% of taxable income. A capital loss carryover counts as long-term unless it is entered as short-term. A qualified charitable distribution is part of the retirement distributions entered.",
        "The foreign tax credit, education credits and the credit for the elderly are entered as amounts, after their own limits. The refundable part of the American opportunity credit is a refundable credit.",
        "A note of your own can follow a label, in parentheses or after a dash with spaces around it: `W-2 (Ana)`, `wages - Ana`. If an item is entered in several rows, LIABILITYLINES lists them one by one. A note that may change what the label means, such as `withholding (state)`, is not accepted.",
        `Words that say whose document it is need no parentheses, before or after the label: ${OWNER_WORDS.join(", ")}. Nor does the number of a document: \`W-2 husband\`, \`spouse W-2\`, \`W-2 #2\`. A number that can also be that of a box, such as \`W-2 2\`, needs the \`#\`.`,
        ...ITEM_KINDS.map(({ title, items }) => ({
          title,
          terms: nameTerms(Object.values<readonly string[]>(items)),
        })),
        {
          title: "Documents and words that can mean several items",
          terms: UNCLEAR_LABELS.map(([[first = "", ...others], items]) => ({
            term: [first, ...others].join(", "),
            text: `Enter the item instead: ${items.map((item) => ITEM_LABELS[item][0] ?? item).join(", ")}.`,
          })),
        },
      ],
    },
    {
      file: "liability.html",
      title: "Limits of the total tax estimate",
      summary: "What LIABILITY and LIABILITYLINES leave out.",
      blocks: [leftOut(help)],
    },
    {
      file: "headings.html",
      title: "Client list headings",
      summary: "The column headings that ROSTER reads.",
      blocks: [
        "The columns of a client list can be in any order. The words of a heading can be in any order too, shortened as usual (`Est. tax`, `Total pmts`, `W/H`, `Res. state`), with the tax year, a unit or punctuation. A column with another heading is not used, nor is one with a percent sign in its heading, except a target or a cushion: `90% paid` is an answer, and the payments need a heading such as `Total payments`. `ROSTERHEADINGS` shows how each heading is read. The list must have the estimated total tax and the payments: their total, or their parts.",
        { terms: nameTerms(Object.values(CLIENT_LIST_HEADINGS)) },
        `Parts of the payments, which are added if there is no column with their total: ${PAYMENT_PARTS.join(", ")}.`,
      ],
    },
    {
      file: "tables.html",
      title: "Dates covered by the rule tables",
      summary: "The dates that each rule table covers, and its unverified entries.",
      blocks: [
        `These are the rule tables of version ${help.version}. For a date that a table does not cover, a function returns \`#N/A\`. Interest after the last published quarter is calculated only with an assumed rate.`,
        "Nationwide postponements are in a table. Disaster postponements are not: enter the dates that the IRS announced. An unverified entry was not read in a published text: check it against the official text.",
        { terms: help.tables.map(tableTerm) },
      ],
    },
    {
      file: "errors.html",
      title: "Error messages",
      summary: "What each error in a cell means, and what to do.",
      blocks: [
        'A message names the argument, its row if it is a range, the value entered and what is accepted: `taxYear: "soon" is not a tax year.`',
        {
          terms: ALL_ERRORS.map(({ code, cause, remedy }) => ({
            term: code,
            text: `${cause} ${remedy}`,
          })),
        },
      ],
    },
    {
      file: "excel.html",
      title: "Limits in Excel",
      summary: "What Excel does not allow, and how to keep a workbook fast.",
      blocks: [{ items: EXCEL_LIMITS }],
    },
    {
      file: "first-run.html",
      title: "First run in Excel",
      summary: "A checklist for the first person who runs the add-in in Excel.",
      blocks: [
        "The add-in has not yet been run in Excel. Please check the following, in this order. If you see something else, select Copy a diagnosis in the guide and send it with what the line asks for. The diagnosis has no content of your cells.",
        {
          terms: FIRST_RUN.map(({ step, see, send }, index) => ({
            term: `${String(index + 1)}. ${step}`,
            text: `You should see: ${see} Otherwise send: ${send}`,
          })),
        },
      ],
    },
    {
      file: "start.html",
      title: "Options of npm start",
      summary: "How to calculate a workbook without Excel, and the largest workbook accepted.",
      blocks: [
        "`npm start` calculates the sample client list and saves `dist/season.xlsx`. `npm start -- FILE.xlsx` calculates your workbook and saves the copy `FILE.recalculated.xlsx`. Your file is never changed.",
        { terms: START_OPTIONS },
        START_LIMITS,
      ],
    },
  ];
}
