import { describe, expect, it } from "vitest";
import {
  ITEM_KINDS,
  ITEM_LABELS,
  UNCLEAR_LABELS,
} from "../../../src/functions/arguments/itemLabels";
import { OWNER_WORDS } from "../../../src/functions/arguments/labelOwner";
import {
  paymentItems,
  returnItems,
  returnRows,
} from "../../../src/functions/arguments/returnItems";
import { RETURN_ITEMS } from "../../../src/calculation/liability/returnItems";
import { reading, sentenceOf } from "./reading";

const itemsOf = reading(returnItems, "items");
const read = (...rows: unknown[][]) =>
  Object.fromEntries(
    Object.entries(itemsOf(rows)).map(([name, amount]) => [name, amount.toString()])
  );
const refusal = (label: string): string => sentenceOf(() => itemsOf([[label, 1]]));

describe("the kinds of items", () => {
  it("have every item of a return once", () => {
    const items = ITEM_KINDS.flatMap(({ items: ofKind }) => Object.keys(ofKind));
    expect(items.toSorted()).toEqual([...RETURN_ITEMS].toSorted());
  });
});

// Words of Form 1040 (2025) and its Schedules 1 to 3, A to E, of Form 4868 and of the information returns named (memory of the forms).
describe("labels of the documents", () => {
  it.each([
    ["W-2", "wages"],
    ["Form W-2", "wages"],
    ["1099-INT", "interest"],
    ["1099-DIV", "ordinaryDividends"],
    ["1099-DIV box 1b", "qualifiedDividends"],
    ["Capital gain distributions", "longTermGain"],
    ["SSA-1099", "socialSecurityBenefits"],
    ["Schedule C", "businessProfit"],
    ["Schedule C profit", "businessProfit"],
    ["K-1 ordinary income", "partnershipIncome"],
    ["K-1 interest", "interest"],
    ["Schedule E rents", "rentalIncome"],
    ["1099-R pension", "pensions"],
    ["1099-R IRA", "retirementDistributions"],
    ["withheld", "withholding"],
    ["Federal income tax withheld", "withholding"],
    ["W-2 box 2", "withholding"],
    ["ES payments", "estimatedPayments"],
    ["1040-ES", "estimatedPayments"],
    ["Schedule H", "otherTaxes"],
    ["Earned income credit", "refundableCredits"],
  ])("%s is %s", (label, item) => {
    expect(read([label, 1])).toEqual({ [item]: "1" });
  });
});

describe("a document that can mean several items", () => {
  const unclear = UNCLEAR_LABELS.flatMap(([written, items]) =>
    written.map((label) => [label, items] as const)
  );
  it.each(unclear)("is refused with the labels that it may mean: %s", (label, items) => {
    const sentence = refusal(label);
    expect(sentence.startsWith(`items row 1: "${label}" can mean several items. Enter "`)).toBe(
      true
    );
    for (const item of items) expect(sentence).toContain(`"${ITEM_LABELS[item][0] ?? item}"`);
    expect(refusal(`${label} (Ana)`)).toContain("can mean several items");
  });

  it.each(unclear)("is no label of an item: %s", (label) => {
    const bare = (text: string) => text.toLowerCase().replace(/[^a-z0-9]/g, "");
    expect(Object.values(ITEM_LABELS).flat().map(bare)).not.toContain(bare(label));
  });

  it("is accepted with a note that says which", () => {
    expect(read(["1099-R (pension)", 1], ["Schedule E - rents", 2], ["K-1 (interest)", 4])).toEqual(
      {
        pensions: "1",
        rentalIncome: "2",
        interest: "4",
      }
    );
  });
});

