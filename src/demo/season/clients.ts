import { parseCsv } from "@cj-tech-master/excelts/csv";
import { ENTERED_COLUMNS } from "../../addin/list/clientList";
import { worksheetDate } from "./sheetStyle";

/** What a cell of the client list contains; `null` where it is blank. */
export type EnteredValue = string | number | Date | null;

/** One client of the sample firm: what the preparer has entered, by the heading of the column. */
export type SampleClient = ReadonlyMap<string, EnteredValue>;

function enteredValue(text: string): EnteredValue {
  if (text === "") return null;
  const date = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(text);
  if (date !== null) {
    const [, month = "", day = "", year = ""] = date;
    return worksheetDate(`${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`);
  }
  return Number.isNaN(Number(text)) ? text : Number(text);
}

/**
 * Reads the clients of the sample firm by the headings of their columns.
 *
 * @param csv - Text of clients.csv: dates as m/d/yyyy, amounts in dollars.
 * @returns The clients in the order of the file.
 * @throws Error when the file does not have every column that the preparer enters.
 */
export function readClients(csv: string): SampleClient[] {
  const { headers = [], rows } = parseCsv(csv, { headers: true });
  const missing = ENTERED_COLUMNS.find(({ heading }) => !headers.includes(heading));
  if (missing) throw new Error(`The client list has no column ${missing.heading}.`);
  return rows.map((row) => {
    const cells = row as Readonly<Record<string, string>>;
    return new Map(Object.entries(cells).map(([heading, text]) => [heading, enteredValue(text)]));
  });
}
