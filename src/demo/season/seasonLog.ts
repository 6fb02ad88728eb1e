import { SEASON_CLIENTS } from "./clients";

/** The day on which the sample looks at its season. */
export const SEASON_DAY = "2026-06-01";

/** What the invented preparer has noted of a client's request by that day, and will note later. */
export interface SeasonLog {
  readonly requestedOn?: string;
  readonly confirmedOn?: string;
  readonly rejectedOn?: string;
  readonly filedOn?: string;
  readonly missing?: string;
}

/** Requests that did not go the usual way: by mail without a receipt yet, rejected, asked late, filed already. */
const UNUSUAL: Readonly<Record<string, SeasonLog>> = {
  Aspen: { requestedOn: "2026-03-12", confirmedOn: "2026-03-12", filedOn: "2026-05-28" },
  Bracken: { requestedOn: "2026-04-15", missing: "K-1 of the partnership" },
  Briar: { filedOn: "2026-04-14" },
  Burdock: {
    requestedOn: "2026-04-14",
    rejectedOn: "2026-04-15",
    confirmedOn: "2026-04-18",
    missing: "corrected 1099-B",
  },
  Celandine: {
    requestedOn: "2026-04-15",
    rejectedOn: "2026-04-16",
    missing: "answer to our letter",
  },
  Fern: {
    requestedOn: "2026-04-13",
    confirmedOn: "2026-04-14",
    missing: "cost of the shares sold",
  },
  Foxglove: {},
  Gorse: { requestedOn: "2026-01-12", confirmedOn: "2026-01-15" },
  Hornbeam: { requestedOn: "2026-04-20", missing: "mileage log" },
  Pimpernel: { filedOn: "2026-05-15" },
  Plantain: { filedOn: "2026-05-18" },
  Juniper: { filedOn: "2026-05-04" },
  Sorrel: { requestedOn: "2026-04-09", confirmedOn: "2026-04-10", missing: "1095-A" },
  Verbena: {
    requestedOn: "2026-04-02",
    confirmedOn: "2026-04-02",
    missing: "K-1, brokerage statement",
  },
  Elder: {},
};

/** Days on which the usual requests went out, over and over down the list. */
const ASKING_DAYS = [
  "2026-03-17",
  "2026-03-26",
  "2026-04-02",
  "2026-04-08",
  "2026-04-10",
  "2026-04-13",
];

function usual(position: number, extended: "yes" | "no"): SeasonLog {
  const requestedOn = ASKING_DAYS[position % ASKING_DAYS.length];
  return extended === "no" || requestedOn === undefined
    ? {}
    : { requestedOn, confirmedOn: requestedOn };
}

const LOGS: ReadonlyMap<string, SeasonLog> = new Map(
  SEASON_CLIENTS.map(({ client, taxYear, extended, filedOn }, position) => {
    const isEarlier = typeof taxYear === "number" && taxYear < 2025;
    const askedEarlier = typeof taxYear === "number" ? `${String(taxYear + 1)}-04-10` : "";
    const earlier: SeasonLog =
      extended === "yes"
        ? { requestedOn: askedEarlier, confirmedOn: askedEarlier, filedOn }
        : { filedOn };
    return [client, isEarlier ? earlier : (UNUSUAL[client] ?? usual(position, extended))];
  })
);

/** What is noted of a client. */
export function logOf(client: string): SeasonLog {
  return LOGS.get(client) ?? {};
}
