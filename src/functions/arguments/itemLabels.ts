import type { ReturnItem } from "../../calculation/liability/returnItems";

/** Labels in one text, separated by semicolons. */
const labels = (text: string): readonly string[] => text.split("; ");

type Labels = Partial<Record<ReturnItem, readonly string[]>>;

const INCOME = {
  wages: labels("wages; salary; salaries; W-2; Form W-2; W-2 wages; W-2 box 1; wages and salaries"),
  ownerWages: labels("wages of the business owner; owner wages"),
  taxExemptInterest: labels(
    "tax-exempt interest; exempt interest; municipal interest; 1099-INT tax-exempt; 1099-INT box 8"
  ),
  interest: labels(
    "interest; taxable interest; bank interest; 1099-INT; Form 1099-INT; 1099-INT box 1; K-1 interest"
  ),
  ordinaryDividends: labels(
    "ordinary dividends; dividends; 1099-DIV; Form 1099-DIV; 1099-DIV box 1a; K-1 dividends; K-1 ordinary dividends"
  ),
  qualifiedDividends: labels(
    "qualified dividends; 1099-DIV qualified; 1099-DIV box 1b; K-1 qualified dividends"
  ),
  longTermGain: labels(
    "long-term gain; long-term capital gain; long-term gains; long-term loss; long-term capital gains; long-term capital loss; capital gain distributions; 1099-DIV box 2a; 1099-B long-term; Schedule D long-term; K-1 long-term gain; K-1 long-term capital gain"
  ),
  shortTermGain: labels(
    "short-term gain; short-term capital gain; short-term gains; short-term loss; short-term capital gains; short-term capital loss; 1099-B short-term; Schedule D short-term; K-1 short-term gain; K-1 short-term capital gain"
  ),
  longTermCarryover: labels(
    "capital loss carryover; capital loss carryforward; long-term capital loss carryover; long-term loss carryover"
  ),
  shortTermCarryover: labels("short-term capital loss carryover; short-term loss carryover"),
  businessProfit: labels(
    "business profit; Schedule C; Schedule C profit; Schedule C net profit; Schedule C loss; self-employment profit; net profit; business income; business loss; 1099-NEC net"
  ),
  rentalIncome: labels(
    "rental income; rents; rental; net rental income; rental loss; rental real estate; Schedule E rents; Schedule E rental; Schedule E part I; K-1 rental; K-1 rental income; K-1 rental loss"
  ),
  partnershipIncome: labels(
    "partnership income; partnership loss; S corporation income; S corporation loss; K-1 ordinary income; K-1 ordinary loss; K-1 ordinary business income; K-1 box 1; K-1 partnership; Schedule E partnership; Schedule E part II"
  ),
  netOperatingLoss: labels(
    "net operating loss carryforward; net operating loss; net operating loss deduction; NOL"
  ),
  pensions: labels("pensions; pension; annuities; pensions and annuities; 1099-R pension"),
  retirementDistributions: labels(
    "retirement distributions; IRA distributions; IRA distribution; 401k distributions; 1099-R IRA; 1099-R IRA distribution"
  ),
  charitableDistribution: labels(
    "qualified charitable distribution; qualified charitable distributions; QCD"
  ),
  earlyDistributions: labels("early distributions; early distribution; early withdrawal"),
  socialSecurityBenefits: labels(
    "social security benefits; total social security benefits; social security; SSA-1099; Form SSA-1099; RRB-1099"
  ),
  taxableSocialSecurity: labels("taxable social security; taxable social security benefits"),
  unemployment: labels("unemployment; unemployment compensation; 1099-G unemployment"),
  otherIncome: labels(
    "other income; miscellaneous income; gambling winnings; W-2G; 1099-G state refund; taxable state refund"
  ),
} as const satisfies Labels;

const ADJUSTMENTS = {
  adjustments: labels(
    "adjustments; adjustments to income; above-the-line deductions; IRA deduction; student loan interest; 1098-E; HSA deduction; self-employed health insurance; educator expenses"
  ),
} as const satisfies Labels;

const DEDUCTIONS = {
  itemizedDeductions: labels(
    "itemized deductions; itemized; other itemized deductions; itemized deductions without state taxes; mortgage interest; home mortgage interest; Form 1098"
  ),
  stateAndLocalTaxes: labels(
    "state and local taxes; SALT; state taxes; property taxes; state income taxes; real estate taxes; state and local income taxes"
  ),
  charitableCash: labels(
    "cash contributions to charity; cash gifts to charity; charity without itemizing"
  ),
  tips: labels("qualified tips"),
  overtime: labels("qualified overtime; overtime premium"),
  carLoanInterest: labels("car loan interest; vehicle loan interest"),
  qualifiedBusinessIncome: labels("qualified business income; QBI"),
  businessWages: labels("wages paid by the business; business W-2 wages"),
  businessProperty: labels("UBIA of qualified property; UBIA; property of the business"),
  specifiedService: labels("specified service trade or business; SSTB; specified service business"),
} as const satisfies Labels;

