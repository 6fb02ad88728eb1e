import type { Cell, Workbook, Worksheet } from "@cj-tech-master/excelts";
import { Workbook as NewWorkbook } from "@cj-tech-master/excelts";
import { beforeAll, describe, expect, it } from "vitest";
import { headingPlace } from "../../src/demo/season/columnFormulasSheet";
import { SAMPLE_DATE } from "../../src/demo/season/assumptionsSheet";
import { GLANCE_SHEET, TROUBLE_CORNER } from "../../src/demo/season/glanceSheet";
import { FIRST_PARAGRAPH, LETTER_WIDTH, PARAGRAPH_LINES } from "../../src/demo/season/letterSheet";
import { seasonWorkbook } from "../../src/demo/season/seasonWorkbook";
import { sampleClients } from "../../src/demo/terminal/sampleClients";
import { recalculateWorkbook } from "../../src/demo/workbook/workbook";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { fromCatalog } from "../functions/fromCatalog";
import { down, serial } from "../functions/sheet";

const clients = sampleClients();
const names = clients.map((client) => String(client.get("Client")));
let workbook: Workbook;

beforeAll(async () => {
  const made = seasonWorkbook(clients, names);
  const { bytes, report } = await recalculateWorkbook(made, hostOfBuiltAddIn("null"));
  expect(report.errors).toEqual([]);
  expect(report.notCalculated).toEqual([]);
  workbook = new NewWorkbook();
  await workbook.xlsx.load(bytes);
}, 300_000);

function sheetOf(name: string): Worksheet {
  const sheet = workbook.getWorksheet(name);
  if (sheet === undefined) throw new RangeError(`The sample has no sheet ${name}.`);
  return sheet;
}

function shown(cell: Cell): unknown {
  const value = cell.formula ? cell.result : cell.value;
  return value instanceof Date ? serial(value.toISOString().slice(0, 10)) : (value ?? "");
}

/** What the list or the column formulas show under a heading, client by client. */
function under(heading: string, sheet = headingPlace(heading).sheet): unknown[] {
  const cells = sheetOf(sheet);
  const headings = cells.getRow(1);
  let column = 0;
  headings.eachCell((cell) => {
    if (cell.text === heading) column = cell.col;
  });
  expect(column, `${heading} on ${sheet}`).toBeGreaterThan(0);
  return names.map((_name, index) => shown(cells.getCell(index + 2, column)));
}

const column = (heading: string) => down(...under(heading));
const answers = (id: string, ...cells: unknown[]): unknown[] =>
  (fromCatalog(id)(...cells) as unknown[][]).map(([cell]) =>
    typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell
  );
const AS_OF = [[serial(SAMPLE_DATE)]];
const NONE = null;
const record = () => ["Requested on", "Confirmed on", "Rejected on", "Filed on"].map(column);
const filer = () => ["State", "Filer type"].map(column);
const postponement = () => ["Postponement begins", "Postponement ends"].map(column);
const year = () => column("Tax year or fiscal year end");
const tax = () => [column("Estimated total tax"), column("Total payments")];

