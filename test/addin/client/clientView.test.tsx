import type { VNode } from "preact";
import { renderToStaticMarkup } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { AddressView } from "../../../src/addin/client/addressView";
import { clientFacts } from "../../../src/addin/client/clientFacts";
import { ClientPane, selectedClient } from "../../../src/addin/client/clientPane";
import { STAGES_BY_URGENCY, statusLook } from "../../../src/addin/client/clientStatus";
import { ClientView } from "../../../src/addin/client/clientView";
import { LetterView } from "../../../src/addin/client/letterView";
import { noticeAt, useNotices } from "../../../src/addin/notice";
import { paneList } from "../../../src/addin/list/paneList";
import { StatusMark } from "../../../src/addin/client/statusMark";
import { TroubleList } from "../../../src/addin/client/troubleList";
import { TypedClientView } from "../../../src/addin/client/typedClient";
import { usePaneSettings } from "../../../src/addin/list/usePaneSettings";
import { NotDone, type WorkbookHost } from "../../../src/addin/workbook/workbookHost";
import { practiceFacts } from "./practiceFacts";
import { changed, listOf, rowOf, sampleList, settingsOn } from "../list/sampleList";

const settings = settingsOn("2026-06-01");
const refused = () => Promise.reject(new NotDone("not used"));
const workbook: WorkbookHost = {
  selectedCell: refused,
  putFormula: refused,
  addSheet: refused,
};
const nothing = () => undefined;
const done = () => Promise.resolve();
/** What a reader sees of markup. */
const textOf = (part: VNode): string =>
  renderToStaticMarkup(part)
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&quot;", '"')
    .replace(/\s+/g, " ");

function viewOf(name: string, list = sampleList): string {
  const client = rowOf(name, list);
  return textOf(
    <ClientView
      client={client}
      facts={clientFacts(client, settings)}
      settings={settings}
      workbook={workbook}
      run={nothing}
      refresh={done}
    />
  );
}

describe("the view of a client", () => {
  it("begins with name, place, status, next step and four figures", () => {
    const row = sampleList.rows.findIndex(([name]) => name === "Bramble") + 4;
    expect(viewOf("Bramble")).toMatch(
      new RegExp(
        `^ Bramble Clients, row ${row} · tax year 2025, New York Past due 47 days ago Next step: File now \\(was due 4/15/2026\\)\\. .* Due 4/15/2026 Extended to No extension Balance due \\$7,600\\.00 Pay now \\$7,600\\.00 `
      )
    );
  });

  it("shows the cost of waiting with and without, and which one counts", () => {
    expect(viewOf("Bramble")).toMatch(
      /Cost of waiting If filed and paid on 7\/20\/2026 With the extension \$[\d.]+ Without the extension this client \$1,667\.63/
    );
  });

  it("names the cell of each fault", () => {
    const list = changed("Bramble", { "Estimated total tax": "n/a" });
    const row = sampleList.rows.findIndex(([name]) => name === "Bramble") + 4;
    expect(viewOf("Bramble", list)).toContain(
      `Cell E${row} (Estimated total tax): "n/a" is not a dollar amount.`
    );
  });

  it("lists what was recorded, with dates as the trade writes them", () => {
    expect(viewOf("Celandine")).toContain("Request made 4/15/2026 · Request rejected 4/16/2026");
  });

  it("says that a date is extended only as far as the record says so", () => {
    expect(viewOf("Betony")).toContain("Extended to 10/15/2026");
    const list = changed("Betony", { "Confirmed on": "" });
    expect(viewOf("Betony", list)).toContain("With an extension 10/15/2026");
    expect(viewOf("Bramble")).toContain("State return: due 4/15/2026, not extended.");
  });

  it("shows no reminder as if it were a problem", () => {
    expect(viewOf("Burdock")).not.toContain("See STATERULE");
  });
});

describe("the status of a client", () => {
  it("is told by words and the shape of its mark, not by color alone", () => {
    const marks = STAGES_BY_URGENCY.map((stage) =>
      renderToStaticMarkup(<StatusMark stage={stage} />)
    );
    expect(new Set(STAGES_BY_URGENCY.map((stage) => statusLook(stage).words)).size).toBe(6);
    const shapes = new Map(
      STAGES_BY_URGENCY.map((stage, index) => [
        statusLook(stage).urgency,
        / d="([^"]*)"/.exec(marks[index] ?? "")?.[1],
      ])
    );
    expect(new Set(shapes.values()).size).toBe(shapes.size);
    expect(textOf(<StatusMark stage={undefined} />)).toContain("Cannot be read");
  });
});

describe("the letter and the address in the pane", () => {
  it("show the version of the letter and the text to copy", () => {
    const text = textOf(
      <LetterView
        client={rowOf("Celandine")}
        name="Celandine"
        settings={settings}
        workbook={workbook}
        run={nothing}
      />
    );
    expect(text).toContain("Letter: request rejected and not resent in time.");
    expect(text).toMatch(/Dear _+: Your 2025 federal income tax return was due April 15, 2026\./);
    expect(text).toContain("We still need the following from you: reply to our letter.");
  });

  it("show a clean address, with the mark beside it where it is to be confirmed", () => {
    const address = (name: string) =>
      textOf(<AddressView client={rowOf(name)} settings={settings} run={nothing} />);
    // The chart in the rules is read in a secondary source; that is said beside the address, not in it.
    expect(address("Bramble")).toMatch(
      /Mail a paper Form 4868 to: Department of the Treasury, Internal Revenue Service Center Kansas City, MO 64999-0045 Confirm first /
    );
  });

  it("say in a sentence what is missing for an address", () => {
    const list = listOf(["Client", "Total tax", "Payments"], [["Anise", 20000, 15000]]);
    expect(
      textOf(<AddressView client={rowOf("Anise", list)} settings={settings} run={nothing} />)
    ).toContain('The list has no column "State".');
  });
});

