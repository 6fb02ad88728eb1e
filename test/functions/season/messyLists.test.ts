import { describe, expect, it } from "vitest";
import { roster } from "../../../src/functions/season/roster";
import { messyLists } from "../../fixtures/invented/messyLists";
import { serial } from "../sheet";
import { singleAnswers } from "./singleAnswers";

const AS_OF = serial("2026-04-20");
const HEADINGS = Object.keys(singleAnswers({}, AS_OF));

/** An error by its code alone. */
const plain = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "code" in cell ? cell.code : cell;

describe("a list of another hand", () => {
  it.each(messyLists)("has the answers of the single functions: $title", ({ cells, clients }) => {
    const [, ...rows] = roster(cells as unknown[][], 2025, AS_OF, "latest", [HEADINGS]);
    const answers = rows.map((row) =>
      Object.fromEntries(HEADINGS.map((heading, index) => [heading, plain(row[index])]))
    );
    expect(answers).toEqual(
      clients.map((client) =>
        Object.keys(client).length === 0
          ? Object.fromEntries(HEADINGS.map((heading) => [heading, ""]))
          : singleAnswers(client, AS_OF)
      )
    );
  });
});
