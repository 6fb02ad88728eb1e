import { readFileSync } from "node:fs";

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../${name}`, import.meta.url), "utf8"));

type Wanted = Readonly<Record<string, string>>;

/** A package in the lock file. */
export interface Locked {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  /** Where it is downloaded from. npm may leave it out for the registry only. */
  readonly resolved?: string;
  readonly link?: boolean;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Wanted;
  readonly optionalDependencies?: Wanted;
  readonly peerDependencies?: Wanted;
}

/** What package.json requires. */
export const asked = read("package.json") as {
  readonly dependencies: Wanted;
  readonly devDependencies: Wanted;
};

const { packages } = read("package-lock.json") as {
  readonly packages: Readonly<Record<string, Locked & { readonly devDependencies?: Wanted }>>;
};

/** The project itself in the lock file. */
export const lockedRoot = packages[""];

/** Every package of the lock file, by the folder where it is installed. */
export const locked: ReadonlyMap<string, Locked> = new Map(
  Object.entries(packages).filter(([folder]) => folder !== "")
);

/** The folder where a package finds another: its own node_modules, or that of a folder around it. */
function folderOf(name: string, from: string): string {
  const own = `${from === "" ? "" : `${from}/`}node_modules/${name}`;
  if (locked.has(own)) return own;
  if (from === "") throw new RangeError(`package-lock.json does not contain ${name}`);
  return folderOf(name, from.slice(0, Math.max(from.lastIndexOf("/node_modules/"), 0)));
}

/**
 * The required packages and all packages that they require in turn.
 *
 * @param wanted - The required packages.
 * @param from - Folder of the package that requires them, empty for the project.
 * @param found - Folders found so far.
 * @returns Their folders.
 */
export function pulledInBy(wanted: Wanted, from = "", found = new Set<string>()): Set<string> {
  for (const name of Object.keys(wanted)) {
    const folder = folderOf(name, from);
    if (found.has(folder)) continue;
    found.add(folder);
    pulledInBy(locked.get(folder)?.dependencies ?? {}, folder, found);
  }
  return found;
}