describe("a note after a label", () => {
  it.each([
    "wages (Ana)",
    "W-2 (Ana)",
    "wages - Ana",
    "W-2 – Ana",
    "W-2 (spouse)",
    "Wages  (Ana, second job) ",
    "W-2 - Bakery (Ana)",
    "wages (W-2)",
  ])("is left to the preparer: %s", (label) => {
    expect(read([label, 1])).toEqual({ wages: "1" });
  });

  it("keeps documents apart and adds them up", () => {
    const rows = [
      ["W-2 (Ana)", 50_000],
      ["W-2 (Bo)", "41,000.50"],
    ];
    expect(read(...rows)).toEqual({ wages: "91000.5" });
    expect(reading(returnRows, "items")(rows).map(({ label }) => label)).toEqual([
      "W-2 (Ana)",
      "W-2 (Bo)",
    ]);
  });

  it.each([
    ["interest (tax-exempt)", "taxExemptInterest"],
    ["dividends (qualified)", "qualifiedDividends"],
    ["interest - mortgage", "itemizedDeductions"],
    ["wages (owner)", "ownerWages"],
  ])("that makes it another label is read as that one: %s", (label, item) => {
    expect(read([label, 1])).toEqual({ [item]: "1" });
  });

  it.each([
    ["withholding (state)", "withholding"],
    ["withholding (NY)", "withholding"],
    ["ES payments - California", "estimated payments"],
    ["capital loss carryover (short)", "capital loss carryover"],
    ["pension (rollover)", "pensions"],
    ["W-2 (business)", "wages"],
  ])("that may change the meaning is refused: %s", (label, item) => {
    expect(refusal(label)).toBe(
      `items row 1: The note in "${label}" may change the meaning of "${item}". Enter the label for what it is, or another note.`
    );
  });

  it.each(["wages Ana", "1099-INT First Bank", "W-2 2024"])(
    "needs parentheses or a dash: %s",
    (label) => {
      expect(refusal(label)).toMatch(/, with a note of your own in parentheses\.$/);
    }
  );

  it("after no known label is refused with the closest label", () => {
    expect(refusal("witholding (Ana)")).toMatch(/is not a recognized label/);
    expect(refusal(`wages (${"x".repeat(500)})`)).toMatch(/is not a recognized label/);
  });
});

// The taxpayer, the spouse or both: the ownership codes of Form 1040 workpapers (memory of the trade).
describe("a word that says whose document it is", () => {
  it.each([
    ["W-2 husband", "wages"],
    ["W-2 wife", "wages"],
    ["W-2 spouse", "wages"],
    ["W-2, taxpayer", "wages"],
    ["W-2 his", "wages"],
    ["husband's W-2", "wages"],
    ["SPOUSE W-2", "wages"],
    ["W-2 T", "wages"],
    ["W-2 S 2", "wages"],
    ["W-2 #2", "wages"],
    ["W-2 no. 3", "wages"],
    ["wages 2", "wages"],
    ["W-2 1", "wages"],
    ["1099-INT joint", "interest"],
    ["J 1099-INT", "interest"],
    ["1099-DIV #2", "ordinaryDividends"],
    ["W-2 box 2 wife", "withholding"],
    ["federal withholding S", "withholding"],
    ["S corporation income T", "partnershipIncome"],
    ["65 or older spouse", "aged"],
  ])("needs no parentheses: %s is %s", (label, item) => {
    expect(read([label, 1])).toEqual({ [item]: "1" });
  });

  it.each(OWNER_WORDS)("can be beside each label: %s", (word) => {
    for (const { written, item } of Object.entries(ITEM_LABELS).map(([name, all]) => ({
      written: all[0] ?? "",
      item: name,
    })))
      for (const label of [`${written} ${word}`, `${word} ${written}`])
        expect(read([label, 1])).toEqual({ [item]: "1" });
  });

  // Form W-2: box 2 is federal income tax withheld. Form 1099-INT: box 8 is tax-exempt interest. Form 1099-DIV: box 2a, capital gain.
  it.each([
    ["W-2 2", '"wages" or "withholding"'],
    ["1099-INT 8", '"interest" or "tax-exempt interest"'],
    ["1099-DIV 2", '"ordinary dividends" or "long-term gain"'],
  ])("a number that can be that of a box is refused: %s", (label, items) => {
    expect(refusal(label)).toBe(`items row 1: "${label}" can mean several items. Enter ${items}.`);
  });

  it.each([
    ["K-1 spouse", /can mean several items/],
    ["spouse 1099-R", /can mean several items/],
    ["children 2", /may change the meaning of "children under 17"/],
    ["over 65 #2", /may change the meaning of "65 or older"/],
    ["spouse", /is not a recognized label/],
    ["husband wife", /is not a recognized label/],
    ["W-2 husband Ana", /, with a note of your own in parentheses\.$/],
  ])("leaves what is not clear unclear: %s", (label, sentence) => {
    expect(refusal(label)).toMatch(sentence);
  });
});

describe("rows of payments", () => {
  const paid = reading(paymentItems, "items");

  it.each([
    [null],
    [""],
    [[["", ""]]],
    [[["withholding", ""]]],
    [
      [
        ["", ""],
        ["ES payments", null],
      ],
    ],
    [[[0, 0]]],
  ])("may be none: %j", (rows) => {
    expect(paid(rows)).toEqual({});
  });

  it("are read as other items are", () => {
    expect(paid([["W-2 box 2 (Ana)", "$6,000"]]).withholding?.toNumber()).toBe(6_000);
    expect(sentenceOf(() => paid([["withholding", "n/a"]]))).toBe(
      'items row 1: "n/a" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
    );
  });
});
