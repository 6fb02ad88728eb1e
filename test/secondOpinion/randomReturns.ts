import fc from "fast-check";
import { civil, dayNumber, daysInMonth } from "./civilDays";
import { endOfMonth, type LateReturn } from "./monthByMonth";
import { RATES_END, type Assumed } from "./quarterlyRates";
import {
  calendarYearEnd,
  statuteDates,
  type ActDate,
  type Relief,
  type StatuteDates,
  type Who,
  type Whose,
} from "./statuteDates";

/** A return with all payments, before and after the payment due date. */
export type Drawn = Omit<LateReturn, "through">;

const FIRST_YEAR = 2009;
const LAST_YEAR = 2027;
const LATEST = dayNumber(2041, 12, 31);

const monthEnd = (year: number, month: number): number =>
  dayNumber(year, month, daysInMonth(year, month));

/** The last day of a tax year: mostly a calendar year, otherwise a fiscal year that ends with a month from January 2010. */
export const yearEnds = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: FIRST_YEAR, max: LAST_YEAR }).map(calendarYearEnd) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.integer({ min: FIRST_YEAR + 1, max: LAST_YEAR }), fc.integer({ min: 1, max: 11 }))
      .map(([year, month]) => monthEnd(year, month)),
  }
);
const who = fc.constantFrom<Who>(
  "resident",
  "resident",
  "resident",
  "out of country",
  "nonresident"
);
const states = fc.constantFrom("", "", "TX", "ME", "MA", "NH", "foreign");

/** A value in one case of three, otherwise undefined. */
export const seldom = <Value>(arbitrary: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary });

/** A postponement period near one of the three dates: it includes the date, ends on it, or ends just before it. */
const reliefs = seldom(
  fc.record({
    act: fc.constantFrom<keyof StatuteDates>("paidWithRequest", "filing", "extended"),
    before: fc.oneof(fc.integer({ min: -1, max: 3 }), fc.integer({ min: 0, max: 250 })),
    after: fc.oneof(fc.integer({ min: -1, max: 3 }), fc.integer({ min: 0, max: 250 })),
    to: fc.constantFrom<"day" | "29th" | "30th" | "end of month">(
      "day",
      "29th",
      "30th",
      "end of month"
    ),
  })
);

type DrawnRelief = NonNullable<typeof reliefs extends fc.Arbitrary<infer Value> ? Value : never>;

function reliefAt({ act, before, after, to }: DrawnRelief, dates: StatuteDates): Relief {
  const { last } = dates[act];
  const begins = last - before;
  const day = Math.max(begins, last + after);
  const { year, month, date } = civil(day);
  const most = daysInMonth(year, month);
  const wanted = { day: date, "29th": 29, "30th": 30, "end of month": most }[to];
  return { begins, until: Math.max(begins, dayNumber(year, month, Math.min(wanted, most))) };
}

/** A date some months and days after one of the deadlines. */
const moments = fc.record({
  from: fc.constantFrom<keyof StatuteDates | "due" | "rates">(
    ...(["paidWithRequest", "filing", "extended", "due", "due", "rates"] as const)
  ),
  months: fc.oneof(
    { weight: 6, arbitrary: fc.constant(0) },
    { weight: 6, arbitrary: fc.integer({ min: 1, max: 8 }) },
    { weight: 1, arbitrary: fc.integer({ min: 44, max: 54 }) },
    { weight: 1, arbitrary: fc.integer({ min: 98, max: 108 }) }
  ),
  days: fc.oneof(
    { weight: 5, arbitrary: fc.integer({ min: -2, max: 4 }) },
    { weight: 1, arbitrary: fc.constantFrom(59, 60, 61, 62) },
    { weight: 1, arbitrary: fc.integer({ min: -100, max: -3 }) },
    { weight: 3, arbitrary: fc.integer({ min: 0, max: 250 }) },
    { weight: 1, arbitrary: fc.integer({ min: 0, max: 1500 }) }
  ),
});

type Moment = typeof moments extends fc.Arbitrary<infer Value> ? Value : never;

interface Frame {
  readonly yearEnd: number;
  readonly dates: StatuteDates;
  readonly extended: boolean;
}

function dayAt({ from, months: after, days }: Moment, { yearEnd, dates, extended }: Frame): number {
  const due: ActDate = extended ? dates.extended : dates.filing;
  const anchor = from === "rates" ? RATES_END : from === "due" ? due.named : dates[from].last;
  const near =
    from === "rates" ? Math.min(anchor, dates.filing.last + 1500) : endOfMonth(anchor, after);
  return Math.min(LATEST, Math.max(yearEnd + 1, near + days));
}

const taxes = fc.oneof(
  { weight: 1, arbitrary: fc.constant(0) },
  { weight: 4, arbitrary: fc.integer({ min: 1, max: 80_000 }) },
  { weight: 6, arbitrary: fc.integer({ min: 80_000, max: 9_000_000 }) },
  { weight: 3, arbitrary: fc.integer({ min: 1, max: 90_000 }).map((dollars) => dollars * 100) },
  { weight: 1, arbitrary: fc.integer({ min: 9_000_000, max: 900_000_000_000 }) }
);
const tenths = fc.constantFrom(0, 0, 5, 8, 9, 9, 9, 9, 10, 11);
const moreCents = fc.constantFrom(-1, 0, 0, 1, 12_345);
const share = (tax: number, tenth: number, more: number): number =>
  Math.max(0, Math.floor((tax * tenth) / 10) + more);

/** The assumed rate, or none. */
export const assumptions = fc.constantFrom<Assumed>(undefined, "latest", 700, 625, 1, 1_800);

