import type {
  AgreementChoice,
  InstallmentAgreements,
} from "../../calculation/account/installmentAgreements";
import { monthlyPayment, type MonthlyPaymentInput } from "../../calculation/account/monthlyPayment";
import { entryOn } from "../../rules/datedTable";
import type { AgreementFee } from "../../rules/agreementTables";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import {
  BLANK,
  citation,
  dateCell,
  moneyCell,
  percentCell,
  type AnswerCell,
  type AnswerTable,
} from "../cells/answerCell";
import { hostError } from "../cells/hostError";

const HEADINGS = [
  "Kind or fee",
  "Open",
  "Limit",
  "Limit applies to",
  "Longest term",
  "Monthly payments",
  "Monthly payment",
  "Penalties and interest until paid",
  "Failure-to-pay penalty per month",
  "Setup fee",
  "Condition",
  "Text dated",
  "Source",
];

/** The balance of the table, without what depends on the kind of agreement. */
type Balance = Omit<MonthlyPaymentInput, "months" | "isHalved"> & {
  readonly filedOnTime: boolean;
};

type Rules = Pick<Rulebook, "failureToPay" | "underpaymentRate">;

const named = (what: string, isContradicted: boolean): string =>
  isContradicted ? `${what} (contradicted by the row above)` : what;

/** Payment and cost; the error of a rate that is not published, in both cells. */
function paymentCells(
  balance: Balance,
  months: number,
  isHalved: boolean,
  rules: Rules
): readonly [AnswerCell, AnswerCell] {
  try {
    const found = monthlyPayment({ ...balance, months, isHalved }, rules);
    return [moneyCell(found.payment), moneyCell(found.penaltiesAndInterest)];
  } catch (thrown) {
    if (!(thrown instanceof NotInTableError)) throw thrown;
    return [hostError(thrown), hostError(thrown)];
  }
}

function kindRow(
  { kind, isOpen, months }: AgreementChoice,
  balance: Balance,
  rules: Rules
): AnswerCell[] {
  const isHalved = kind.isInstallmentAgreement && balance.filedOnTime;
  const { figures } = entryOn(rules.failureToPay, balance.agreementOn);
  const payment =
    isOpen && months > 0 ? paymentCells(balance, months, isHalved, rules) : [BLANK, BLANK];
  return [
    named(kind.what, kind.isContradicted),
    isOpen ? "yes" : "no",
    moneyCell(kind.limit),
    kind.limitOf,
    `${kind.term.toFixed()} ${kind.termUnit}`,
    isOpen ? months : BLANK,
    ...payment,
    percentCell(isHalved ? figures.agreementRate : figures.monthlyRate),
    BLANK,
    kind.condition,
    dateCell(kind.textDated),
    citation(kind.source),
  ];
}

function feeRow({ payment, fee, isContradicted, textDated, source }: AgreementFee): AnswerCell[] {
  const blanks = Array<AnswerCell>(HEADINGS.length - 5).fill(BLANK);
  const what = named(`Setup fee: ${payment}`, isContradicted);
  return [what, ...blanks, moneyCell(fee), BLANK, dateCell(textDated), citation(source)];
}

/** The kinds of agreement, then the setup fees, each with the date of its text. */
export function agreementTable(
  { choices, fees }: InstallmentAgreements,
  balance: Balance,
  rules: Rules
): AnswerTable {
  const kinds = choices.map((choice) => kindRow(choice, balance, rules));
  return [HEADINGS, ...kinds, ...fees.map(feeRow)];
}