describe("the practice in the pane", () => {
  it("shows counts in words and the worst clients as buttons that lead to their rows", () => {
    const practice = practiceFacts(sampleList, settings);
    const markup = renderToStaticMarkup(<TroubleList practice={practice} goTo={nothing} />);
    expect(markup.match(/<button/g)).toHaveLength(6);
    expect(textOf(<TroubleList practice={practice} goTo={undefined} />)).toContain("4 Past due");
    expect(markup).toContain(`Show all ${practice.troubles.length}`);
  });
});

/** The first part of the pane on a date. */
function Pane({ workbook: host, today }: { workbook?: WorkbookHost; today: string }) {
  const notices = useNotices(undefined);
  return <ClientPane workbook={host} pane={usePaneSettings(() => today)} notices={notices} />;
}

describe("the pane without a client", () => {
  it("says why, and offers year, state by name, and filer type with their dates at once", () => {
    const text = textOf(<Pane today="2026-04-01" />);
    expect(text).toContain("Look up due dates");
    expect(text).toContain("Maine");
    expect(text).toMatch(/Due 4\/15\/2026 With an extension 10\/15\/2026 Pay by 4\/15\/2026/);
    expect(text).not.toContain("Past due");
  });

  it("says what is missing of the date", () => {
    const text = textOf(<Pane today="" />);
    expect(text).toContain("The as-of date is not complete. Enter month, day and year.");
  });

  it("has a button that shows the client list where the host can look for it", () => {
    const host = {
      ...workbook,
      sheetTops: () => Promise.resolve([]),
      goTo: () => Promise.resolve(),
    };
    expect(textOf(<Pane workbook={host} today="2026-04-01" />)).toContain("Go to the client list");
    expect(textOf(<Pane workbook={workbook} today="2026-04-01" />)).not.toContain("Go to");
  });

  it("has a button to read the selection where the host has no selection events", () => {
    const host = { ...workbook, selectedList: () => Promise.resolve(sampleList) };
    const text = (others: Partial<WorkbookHost>) =>
      textOf(<Pane workbook={{ ...host, ...others }} today="2026-04-01" />);
    expect(text({})).toContain("Show the selected client");
    expect(text({ followSelection: () => nothing })).not.toContain("Show the selected client");
  });

  it("says which columns a list lacks, and what to select", () => {
    const list = listOf(["Client", "Total tax"], [["Anise", 1]]);
    expect(selectedClient(list, settings)).toBe(
      "The selected list is not a client list. The first row has no heading for total payments. Add that column."
    );
    for (const headings of [
      ["Status", "Count"],
      ["#N/A", "Count"],
    ])
      expect(selectedClient(listOf(headings, [["filed", 3]]), settings)).toBe(
        "To see a client, select a cell in the client's row. A client list has headings such as Client, Total tax and Total payments."
      );
    expect(selectedClient({ ...sampleList, selectedRow: undefined }, settings)).toBe(
      "Select the row of a client."
    );
    const blank = listOf(["Client", "Total tax", "Payments"], [["", "", ""]]);
    expect(selectedClient(blank, settings)).toBe("The selected row has no client.");
  });

  it("asks for nothing while no amount is typed", () => {
    expect(textOf(<TypedClientView settings={settings} />)).not.toMatch(/blank|dollar amount/);
  });
});

describe("a notice", () => {
  const said = { text: "Selected cell D3.", isSettled: true };

  it("belongs to the row that is selected once the action is over, and goes with it", () => {
    const settled = noticeAt(said, "Clients 3 1");
    expect(settled.text).toBe("Selected cell D3.");
    expect(noticeAt(settled, "Clients 3 1")).toBe(settled);
    expect(noticeAt(settled, "Clients 3 2").text).toBe("");
    expect(noticeAt(settled, "").text).toBe("");
  });

  it("stays while the action moves the selection", () => {
    const moving = { ...said, isSettled: false };
    expect(noticeAt(moving, "Clients 3 1")).toBe(moving);
    expect(noticeAt(moving, "Clients 3 2")).toBe(moving);
  });
});

describe("a list with answers of this add-in", () => {
  it("is read without them, and with the meanings chosen for its headings", () => {
    const call =
      '=EXT.ROSTERROWS($A$3:$C$3,A4:C4,2025,"4/1/2026",,"Method",{"Fed liab","Total tax"})';
    const list = {
      ...listOf(["Client", "Fed liab", "Payments", "Method"], [["Anise", 5, 3, "#N/A"]]),
      formulas: [["", "", "", call]],
    };
    const read = paneList(list);
    expect(read.headings).toEqual(["Client", "Fed liab", "Payments", ""]);
    expect(read.own).toEqual([["Fed liab", "Total tax"]]);
    const found = selectedClient(read, settings);
    expect(typeof found === "object" && found.facts.answers["Balance due"].value).toBe(2);
  });
});
