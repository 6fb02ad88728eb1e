import { describe, expect, it } from "vitest";
import { childTaxCredit } from "../../../src/calculation/liability/childTaxCredit";
import { incomeTax } from "../../../src/calculation/liability/incomeTax";
import { selfEmploymentTax } from "../../../src/calculation/liability/selfEmploymentTax";
import { stateAndLocalDeduction } from "../../../src/calculation/liability/stateAndLocalDeduction";
import { toWholeDollars } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import computed from "../../fixtures/published/liability/second-implementation.json";
import { statusOf, usd, year } from "./givenTax";

type Case = (typeof computed.cases)[number];
const amount = (fields: Readonly<Record<string, unknown>>, name: string) => {
  const written = fields[name];
  if (typeof written !== "string" && typeof written !== "number")
    throw new RangeError(`the case has no ${name}`);
  return usd(written);
};

/** What the calculation makes of a case, in the names of its expectation. */
const ANSWERS: Readonly<Record<string, (one: Case) => Readonly<Record<string, string>>>> = {
  "gain worksheet": ({ taxYear, status, inputs }) => {
    const gain = amount(inputs, "qualifiedDividends").plus(amount(inputs, "longTermGain"));
    const income = amount(inputs, "taxableIncome");
    return {
      tax: incomeTax(year(taxYear), statusOf(status), income, gain, rulebook).toString(),
    };
  },
  "self-employment tax": ({ taxYear, inputs }) => {
    const [profit, wages] = [amount(inputs, "profit"), amount(inputs, "wages")];
    const tax = toWholeDollars(selfEmploymentTax(year(taxYear), profit, wages, rulebook));
    return { tax: tax.toString(), half: toWholeDollars(tax.div(2)).toString() };
  },
  "state and local taxes": ({ taxYear, status, inputs }) => {
    const [paid, income] = [amount(inputs, "paid"), amount(inputs, "income")];
    const who = statusOf(status);
    const deduction = stateAndLocalDeduction(year(taxYear), who, paid, income, rulebook);
    return { deduction: deduction.toString() };
  },
  "child tax credit": ({ taxYear, status, inputs }) => {
    const [children, others] = [amount(inputs, "children"), amount(inputs, "others")];
    const credit = childTaxCredit(
      year(taxYear),
      statusOf(status),
      children.toNumber(),
      others.toNumber(),
      amount(inputs, "income"),
      rulebook
    );
    return { credit: credit.toString() };
  },
};

describe("worked out a second time, no publication", () => {
  it.each(computed.cases)("$kind: $case", (one) => {
    expect(ANSWERS[one.kind]?.(one)).toEqual(one.expected);
  });
});
