import { describe, expect, it, vi } from "vitest";
import { whenInHost } from "../../src/addin/hostAnswer";

describe("the host's answer", () => {
  it("is passed on inside a host", () => {
    const inHost = vi.fn();
    whenInHost({ onReady: (answered) => answered({ host: "Excel" }) }, inHost);
    expect(inHost).toHaveBeenCalledOnce();
  });

  it.each([
    [
      "the page runs in a browser",
      { onReady: (answered: (answer: { host: unknown }) => void) => answered({ host: null }) },
    ],
    ["the host's script never answers", { onReady: () => new Promise(() => undefined) }],
    ["the host's script did not load", undefined],
  ])("is not missed when %s", (_case, script) => {
    const inHost = vi.fn();
    expect(() => whenInHost(script, inHost)).not.toThrow();
    expect(inHost).not.toHaveBeenCalled();
  });
});
