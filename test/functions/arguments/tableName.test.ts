import { describe, expect, it } from "vitest";
import { tableName } from "../../../src/functions/arguments/tableName";
import { ruleTables } from "../../../src/rules/ruleTables";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const tableOf = reading(tableName, "word");
const refused = (complaint: string): InputError => new InputError("word", complaint);

describe("the name of a rule table", () => {
  it.each([...ruleTables().keys()])("is known by its id, with hyphens or spaces: %s", (id) => {
    expect(tableOf(id).id).toBe(id);
    expect(tableOf(` ${id.replaceAll("-", "  ").toUpperCase()} `).id).toBe(id);
  });

  it.each([...ruleTables().values()].map(({ title, id }) => [title, id]))(
    "is known by its title: %s",
    (title, id) => {
      expect(tableOf(title.toUpperCase()).id).toBe(id);
    }
  );

  it.each([
    ["underpayment rates", '"underpayment rates"', "underpayment-rate"],
    ["failure to pey", '"failure to pey"', "failure-to-pay"],
    ["holidays", '"holidays"', "legal-holidays"],
  ])("%j is refused, naming the closest", (cell, quoted, nearest) => {
    expect(() => tableOf(cell)).toThrow(
      refused(
        `${quoted} is not a rule table. The closest name is ${nearest}. EXT.RULETABLES lists them all.`
      )
    );
  });

  it.each([[7], [true], ["x".repeat(5_000)]])("%j, close to no name, is refused", (cell) => {
    expect(() => tableOf(cell)).toThrow(/ is not a rule table\. EXT\.RULETABLES lists them all\.$/);
  });

  it.each([[null], [""], [0]])(
    "is blank in %j, so the message says where all are listed",
    (cell) => {
      expect(() => tableOf(cell)).toThrow(
        refused(
          "The cell is blank. Enter the name of a rule table, such as underpayment rate. EXT.RULETABLES lists them."
        )
      );
    }
  );
});