const frames = fc
  .record({ yearEnd: yearEnds, who, state: states, postponement: reliefs, extended: fc.boolean() })
  .map(({ yearEnd, who: filerType, state, postponement, extended }) => {
    const plain: Whose = { yearEnd, who: filerType, state };
    const given = postponement && reliefAt(postponement, statuteDates(plain));
    const whose: Whose = { ...plain, postponement: given };
    return { whose, frame: { yearEnd, dates: statuteDates(whose), extended } };
  });

const agreements = seldom(moments);

/** A return with the balance paid on one date, as CHARGES takes it. */
export const returnsPaidAtOnce: fc.Arbitrary<Drawn & { readonly paidOn: number }> = fc
  .record({
    client: frames,
    taxCents: taxes,
    tenth: tenths,
    more: moreCents,
    paidOn: moments,
    filedOn: fc.oneof(moments, fc.constant(undefined)),
    agreement: agreements,
    assumed: assumptions,
  })
  .map(({ client: { whose, frame }, taxCents, tenth, more, ...drawn }) => {
    const paidOn = dayAt(drawn.paidOn, frame);
    const paidOnTimeCents = share(taxCents, tenth, more);
    const rest = taxCents - paidOnTimeCents;
    return {
      ...whose,
      taxCents,
      paidOnTimeCents,
      paidOn,
      extended: frame.extended,
      assumed: drawn.assumed,
      payments: rest > 0 ? [{ day: paidOn, cents: rest }] : [],
      filed: drawn.filedOn ? dayAt(drawn.filedOn, frame) : paidOn,
      agreementOn: drawn.agreement && dayAt(drawn.agreement, frame),
    };
  });

const parts = fc
  .record({
    client: frames,
    taxCents: taxes,
    parts: fc.array(fc.record({ on: moments, tenth: tenths, more: moreCents }), {
      minLength: 1,
      maxLength: 5,
    }),
    restOn: fc.option(moments, { nil: undefined }),
    filedOn: moments,
  })
  .map(({ client: { whose, frame }, taxCents, ...drawn }) => {
    const payments = drawn.parts.map(({ on, tenth, more }) => ({
      day: dayAt(on, frame),
      cents: Math.floor(share(taxCents, tenth, more) / (drawn.restOn ? drawn.parts.length : 1)),
    }));
    const rest = taxCents - payments.reduce((sum, { cents }) => sum + cents, 0);
    if (drawn.restOn && rest > 0) payments.push({ day: dayAt(drawn.restOn, frame), cents: rest });
    return { whose, frame, taxCents, payments, filed: dayAt(drawn.filedOn, frame) };
  });

/** About 90% paid by the due date and the balance in two payments by the filing, mostly by the extended due date. */
const nineTenths = fc
  .record({
    client: frames,
    taxCents: taxes,
    more: moreCents,
    onTime: fc.integer({ min: -1, max: 40 }),
    filedBefore: fc.integer({ min: -2, max: 120 }),
    restBefore: fc.tuple(fc.integer({ min: -1, max: 60 }), fc.integer({ min: -1, max: 60 })),
  })
  .map(({ client: { whose, frame }, taxCents, more, ...drawn }) => {
    const within = (day: number): number => Math.max(frame.yearEnd + 1, day);
    const filed = frame.dates.extended.last - drawn.filedBefore;
    const first = share(taxCents, 9, more);
    const rest = Math.max(0, taxCents - first);
    const half = Math.floor(rest / 2);
    const payments = [
      { day: within(frame.dates.filing.last - drawn.onTime), cents: first },
      { day: within(filed - drawn.restBefore[0]), cents: half },
      { day: within(filed - drawn.restBefore[1]), cents: rest - half },
    ];
    return { whose, frame, taxCents, payments, filed };
  });

/** A notice on a moment, or some days before a payment, so that the payment is near the end of the time to pay. */
const noticeDays = seldom(
  fc.oneof(
    fc.record({ on: moments }),
    fc.record({ payment: fc.nat({ max: 5 }), before: fc.integer({ min: 0, max: 25 }) })
  )
);
type NoticeDay = NonNullable<typeof noticeDays extends fc.Arbitrary<infer Value> ? Value : never>;

function noticeDay(notice: NoticeDay, payments: Drawn["payments"], frame: Frame): number {
  if ("on" in notice) return dayAt(notice.on, frame);
  const near = payments[notice.payment % payments.length]?.day ?? 0;
  return near - notice.before;
}

const levyNotices = seldom(
  fc.oneof(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 400 }))
);

/** A return with partial payments of a tenth of the tax and more, as LEDGER takes it. They may not cover the tax, or may exceed it. */
export const returnsPaidInParts: fc.Arbitrary<Drawn> = fc
  .record({
    paid: fc.oneof({ weight: 5, arbitrary: parts }, { weight: 1, arbitrary: nineTenths }),
    agreement: agreements,
    notice: noticeDays,
    levyAfter: levyNotices,
    assumed: assumptions,
  })
  .map(({ paid: { whose, frame, ...given }, agreement, notice, levyAfter, assumed }) => {
    // Nothing is billed before the tax is due and the return is filed.
    const afterFiling = (day: number): number =>
      Math.max(day, given.filed, frame.dates.paidWithRequest.last + 1);
    const noticeOn = notice && afterFiling(noticeDay(notice, given.payments, frame));
    return {
      ...whose,
      ...given,
      paidOnTimeCents: 0,
      extended: frame.extended,
      assumed,
      agreementOn: agreement && afterFiling(dayAt(agreement, frame)),
      noticeOn,
      levyNoticeOn:
        noticeOn === undefined || levyAfter === undefined ? undefined : noticeOn + levyAfter,
    };
  });
