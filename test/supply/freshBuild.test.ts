import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { isLongRun, tell } from "../soak/runLength";
import { licensesBeside } from "./carried";
import { filesOf, freshBuild } from "./freshBuild";
import { isPartOf, sizeBudget } from "./sizeBudget";

type Files = ReadonlyMap<string, Buffer>;

const AT_HOME = { TZ: "America/Los_Angeles", LANG: "C", LC_ALL: "C" };
const FAR_AWAY = { TZ: "Pacific/Auckland", LANG: "de_DE.UTF-8", LC_ALL: "de_DE.UTF-8" };
/** Files that are missing on one side or differ in a byte. */
function differing(one: Files, other: Files): string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => {
    const [here, there] = [one.get(name), other.get(name)];
    return !here || !there || !here.equals(there);
  });
}

const far = freshBuild("elsewhere/and much/deeper", isLongRun, FAR_AWAY);
/** What it is compared with: a second full build in the long run, otherwise dist without the help, the demo sheet and the sample workbook. */
const near: Files = isLongRun
  ? freshBuild("", isLongRun, AT_HOME).files
  : new Map(
      [...filesOf(fileURLToPath(new URL("../../dist/", import.meta.url)))].filter(
        ([file]) => !/^(help|sheet)\/|\.xlsx$/.test(file)
      )
    );

describe("a build of the same sources in another folder, time zone and language", () => {
  it("has the same files with the same bytes", () => {
    expect([...far.files.keys()]).toEqual(
      expect.arrayContaining(["functions.js", "functions.json", "addin.js", "manifest.xml"])
    );
    expect(differing(far.files, near)).toEqual([]);
    const bytes = [...far.files.values()].reduce((sum, { length }) => sum + length, 0);
    tell(`Two builds: ${String(far.files.size)} files, ${String(bytes)} bytes, all equal.`);
  });

  it("differs from a build with one other byte or one more file", () => {
    const script = far.files.get("functions.js") ?? Buffer.alloc(0);
    const changed = Buffer.from(script);
    changed.writeUInt8(script.readUInt8(1000) ^ 1, 1000);
    expect(differing(near, new Map([...near, ["functions.js", changed]]))).toEqual([
      "functions.js",
    ]);
    expect(differing(near, new Map([...near, ["more.js", changed]]))).toEqual(["more.js"]);
  });

  it("has no file without a budget", () => {
    const isWithout = (file: string) => !sizeBudget.some(([part]) => isPartOf(part, file));
    expect([...far.files.keys()].filter(isWithout)).toEqual([]);
    expect(["functions.js.map", "more.js"].filter(isWithout)).toHaveLength(2);
  });

  it.each(["functions", "addin"])(
    "contains the packages whose licenses are beside it, and no others: %s",
    (script) => {
      expect(far.packages[script]).toEqual(licensesBeside(script).map(({ name }) => name));
    }
  );
});
