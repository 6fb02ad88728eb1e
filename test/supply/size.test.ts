import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { filesOf } from "./freshBuild";
import { isPartOf, sizeBudget } from "./sizeBudget";

const built = filesOf(fileURLToPath(new URL("../../dist/", import.meta.url)));
/** The smallest share of its budget that a part uses. A budget far above the size would not notice an addition. */
const LEAST_USE = 0.9;

describe("the size of the build", () => {
  it.each(sizeBudget)("%s uses its budget of %i bytes and not much less", (part, budget) => {
    const own = [...built].filter(([file]) => isPartOf(part, file));
    const bytes = own.reduce((sum, [, { length }]) => sum + length, 0);
    expect(bytes).toBeLessThanOrEqual(budget);
    expect(bytes).toBeGreaterThanOrEqual(budget * LEAST_USE);
  });

  it("keeps the script of the pane within 120 kB as a server sends it", () => {
    expect(gzipSync(built.get("addin.js") ?? "").length).toBeLessThanOrEqual(120_000);
  });
});
