import { mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { isStale } from "../../src/demo/serve/freshBuild";

const folder = mkdtempSync(path.join(tmpdir(), "fresh-build-"));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Seconds since 1970 at the beginning of a year. */
const yearBegins = (year: number): number => Date.UTC(year, 0, 1) / 1000;

function builtIn(year: number): string {
  const file = path.join(folder, String(year));
  writeFileSync(file, "");
  utimesSync(file, yearBegins(year), yearBegins(year));
  return file;
}

describe("a build", () => {
  const stale = (...written: string[]): boolean => isStale({ written, without: [], steps: [] });

  it("is fresh if each of its files is newer than all sources", () => {
    expect(stale(builtIn(2200))).toBe(false);
  });

  it("is stale if a file is older than a source, or is missing", () => {
    expect(stale(builtIn(2000))).toBe(true);
    expect(stale(builtIn(2200), builtIn(2000))).toBe(true);
    expect(stale(builtIn(2200), path.join(folder, "missing"))).toBe(true);
  });
});
