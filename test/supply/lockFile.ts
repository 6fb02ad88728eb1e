import { readFileSync } from "node:fs";

const read = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../${name}`, import.meta.url), "utf8"));

type Wanted = Readonly<Record<string, string>>;

/** A package as the lock file holds it. */
export interface Locked {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  /** Where it is fetched from; npm may leave it out for the registry, never for anything else. */
  readonly resolved?: string;
  readonly link?: boolean;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Wanted;
  readonly optionalDependencies?: Wanted;
  readonly peerDependencies?: Wanted;
}

/** What package.json asks for. */
export const asked = read("package.json") as {
  readonly dependencies: Wanted;
  readonly devDependencies: Wanted;
};

const { packages } = read("package-lock.json") as {
  readonly packages: Readonly<Record<string, Locked & { readonly devDependencies?: Wanted }>>;
};

/** The project itself as the lock file has it. */
export const lockedRoot = packages[""];

/** Every package of the lock file, by the folder it is installed in. */
export const locked: ReadonlyMap<string, Locked> = new Map(
  Object.entries(packages).filter(([folder]) => folder !== "")
);

/** Where a package finds another: in its own node_modules, or in that of a folder around it. */
function folderOf(name: string, from: string): string {
  const own = `${from === "" ? "" : `${from}/`}node_modules/${name}`;
  if (locked.has(own)) return own;
  if (from === "") throw new RangeError(`package-lock.json does not hold ${name}`);
  return folderOf(name, from.slice(0, Math.max(from.lastIndexOf("/node_modules/"), 0)));
}

/**
 * Packages that are pulled in by those asked for, themselves included.
 *
 * @param wanted - What is asked for.
 * @param from - Folder of the package that asks, empty for the project.
 * @param found - What is known already.
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
