import { readdirSync, readFileSync } from "node:fs";

const place = (name: string): URL => new URL(`../../${name}`, import.meta.url);
const read = (name: string): string => readFileSync(place(name), "utf8");

/** A package in a script, with the text of its license. */
export interface Carried {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly text: string;
}

const HEADING = /^((?:@[\w.-]+\/)?[\w.-]+) (\d+\.\d+\.\d+\S*) \(([^)]+)\)$/gm;

/** A built script. */
export const script = (name: string): string => read(`dist/${name}.js`);

/**
 * The licenses that the build wrote beside a script.
 *
 * @param name - Name of the script without its extension.
 * @returns Each package with its license, in the order of the file.
 */
export function licensesBeside(name: string): Carried[] {
  const all = read(`dist/${name}.js.LICENSE.txt`);
  const headings = [...all.matchAll(HEADING)];
  return headings.map((heading, index) => {
    const [line, name = "", version = "", license = ""] = heading;
    const text = all.slice(heading.index + line.length, headings[index + 1]?.index).trim();
    return { name, version, license, text };
  });
}

/** The text of the license in an installed package; `undefined` if it has no such file. */
export function installedLicense(name: string): string | undefined {
  const file = readdirSync(place(`node_modules/${name}`)).find((one) => /^licen[cs]e/i.test(one));
  return file === undefined ? undefined : read(`node_modules/${name}/${file}`).trim();
}
