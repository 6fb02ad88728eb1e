/** One client of the invented practice, as a preparer would type the row. */
export interface SeasonClient {
  readonly client: string;
  /** A year, or the last day of a fiscal year. */
  readonly taxYear: number | string;
  readonly state: string;
  readonly filerType: string;
  readonly totalTax: number;
  readonly payments: number;
  readonly paidWithRequest: number;
  readonly extended: "yes" | "no";
  readonly paidOn: string;
  readonly filedOn: string;
  readonly postponementBegins?: string;
  readonly postponementEnds?: string;
  readonly about: string;
}

type Row = readonly [
  client: string,
  taxYear: number | string,
  state: string,
  filerType: string,
  totalTax: number,
  payments: number,
  paidWithRequest: number,
  extended: "yes" | "no",
  paidOn: string,
  filedOn: string,
  about: string,
  postponement?: readonly [begins: string, postponementEnds: string],
];

const OCTOBER = "2026-10-15";
const JUNE = "2026-06-15";

// One line a client.
// prettier-ignore
const ROWS: readonly Row[] = [
  ["Alder", 2025, "OH", "", 18250, 15000, 3250, "yes", "2026-04-15", OCTOBER, "paid in full with the request"],
  ["Anise", 2025, "OH", "", 0, 0, 0, "yes", OCTOBER, OCTOBER, "employee couple, from an estimate"],
  ["Aspen", 2025, "CO", "", 9400.5, 9900, 0, "yes", "2026-04-15", "2026-09-01", "refund due"],
  ["Betony", 2025, "CA", "", 42300, 36000, 4000, "yes", OCTOBER, OCTOBER, "most of the balance paid with the request"],
  ["Bracken", 2025, "CA", "", 42300, 30000, 2000, "yes", OCTOBER, OCTOBER, "too little paid with the request"],
  ["Bramble", 2025, "NY", "", 27600, 20000, 0, "no", "2026-07-20", "2026-07-20", "no request, filed and paid in July"],
  ["Briar", 2025, "NY", "", 27600, 27600, 0, "no", "2026-04-15", "2026-08-03", "no request, but nothing is owed"],
  ["Burdock", 2025, "ME", "", 12100, 9000, 3100, "yes", "2026-04-15", OCTOBER, "resident of Maine"],
  ["Campion", 2025, "ME", "", 12100, 9000, 1000, "yes", "2026-05-29", "2026-10-01", "resident of Maine, rest paid in May"],
  ["Celandine", 2025, "MA", "", 33750, 31000, 0, "yes", OCTOBER, OCTOBER, "resident of Massachusetts"],
  ["Chicory", 2025, "MN", "", 0, 0, 1500, "yes", "2026-06-30", OCTOBER, "sole proprietor, from an estimate"],
  ["Clover", 2025, "MA", "", 8800, 6200, 2600, "yes", "2026-04-15", "2026-06-30", "resident of Massachusetts, filed early"],
  ["Comfrey", 2025, "foreign", "out of country", 15900, 11000, 0, "yes", JUNE, OCTOBER, "abroad, paid by the June day"],
  ["Cowslip", 2025, "foreign", "out of country", 15900, 11000, 4900, "yes", "2026-04-15", OCTOBER, "abroad, paid in full in April"],
  ["Dogwood", 2025, "foreign", "out of country", 21000, 8000, 0, "no", "2026-09-15", "2026-09-15", "abroad, no request, late"],
  ["Elder", 2025, "foreign", "nonresident", 6700, 4000, 2700, "yes", JUNE, OCTOBER, "nonresident without wages"],
  ["Fennel", 2025, "foreign", "nonresident", 6700, 4000, 0, "no", "2026-08-17", "2026-08-17", "nonresident without wages, late"],
  ["Fern", 2025, "IA", "", 0, 0, 0, "yes", OCTOBER, OCTOBER, "retired with gains, from an estimate"],
  ["Foxglove", "2026-06-30", "IL", "", 51000, 40000, 11000, "yes", OCTOBER, "2026-12-15", "fiscal year to the end of June"],
  ["Gorse", "2025-09-30", "WI", "", 14400, 12000, 0, "yes", "2026-03-16", "2026-07-15", "fiscal year to the end of September"],
  ["Hawthorn", 2025, "TX", "", 38500, 30000, 0, "yes", "2026-08-31", OCTOBER, "disaster relief, paid by its end", ["2026-04-10", "2026-08-31"]],
  ["Heather", 2025, "TX", "", 38500, 30000, 0, "no", "2026-08-31", "2026-08-31", "disaster relief, no request needed", ["2026-04-10", "2026-08-31"]],
  ["Hellebore", 2025, "FL", "", 19999.99, 12000, 0, "yes", "2026-11-16", "2026-11-16", "disaster relief, late all the same", ["2026-03-02", "2026-07-31"]],
  ["Hornbeam", 2025, "GA", "", 16300, 9000, 0, "no", OCTOBER, OCTOBER, "request made after the day: no extension"],
  ["Juniper", 2025, "GA", "", 16300, 16000, 0, "no", "2026-05-04", "2026-05-04", "late request, little owed"],
  ["Larch", 2025, "PA", "", 24800, 20000, 2400, "yes", "2026-08-14", OCTOBER, "part payment, the rest in August"],
  ["Linden", 2025, "PA", "", 24800, 20000, 2320, "yes", "2026-10-15", OCTOBER, "just enough for the presumption"],
  ["Lupin", 2025, "NM", "", 0, 0, 0, "yes", OCTOBER, OCTOBER, "head of household, from an estimate"],
  ["Mallow", 2025, "PA", "", 24800, 20000, 2319, "yes", "2026-10-15", OCTOBER, "a dollar short of the presumption"],
  ["Marjoram", 2025, "VA", "", 0, 0, 0, "yes", "2026-04-15", OCTOBER, "no tax, no payments"],
  ["Meadowsweet", 2025, "VA", "", 7350, 7350, 0, "yes", "2026-04-15", "2026-09-30", "balance of zero"],
  ["Mugwort", 2025, "WA", "", 61200, 61200.01, 0, "yes", "2026-04-15", OCTOBER, "refund of a cent"],
  ["Nettle", 2025, "WA", "", 125000, 90000, 25000, "yes", "2026-09-15", OCTOBER, "large balance, most of it sent"],
  ["Oxlip", 2025, "NC", "", 980, 300, 0, "no", "2026-07-06", "2026-07-06", "small balance, more than two months late"],
  ["Pimpernel", 2025, "NC", "", 4200, 1000, 0, "no", "2026-05-15", "2026-05-15", "one month late"],
  ["Plantain", 2025, "NC", "", 4200, 1000, 0, "no", "2026-05-18", "2026-05-18", "two months begun"],
  ["Rowan", 2025, "DC", "", 30150, 26000, 4150, "yes", "2026-04-15", OCTOBER, "paid in full with the request"],
  ["Sorrel", 2025, "OR", "", 22400, 18000, 0, "yes", "2026-12-31", OCTOBER, "filed in time, paid after"],
  ["Spindle", 2025, "OR", "", 22400, 18000, 2500, "yes", OCTOBER, "2026-11-20", "extension overrun"],
  ["Tansy", 2024, "NJ", "", 13300, 9500, 0, "yes", "2025-10-15", "2025-10-15", "the year before"],
  ["Teasel", 2024, "NJ", "", 13300, 9500, 3800, "yes", "2025-04-15", "2025-10-15", "the year before, paid in full"],
  ["Thistle", 2023, "MN", "", 45200, 30000, 0, "no", "2026-03-31", "2026-03-31", "two years late"],
  ["Toadflax", 2023, "MN", "", 10400, 10000, 400, "yes", "2024-04-15", "2024-10-15", "tax year 2023, in good order"],
  ["Verbena", 2025, "CA", "", 0, 0, 10000, "yes", OCTOBER, OCTOBER, "high earner, from an estimate"],
  ["Vetch", 2018, "ME", "", 11800, 9000, 2800, "yes", "2019-04-17", "2019-10-15", "Maine, seven years back"],
  ["Willowherb", 2018, "OH", "", 11800, 9000, 0, "yes", "2019-04-17", "2019-10-15", "the same outside Maine, two days late"],
  ["Yarrow", 2025, "", "", 17500, 12250, 2625, "yes", "2026-07-31", OCTOBER, "state not given"],
];

/** The clients of the invented practice; every name is a plant's. */
export const SEASON_CLIENTS: readonly SeasonClient[] = ROWS.map(
  ([
    client,
    taxYear,
    state,
    filerType,
    totalTax,
    payments,
    paidWithRequest,
    extended,
    paidOn,
    filedOn,
    about,
    postponement,
  ]) => ({
    client,
    taxYear,
    state,
    filerType,
    totalTax,
    payments,
    paidWithRequest,
    extended,
    paidOn,
    filedOn,
    about,
    ...(postponement === undefined
      ? {}
      : { postponementBegins: postponement[0], postponementEnds: postponement[1] }),
  })
);
