import { describe, expect, it } from "vitest";
import { RETURN_ITEMS } from "../../../src/calculation/liability/returnItems";
import { totalPayments } from "../../../src/calculation/liability/totalPayments";
import { known } from "./givenTax";

// Form 4868, line 5: what is already paid; line 7 is what is sent with the request.
describe("payments for line 5", () => {
  it("are withholding, estimates, last year's overpayment and refundable credits", () => {
    const items = known({
      withholding: 12_000.25,
      estimatedPayments: 4_000,
      overpaymentApplied: 1_500.5,
      refundableCredits: 300,
    });
    expect(totalPayments(items).toString()).toBe("17800.75");
  });

  it("are nothing else", () => {
    const counted = RETURN_ITEMS.filter((name) => !totalPayments(known({ [name]: 1 })).isZero());
    expect(counted).toEqual([
      "withholding",
      "estimatedPayments",
      "overpaymentApplied",
      "refundableCredits",
    ]);
    expect(totalPayments({}).toString()).toBe("0");
  });
});
