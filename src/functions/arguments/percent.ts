import type { AssumedRate } from "../../calculation/penalty/underpaymentRate";
import type { PaymentTarget } from "../../calculation/request/suggestedPayment";
import type { Decimal } from "../../money/dollars";
import { isBlank, isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";
import { closestSentence } from "./closestName";
import { dollars, worksheetNumber } from "./dollars";

const WRITTEN = /^(\d+(\.\d*)?|\.\d+)\s*(%?)$/;

/** A percent typed as 5%, "5%" or 0.05, as a fraction; `undefined` when it is none of these. */
function fractionOf(value: CellValue): Decimal | undefined {
  if (typeof value === "number" && Number.isFinite(value)) return worksheetNumber(value);
  const written = typeof value === "string" ? WRITTEN.exec(value.trim()) : null;
  if (!written) return undefined;
  const number = worksheetNumber(written[1] ?? "0");
  return written[3] === "%" ? number.div(100) : number;
}

/** The interest rate assumed for dates after the last published quarter. A blank cell means that such dates are refused. */
export const assumedRate: CellKind<AssumedRate | undefined> = {
  id: "assumed-rate",
  title: "Assumed rate",
  description:
    "An annual rate for the dates after the last published quarter, such as `7%`, or `latest` for the last published rate. If it is blank or 0, such dates return `#N/A`.",
  accepted: ["7%", "0.07", '"7%"', '"latest"'],
  notAccepted: ["7", "-1%", '"current"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: undefined },
  read: (value, name) => {
    if (plainWord(value) === "latest") return "latest";
    const rate = fractionOf(value);
    if (rate?.greaterThan(0) && rate.lessThan(1)) return rate;
    throw new InputError(
      name,
      `${shown(value)} is not an annual rate.${closestSentence(plainWord(value), ["latest"])} Enter a percent such as 7%, or the word latest.`
    );
  },
};

/** A percent of a tax that was paid. 0 is a possible value. */
export const percentPaid: CellKind<Decimal | undefined> = {
  id: "percent-paid",
  title: "Percent paid",
  description: 'A percent of the tax, such as `90%`, `"90%"` or `0.9`. A blank cell means unknown.',
  accepted: ["90%", '"90%"', "0.9", "0"],
  notAccepted: ["90", '"most of it"'],
  takes: "cell",
  isEmpty: isBlank,
  whenBlank: { means: undefined },
  read: (value, name) => {
    const fraction = fractionOf(value);
    if (fraction && !fraction.isNegative() && fraction.lessThan(10)) return fraction;
    throw new InputError(
      name,
      `${shown(value)} is not a percent of a tax. Enter a percent such as 90%.`
    );
  },
};

/** What a suggested payment aims at. A blank cell means the full balance due. */
export const target: CellKind<PaymentTarget> = {
  id: "target",
  title: "Target",
  description:
    "`full`, also if blank: the balance due. `reasonable cause`: just enough for the 90% test. Or a percent of total tax to have paid in all, at most 200%.",
  accepted: ['"full"', '"reasonable cause"', "95%", "1.1", '""'],
  notAccepted: ['"all"', "95"],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: "full" },
  read: (value, name) => {
    const word = plainWord(value);
    if (word === "full" || word === "reasonable cause") return word;
    const fraction = fractionOf(value);
    if (fraction?.greaterThan(0) && fraction.lessThanOrEqualTo(2)) return fraction;
    throw new InputError(
      name,
      `${shown(value)} is not a target.${closestSentence(word, ["full", "reasonable cause"])} Enter full, reasonable cause, or a percent of total tax such as 95%.`
    );
  },
};

/** An extra amount: a percent of total tax below 100%, or dollars. */
export const cushion: CellKind<Decimal | undefined> = {
  id: "cushion",
  title: "Cushion",
  description:
    "A percent of total tax below 100%, or dollars from 1 up. If it is blank, nothing is added.",
  accepted: ["5%", '"5%"', "500", '""'],
  notAccepted: ['"100%"', "-5%"],
  takes: "cell",
  isEmpty: isBlank,
  whenBlank: { means: undefined },
  read: (value, name, earlier) => {
    if (typeof value !== "string" || !value.trim().endsWith("%"))
      return dollars.read(value, name, earlier);
    const fraction = fractionOf(value);
    if (fraction?.lessThan(1)) return fraction;
    throw new InputError(
      name,
      `${shown(value)} is not a cushion. Enter a percent of total tax such as 5%, or dollars.`
    );
  },
};
