/** What the estimate of total tax does not calculate, for its table, its help and the estimate sheet. */
export const LEFT_OUT: readonly string[] = [
  "capital gains taxed at 25% and 28%",
  "loss limits on rentals and partnerships other than the limit on excess business losses",
  "gains from business property within that limit",
  "the limit of net operating losses to 80% of taxable income",
  "net operating losses and the foreign tax credit of the alternative minimum tax",
  "self-employment tax and net investment income tax on partnership income",
  "several businesses",
  "foreign income",
  "the credit for the elderly, the foreign tax credit, education and energy credits unless entered",
  "the refundable child tax credit",
  "the premium tax credit",
  "separate filers whose spouse itemizes",
  "the 0.5% floor under charitable contributions for 2026",
  "the tax on a child's investment income",
  "income averaging for farmers",
];
