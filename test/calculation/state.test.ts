import { describe, expect, it } from "vitest";
import { isState, STATES } from "../../src/calculation/state";

describe("a state", () => {
  // Fifty states, the District, five possessions, three military mail areas (Pub. 28, appendix B), and "foreign".
  it("is one of sixty codes, none twice", () => {
    expect(new Set(STATES).size).toBe(60);
    expect(STATES).toHaveLength(60);
  });

  it.each(["ME", "MA", "DC", "PR", "AE", "foreign"])("takes %s", (code) => {
    expect(isState(code)).toBe(true);
  });

  it.each(["me", "Maine", "XX", "", "FOREIGN"])("does not take %j as it stands", (code) => {
    expect(isState(code)).toBe(false);
  });
});
