import { ChildProcess, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it, vi } from "vitest";
import { demoCommand } from "../../src/demo/terminal/demoCommand";
import { REFUSED } from "../../src/demo/terminal/exitCode";
import { writeOutput } from "../../src/demo/terminal/outputFile";
import { recalculateInTime } from "../../src/demo/terminal/recalculateInTime";
import { fixtureHost } from "../host/fixtureAddIn";
import { goodWorkbook, run } from "./commandFixture";
import { newFolder } from "./workbookFixture";

const disk = newFolder();
const hasSmallDisk =
  process.platform === "linux" &&
  spawnSync("mount", ["-t", "tmpfs", "-o", "size=4k", "tmpfs", disk], { stdio: "ignore" })
    .status === 0;
afterAll(() => {
  if (hasSmallDisk) spawnSync("umount", [disk]);
});

/** A folder in which nobody can write, not even the administrator. */
function readOnlyFolder(): string {
  if (process.getuid?.() === 0) return "/sys";
  const folder = join(newFolder(), "read-only");
  mkdirSync(folder);
  chmodSync(folder, 0o555);
  return folder;
}

describe("an output that cannot be written", () => {
  it("is in a read-only folder", async () => {
    const out = join(readOnlyFolder(), "out.xlsx");
    const { code, printed, complaints } = await run(await goodWorkbook(), "-o", out);
    expect([code, printed, existsSync(out)]).toEqual([REFUSED, "", false]);
    expect(complaints).toEqual([
      expect.stringMatching(/out\.xlsx could not be written: the folder is read-only[^.]*\.$/),
    ]);
  });

  it("is on a full disk", () => {
    const out = join(disk, "out.xlsx");
    const full = (): void => {
      throw Object.assign(new Error(), { code: "ENOSPC" });
    };
    // Where no small disk can be made, the system's error stands for it.
    const write = hasSmallDisk ? undefined : full;
    expect(() => {
      writeOutput(out, new Uint8Array(100_000), false, write);
    }).toThrow(`${out} could not be written: the disk is full.`);
    expect(readdirSync(disk)).toEqual([]);
  });

  it.each([
    ["ENOSPC", "the disk is full"],
    ["EROFS", "the folder is read-only"],
    ["EBUSY", "the file is in use"],
    ["EPERM", "the folder is read-only or the file is in use"],
    ["EIO", "input/output error"],
  ])("leaves nothing, and an older file as it was: %s", (code, reason) => {
    const folder = newFolder();
    const out = join(folder, "out.xlsx");
    writeFileSync(out, "older");
    const halfWritten = (file: string): void => {
      writeFileSync(file, "half");
      throw Object.assign(new Error("input/output error"), { code });
    };
    expect(() => {
      writeOutput(out, new Uint8Array(9), true, halfWritten);
    }).toThrow(`${out} could not be written: ${reason}.`);
    expect([readdirSync(folder), readFileSync(out, "utf8")]).toEqual([["out.xlsx"], "older"]);
  });

  it("was made by another program while the workbook was calculated", () => {
    const folder = newFolder();
    const out = join(folder, "out.xlsx");
    expect(() => {
      writeOutput(out, new Uint8Array(9), false, (file) => {
        writeFileSync(file, "new");
        writeFileSync(out, "other");
      });
    }).toThrow(`${out} could not be written: it already exists.`);
    expect([readdirSync(folder), readFileSync(out, "utf8")]).toEqual([["out.xlsx"], "other"]);
  });
});

describe("a calculation in a process of its own", () => {
  const program = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

  async function runWith(name: string, longest: number) {
    const path = await goodWorkbook();
    const out = join(newFolder(), "out.xlsx");
    const [printed, complaints] = [[] as string[], [] as string[]];
    const code = await demoCommand([path, "-o", out], {
      print: (line) => printed.push(line),
      complain: (sentence) => complaints.push(sentence),
      host: () => fixtureHost(),
      recalculate: (file) => recalculateInTime(file, "null", longest, program(name)),
    });
    expect([code, printed, existsSync(out)]).toEqual([REFUSED, [], false]);
    return complaints.map((sentence) => sentence.replace(path, "FILE"));
  }

  it("is ended when it takes too long", async () => {
    const kill = vi.spyOn(ChildProcess.prototype, "kill");
    expect(await runWith("endlessProcess.ts", 0.1)).toEqual([
      "FILE could not be calculated: it takes more than 0.1 seconds. Split it into smaller workbooks.",
    ]);
    expect(kill).toHaveBeenCalledWith("SIGKILL");
    kill.mockRestore();
  });

  it("is reported when it ends without a result", async () => {
    expect(await runWith("endedProcess.ts", 60)).toEqual([
      "FILE could not be calculated: its calculation ended without a result.",
    ]);
  });
});