const TAXES = {
  minimumTaxItems: labels("minimum tax items; AMT items; AMT adjustments"),
  otherTaxes: labels("other taxes; household employment taxes; Schedule H; Schedule 2 other taxes"),
} as const satisfies Labels;

const CREDITS = {
  foreignTaxCredit: labels("foreign tax credit; Form 1116"),
  educationCredits: labels(
    "education credits; education credit; nonrefundable education credits; lifetime learning credit"
  ),
  elderlyCredit: labels(
    "credit for the elderly; credit for the elderly or the disabled; Schedule R"
  ),
  credits: labels(
    "credits; nonrefundable credits; other credits; child and dependent care credit; residential energy credits; saver's credit"
  ),
} as const satisfies Labels;

const PAYMENTS = {
  withholding: labels(
    "withholding; federal withholding; tax withheld; federal tax withheld; withheld; federal income tax withheld; income tax withheld; W/H; federal W/H; W-2 withholding; W-2 box 2; 1099 withholding; 1099-R withholding"
  ),
  estimatedPayments: labels(
    "estimated payments; estimates; estimated tax payments; 1040-ES; Form 1040-ES; 1040-ES payments; ES payments; ES paid; quarterly estimates"
  ),
  overpaymentApplied: labels(
    "overpayment applied; prior year overpayment applied; applied from last year; amount applied from prior year return"
  ),
  refundableCredits: labels(
    "refundable credits; earned income credit; EIC; additional child tax credit; net premium tax credit"
  ),
} as const satisfies Labels;

const PEOPLE = {
  childrenUnder17: labels(
    "children under 17; qualifying children; children; qualifying children under 17; dependents under 17"
  ),
  otherDependents: labels("other dependents; dependents 17 and over"),
  aged: labels("65 or older; aged; over 65; age 65; age 65 or older"),
  blind: labels("blind"),
  earnedIfDependent: labels("earned income of a dependent; earned if dependent"),
  livedApart: labels("lived apart; lived apart all year; lived apart from spouse all year"),
} as const satisfies Labels;

/** The items of a return by kind, each with the labels that a preparer can enter. */
export const ITEM_KINDS = [
  { title: "Income", items: INCOME },
  { title: "Adjustments", items: ADJUSTMENTS },
  { title: "Deductions", items: DEDUCTIONS },
  { title: "Taxes", items: TAXES },
  { title: "Credits", items: CREDITS },
  { title: "Payments", items: PAYMENTS },
  { title: "People", items: PEOPLE },
] as const satisfies readonly { readonly title: string; readonly items: Labels }[];

/**
 * The labels that a preparer can enter for each item of a return, in any case and with any spacing or punctuation. The words are those
 * of Form 1040, its schedules and instructions and of the information returns, and plain shortenings of them. Error messages, the help
 * and the estimate sheet use the first label of each item.
 */
export const ITEM_LABELS: Readonly<Record<ReturnItem, readonly string[]>> = {
  ...INCOME,
  ...ADJUSTMENTS,
  ...DEDUCTIONS,
  ...TAXES,
  ...CREDITS,
  ...PAYMENTS,
  ...PEOPLE,
};

/** Items that are a number of persons, and the largest number accepted. */
export const MOST_PERSONS: Readonly<Partial<Record<ReturnItem, number>>> = {
  childrenUnder17: 30,
  otherDependents: 30,
  aged: 2,
  blind: 2,
};

/** Labels of documents and words that can mean several items, with the items that they may mean. */
export const UNCLEAR_LABELS: readonly (readonly [
  written: readonly string[],
  items: readonly ReturnItem[],
])[] = [
  [
    labels("K-1; Schedule K-1; K-1 income; K-1 loss"),
    ["partnershipIncome", "rentalIncome", "interest", "ordinaryDividends", "longTermGain"],
  ],
  [labels("1099-R; Form 1099-R"), ["pensions", "retirementDistributions"]],
  [labels("IRA"), ["retirementDistributions", "adjustments"]],
  [labels("Schedule E"), ["rentalIncome", "partnershipIncome"]],
  [
    labels("1099-B; Schedule D; capital gain; capital gains; capital loss"),
    ["longTermGain", "shortTermGain"],
  ],
  [labels("1099-G"), ["unemployment", "otherIncome"]],
  [labels("1099-NEC; 1099-K"), ["businessProfit", "otherIncome"]],
  [labels("1099-MISC"), ["rentalIncome", "otherIncome", "businessProfit"]],
  [labels("Schedule A"), ["itemizedDeductions", "stateAndLocalTaxes"]],
  [labels("charitable contributions; charity"), ["itemizedDeductions", "charitableCash"]],
  [labels("tips"), ["wages", "tips"]],
  [labels("overtime"), ["wages", "overtime"]],
  [labels("dependents"), ["childrenUnder17", "otherDependents"]],
  [labels("American opportunity credit; Form 8863"), ["educationCredits", "refundableCredits"]],
];
