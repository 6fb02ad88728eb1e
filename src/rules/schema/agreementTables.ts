import { z } from "zod";
import { date, figure, listTable, text } from "./parts";

/** A row that applies from a date, and through another if a later text replaced it. */
const inForce = { from: date, through: z.exactOptional(date), textDated: date };

/** A way to pay a balance over time. */
const agreementKind = z.enum([
  "short-term plan",
  "guaranteed agreement",
  "simple payment plan",
  "form 9465",
]);

/** How an agreement is paid and requested, as far as its fee depends on it. */
const agreementPayment = z.enum([
  "short-term plan",
  "direct debit, online",
  "direct debit, phone or mail",
  "other payments, online",
  "other payments, phone or mail",
  "low income, direct debit",
  "low income, other payments",
  "change, online",
  "change, phone or mail",
]);

/** Tables of installment agreements, by id. */
export const agreementTables = {
  "installment-agreements": listTable("kinds", {
    kind: agreementKind,
    what: text,
    ...inForce,
    limitOf: z.enum(["tax", "tax, penalties and interest"]),
    limit: figure,
    isBelow: z.boolean(),
    term: figure,
    termUnit: z.enum(["days", "months"]),
    isInstallmentAgreement: z.boolean(),
    isContradicted: z.boolean(),
    condition: text,
  }),
  "installment-agreement-fees": listTable("fees", {
    payment: agreementPayment,
    ...inForce,
    fee: figure,
    isContradicted: z.boolean(),
  }),
};
