import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const PROGRAM = "soffice";
/** User and system time of the programs that a shell has run: its second line of `times`. */
const TIMES = /\n(\d+)m([\d.]+)s \d+m[\d.]+s\s*$/;

/** Whether LibreOffice is installed. */
export const hasLibreOffice = spawnSync(PROGRAM, ["--version"], { stdio: "ignore" }).status === 0;

/** A flat spreadsheet file with one formula in each row and no results, so that opening it calculates all of them. */
function spreadsheet(formulas: readonly string[]): string {
  const rows = formulas.map(
    (formula) =>
      `<table:table-row><table:table-cell table:formula="of:=${formula}" office:value-type="float"/></table:table-row>`
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Interest">${rows.join("")}</table:table></office:spreadsheet></office:body></office:document>`;
}

/**
 * The processor time in which LibreOffice opens and calculates a sheet of formulas.
 *
 * @param formulas - One for each row, as LibreOffice writes them.
 * @returns Seconds of user time, start of the program included.
 */
export function libreOfficeSeconds(formulas: readonly string[]): number {
  const folder = mkdtempSync(path.join(tmpdir(), "formulas-"));
  try {
    const file = path.join(folder, "formulas.fods");
    writeFileSync(file, spreadsheet(formulas));
    const command = `${PROGRAM} -env:UserInstallation=file://${folder}/profile --headless --convert-to csv --outdir ${folder} ${file}`;
    const shell = (): string =>
      execFileSync("sh", ["-c", `${command} >/dev/null 2>&1; times`], { encoding: "utf8" });
    // The first run makes the profile.
    shell();
    const [, minutes = "0", seconds = "0"] = TIMES.exec(shell()) ?? [];
    return Number(minutes) * 60 + Number(seconds);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