describe("the same client has the same figures", () => {
  it.each([
    "Regular due date",
    "Extended due date",
    "Payment due date",
    "Balance due",
    "Suggested payment",
    "Penalties and interest (planned)",
    "Status",
    "Days left",
    "Issues",
  ])("in the client list and the column formulas: %s", (heading) => {
    expect(under(heading, "Column formulas")).toEqual(under(heading, "Clients"));
  });

  it("in the client list and in the single functions", () => {
    const listed = (heading: string) => under(heading, "Clients");
    expect(answers("SHORTFALL", ...tax())).toEqual(listed("Balance due"));
    expect(answers("SUGGEST", ...tax())).toEqual(listed("Suggested payment"));
    expect(answers("STAGE", year(), AS_OF, ...record(), ...filer(), ...postponement())).toEqual(
      listed("Status")
    );
    expect(
      answers(
        "CHARGES",
        year(),
        column("Estimated total tax"),
        column("Paid by the due date"),
        column("Payment date used"),
        column("Filing date used"),
        column("Extension counts"),
        ...filer(),
        [["latest"]],
        NONE,
        ...postponement()
      )
    ).toEqual(listed("Penalties and interest (planned)"));
  });

  it("in the client list and on the request sheets", () => {
    const status = under("Status", "Clients");
    const next = under("Next deadline", "Clients");
    const due = under("Balance due", "Clients");
    for (const [index, name] of names.entries()) {
      const sheet = sheetOf(name);
      expect(shown(sheet.getCell("B12")), name).toBe(status[index]);
      expect(shown(sheet.getCell("B13")), name).toBe(next[index]);
      expect(shown(sheet.getCell("F10")), name).toBe(due[index]);
      // Line 6 of Form 4868 is in whole dollars.
      expect(Math.abs(Number(shown(sheet.getCell("C7"))) - Number(due[index]))).toBeLessThan(1);
    }
  });

  it("in the client list and in the letters, which name the cost that is not zero", () => {
    const costs = under("Penalties and interest (planned)", "Clients").map(Number);
    for (const [index, name] of names.entries()) {
      const text = letterOf(name).join(" ");
      const written = (costs[index] ?? 0).toLocaleString("en-US", { minimumFractionDigits: 2 });
      if (costs[index] !== 0) expect(text, name).toContain(`$${written} in penalties and interest`);
      else expect(text, name).not.toContain("in penalties and interest");
    }
  });

  it("in the client list and in the list of clients with issues, worst first", () => {
    const glance = sheetOf(GLANCE_SHEET);
    const rows = names.map((_name, index) =>
      [1, 2, 3, 4, 5, 7].map((at) => shown(glance.getCell(TROUBLE_CORNER.row + 1 + index, at)))
    );
    const listed = rows.filter(([name]) => name !== "").slice(0, names.length);
    const headings = ["Severity", "Status", "Most serious issue", "Next deadline", "What to do"];
    const blocks = headings.map((heading) => under(heading, "Clients"));
    const issues = under("Issues", "Clients");
    const troubled = names.filter((_name, index) => Number(issues[index]) > 0);
    expect(listed.map(([name]) => name).toSorted()).toEqual(troubled);
    for (const [name, ...cells] of listed)
      expect(cells).toEqual(blocks.map((block) => block[names.indexOf(String(name))]));
    const days = under("Days left", "Clients").map(Number);
    const order = listed.map(([name, severity]) => [
      severity === "problem" ? 0 : 1,
      days[names.indexOf(String(name))] ?? 0,
    ]);
    const sorted = order.toSorted(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d);
    expect(order).toEqual(sorted);
  });
});

function letterOf(name: string): string[] {
  const sheet = sheetOf(`${name} letter`);
  return PARAGRAPH_LINES.map((_lines, index) =>
    String(shown(sheet.getCell(FIRST_PARAGRAPH + index, 1)))
  );
}

describe("the letters of the sample", () => {
  // What is recorded on June 1, 2026, in clients.csv: a rejected request, and two returns without one. The amounts are the answers of
  // CHARGES without an extension, which test/secondOpinion calculates independently.
  it.each([
    ["Celandine", "The IRS rejected the request", "$814.31"],
    ["Bramble", "no extension was requested by then", "$1,667.63"],
    ["Oxlip", "no extension was requested by then", "$551.75"],
  ])("does not claim an extension that %s does not have", (name, said, cost) => {
    const text = letterOf(name).join(" ");
    expect(text).toContain(said);
    expect(text).toContain(cost);
    expect(text).not.toMatch(/until October 15, 2026/);
  });

  it.each(["2026-03-01", "2026-04-10", "2026-04-17", SAMPLE_DATE, "2026-10-16", "2027-05-01"])(
    "have a row for every paragraph, high enough for its text, on %s",
    (asOf) => {
      const blocks = [
        year(),
        ...tax(),
        column("Paid with request"),
        ...record(),
        ...["Planned filing date", "Planned payment date", "Still needed"].map(column),
        ...filer(),
        ...postponement(),
      ];
      for (const [index, name] of names.entries()) {
        const [of, total, paid, sent, made, proof, rejected, filed, file, pay, needed, ...rest] =
          blocks.map((block) => [block[index]]);
        const [state, kind, begins, ends] = rest;
        const cells = [of, total, paid, sent, [[serial(asOf)]], made, proof, rejected, filed, NONE];
        const more = [file, pay, [["full"]], needed, state, kind, [["latest"]], begins, ends];
        const answer = fromCatalog("MEMOLINES")(...cells, ...more) as string[][];
        const paragraphs = answer.slice(1).map(([, paragraph = ""]) => paragraph);
        expect(paragraphs.length, name).toBeLessThanOrEqual(PARAGRAPH_LINES.length);
        for (const [row, paragraph] of paragraphs.entries()) {
          const lines = Math.ceil(paragraph.length / LETTER_WIDTH);
          expect(lines, `${name}: ${paragraph}`).toBeLessThan(PARAGRAPH_LINES[row] ?? 0);
        }
        if (asOf === SAMPLE_DATE) expect(letterOf(name).filter(Boolean)).toEqual(paragraphs);
      }
    }
  );
});
