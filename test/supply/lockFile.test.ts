import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { asked, locked, lockedRoot, pulledInBy, type Locked } from "./lockFile";

const REGISTRY = "https://registry.npmjs.org/";
const EXACT = /^\d+\.\d+\.\d+$/;
/** An SHA-512 sum as npm writes it. */
const SUM = /^sha512-[A-Za-z0-9+/]{86}==$/;
const LICENSES = ["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0"];
/** Tools that run something of their own when they are installed; none of them is in what is built. */
const RUN_WHEN_INSTALLED = ["core-js-pure", "esbuild", "protobufjs"];

const foldersWhere = (holds: (one: Locked) => boolean): string[] =>
  [...locked].filter(([, one]) => holds(one)).map(([folder]) => folder);

describe("every package in the lock file", () => {
  it("has a sum that its content is held against", () => {
    expect(locked.size).toBeGreaterThan(500);
    expect(foldersWhere(({ integrity }) => !SUM.test(integrity ?? ""))).toEqual([]);
  });

  it("comes from the registry of npm and nowhere else", () => {
    const isFromElsewhere = ({ resolved = REGISTRY, link = false }: Locked) =>
      link || !resolved.startsWith(REGISTRY);
    expect(foldersWhere(isFromElsewhere)).toEqual([]);
  });

  it("asks for others by version, not by address", () => {
    const ranges = ({ dependencies, optionalDependencies, peerDependencies }: Locked) =>
      Object.values({ ...peerDependencies, ...optionalDependencies, ...dependencies });
    const isAddress = (range: string) => /[:/]/.test(range.replace(/^npm:(@[^/]+\/)?/, ""));
    const addresses = ["github:a/b", "a/b", "git+ssh://a", "file:../a", "https://a/b.tgz"];
    expect(addresses.filter(isAddress)).toEqual(addresses);
    expect(foldersWhere((one) => ranges(one).some(isAddress))).toEqual([]);
  });

  it("runs nothing when it is installed, but for known tools", () => {
    expect(foldersWhere(({ hasInstallScript = false }) => hasInstallScript)).toEqual(
      RUN_WHEN_INSTALLED.map((name) => `node_modules/${name}`)
    );
  });
});

describe("package.json", () => {
  it("asks for exact versions, and the lock file is that of these", () => {
    const all = { ...asked.dependencies, ...asked.devDependencies };
    expect(Object.entries(all).filter(([, version]) => !EXACT.test(version))).toEqual([]);
    expect(lockedRoot?.dependencies).toEqual(asked.dependencies);
    expect(lockedRoot?.devDependencies).toEqual(asked.devDependencies);
    for (const [name, version] of Object.entries(all))
      expect(locked.get(`node_modules/${name}`)?.version, name).toBe(version);
  });
});

describe("the packages of the add-in, and what they pull in", () => {
  const folders = [...pulledInBy(asked.dependencies)];

  it("are those the lock file does not keep for development", () => {
    expect(folders.toSorted()).toEqual(foldersWhere(({ dev = false }) => !dev).toSorted());
  });

  it.each(folders)("are free to be passed on: %s", (folder) => {
    expect(LICENSES).toContain(locked.get(folder)?.license);
  });

  it.each(folders)("are installed as locked, with nothing to run: %s", (folder) => {
    const file = new URL(`../../${folder}/package.json`, import.meta.url);
    const { version, scripts = {} } = JSON.parse(readFileSync(file, "utf8")) as {
      version: string;
      scripts?: Readonly<Record<string, string>>;
    };
    expect(version).toBe(locked.get(folder)?.version);
    expect(locked.get(folder)?.hasInstallScript).toBeUndefined();
    const run = ["preinstall", "install", "postinstall"].filter((step) => step in scripts);
    expect(run).toEqual([]);
  });

  it("would be found beneath one that brings its own", () => {
    // webpack is a tool, but its tree shows that packages in packages are followed
    const found = pulledInBy({ webpack: "" });
    expect(found).toContain("node_modules/webpack/node_modules/es-module-lexer");
    expect(found).not.toContain("node_modules/es-module-lexer");
  });
});
