/**
 * What a preparer may type to find a function, besides its name, description and arguments: words of the form, its instructions, the
 * notices and the trade. In the order of the tasks; commas separate phrases.
 */
export const SEARCH_WORDS: Readonly<Record<string, string>> = {
  DUE: "due date, filing deadline, April 15, tax day, when is the return due, last day to request an extension",
  EXTENDED:
    "extension date, extended deadline, October 15, extended due date, six months, 4868 due date",
  PAYBY: "payment deadline, payment due date, when to pay, last day to pay",
  INSTALLMENT: "quarterly due date, estimated tax due date, 1040-ES, quarter, voucher date",
  DISASTERDATE: "disaster relief, FEMA, hurricane, wildfire, storm, flood, postponement, 7508A",
  COMBATZONE: "military, combat zone, deployed, armed forces, soldier",
  EXCHANGEBY: "1031 exchange, like-kind exchange, Form 8824, replacement property, 180 days",
  REFUNDBY:
    "refund deadline, statute of limitations, three years, claim for refund, 1040-X, amended return",
  ABROADDATE:
    "Form 2350, foreign earned income exclusion, Form 2555, expat, bona fide residence, physical presence",
  LIABILITY:
    "tax estimate, estimated total tax, line 4, W-2, wages, 1099, 1099-INT, 1099-DIV, 1099-B, 1099-R, Schedule C, Schedule C profit, Schedule D, Schedule E, K-1, Social Security benefits, tax calculator, how much tax, 4868 estimate",
  LIABILITYLINES:
    "tax calculation, total tax line by line, tax worksheet, W-2, 1099, Schedule C, K-1",
  PAYMENTSTOTAL:
    "withholding, W-2 box 2, federal income tax withheld, line 5, total payments, estimates paid, credits",
  PROJECTEDTAX: "next year, projection, tax planning, expected tax, changes in income",
  INCOMETAX:
    "tax table, tax brackets, regular tax, Form 1040 line 16, capital gains tax, qualified dividends",
  SETAX: "SE tax, self-employment, Schedule SE, Schedule C, sole proprietor, 1099-NEC, freelancer",
  EXTRAMEDICARE: "Form 8959, additional Medicare tax, Medicare surtax",
  NETINVESTMENTTAX: "NIIT, Form 8960, investment income surtax",
  MINIMUMTAX: "AMT, Form 6251, alternative minimum tax, stock options",
  STANDARDDEDUCTION: "standard deduction, over 65, senior, blind, dependent",
  BUSINESSDEDUCTION: "QBI, 199A, pass-through deduction, Form 8995, SSTB",
  CHILDCREDIT: "CTC, child tax credit, Schedule 8812, kids, dependents, ODC",
  SHORTFALL: "balance due, amount owed, how much is owed, line 6, still owes, owe",
  SUGGEST:
    "how much to pay, what to pay, amount to pay, payment with extension, line 7, extension payment, cushion, 90% test, safe amount",
  LINES: "Form 4868, fill in the form, form lines, line 4, line 5, line 6, line 7, line 8, line 9",
  METHOD:
    "how to file, how to request, e-file, electronic payment, paper, Direct Pay, EFTPS, file extension, Form 4868",
  METHODLINES:
    "ways to file, e-file, Direct Pay, EFTPS, debit card, credit card, IRS Free File, paper, proof",
  MAILTO:
    "mailing address, where to mail, where to send, where to file, service center, P.O. box, paper form, envelope",
  ISDESIGNATED:
    "PDS, courier, FedEx, UPS, DHL, private delivery, overnight, certified mail, timely mailing",
  ISSUES: "what is wrong, problems, errors, red flags, checklist, review, diagnostics, warnings",
  ISSUECOUNT: "how many problems, errors, red flags, number of issues",
  MEMO: "letter, client letter, email to client, message to client, write to client, engagement",
  MEMOLINES: "letter to print, letter in paragraphs, copy the letter",
  CALENDAR:
    "deadlines, dates, list of dates, tax calendar, all deadlines, FBAR, IRA deadline, gift tax, SEP",
  STAGE: "status, accepted, rejected, pending, acknowledgment, was it filed, reject code",
  DAYSLEFT: "days left, countdown, how long, days until",
  NEXTDATE: "next step, what to do next, to do, next deadline, rejected, perfection period, resend",
  ROSTER: "client list, all clients, whole list, spreadsheet, one formula, practice, dashboard",
  ROSTERROWS: "client list, single rows, row formula, table of clients",
  ROSTERHEADINGS: "column headings, headers, columns of my list, unused column",
  STATEDUE: "state due date, state return, state deadline",
  STATEEXTENDED: "state extension, state extended due date, automatic state extension",
  STATERULE: "state extension, state form, state rules, state conditions, state payment",
  CHARGES:
    "penalty, penalties and interest, late fee, late charge, cost of waiting, additions to tax, late filing, late payment, P and I, CP14",
  CHARGELINES:
    "penalty calculation, penalty breakdown, penalties and interest line by line, late fee",
  LATEFILE: "late filing penalty, failure to file, FTF, late fee, delinquency penalty, 60 days, 5%",
  LATEPAY: "late payment penalty, failure to pay, FTP, late fee, 0.5%",
  UNDERPAYRATE:
    "interest rate, IRS rate, underpayment rate, federal short-term rate, quarterly rate",
  INTEREST: "interest on tax, underpayment interest, daily compounding",
  FIRSTTIME:
    "FTA, first-time abatement, penalty relief, penalty abatement, waiver, remove penalty, Form 843",
  LEDGER:
    "partial payments, account history, transcript, payment history, paid in parts, notice, CP504",
  AGREEMENT:
    "payment plan, installment agreement, Form 9465, monthly payment, pay over time, setup fee, hardship",
  WHATIF: "compare payments, scenarios, what if, pay more now, compare dates",
  EFFECTIVERATE: "borrow, loan, credit card, annual cost, APR, worth paying late",
  REQUIREDPAYMENT:
    "safe harbor, 110%, required annual payment, avoid estimated tax penalty, Form 2210",
  FIRSTINSTALLMENT:
    "first quarter estimate, first voucher, 1040-ES, Q1, quarterly payment, next year estimate",
  ANNUALIZED: "annualized income, Schedule AI, Form 2210, seasonal income, uneven income",
  ESTPENALTY:
    "underpayment penalty, Form 2210, estimated tax penalty, penalty for underpayment of estimated tax, safe harbor",
  ESTPENALTYLINES:
    "Form 2210 calculation, underpayment penalty calculation, estimated tax penalty breakdown",
  SOURCE: "citation, authority, law, where from, reference",
  KNOWNTHROUGH: "up to date, current, coverage, last update",
  RULETABLES: "rule tables, version, updates, which years",
};
