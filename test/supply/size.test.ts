import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { filesOf } from "./freshBuild";
import { isPartOf, sizeBudget } from "./sizeBudget";

const built = filesOf(fileURLToPath(new URL("../../dist/", import.meta.url)));
/** The least of its budget that a part uses: a budget far from the truth would let anything in. */
const LEAST_USE = 0.9;

describe("the size of what is served", () => {
  it.each(sizeBudget)("%s stays within %i bytes, and not far below", (part, budget) => {
    const own = [...built].filter(([file]) => isPartOf(part, file));
    const bytes = own.reduce((sum, [, { length }]) => sum + length, 0);
    expect(bytes).toBeLessThanOrEqual(budget);
    expect(bytes).toBeGreaterThanOrEqual(budget * LEAST_USE);
  });
});
