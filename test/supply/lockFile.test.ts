import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { asked, locked, lockedRoot, pulledInBy, type Locked } from "./lockFile";

const REGISTRY = "https://registry.npmjs.org/";
const EXACT = /^\d+\.\d+\.\d+(-[a-z]+\.\d+)?$/;
/** An SHA-512 checksum as npm writes it. */
const SUM = /^sha512-[A-Za-z0-9+/]{86}==$/;
const LICENSES = ["MIT", "ISC", "0BSD", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0"];
/** Tools with an install script. None of them is in the build. */
const RUN_WHEN_INSTALLED = ["core-js-pure", "esbuild", "protobufjs"];

const foldersWhere = (matches: (one: Locked) => boolean): string[] =>
  [...locked].filter(([, one]) => matches(one)).map(([folder]) => folder);

describe("every package in the lock file", () => {
  it("has a checksum", () => {
    expect(locked.size).toBeGreaterThan(500);
    expect(foldersWhere(({ integrity }) => !SUM.test(integrity ?? ""))).toEqual([]);
  });

  it("comes from the npm registry", () => {
    const isFromElsewhere = ({ resolved = REGISTRY, link = false }: Locked) =>
      link || !resolved.startsWith(REGISTRY);
    expect(foldersWhere(isFromElsewhere)).toEqual([]);
  });

  it("requires other packages by version, not by address", () => {
    const ranges = ({ dependencies, optionalDependencies, peerDependencies }: Locked) =>
      Object.values({ ...peerDependencies, ...optionalDependencies, ...dependencies });
    const isAddress = (range: string) => /[:/]/.test(range.replace(/^npm:(@[^/]+\/)?/, ""));
    const addresses = ["github:a/b", "a/b", "git+ssh://a", "file:../a", "https://a/b.tgz"];
    expect(addresses.filter(isAddress)).toEqual(addresses);
    expect(foldersWhere((one) => ranges(one).some(isAddress))).toEqual([]);
  });

  it("has no install script, except known tools", () => {
    expect(foldersWhere(({ hasInstallScript = false }) => hasInstallScript)).toEqual(
      RUN_WHEN_INSTALLED.map((name) => `node_modules/${name}`)
    );
  });
});

describe("package.json", () => {
  it("requires exact versions, and the lock file has these versions", () => {
    const all = { ...asked.dependencies, ...asked.devDependencies };
    expect(Object.entries(all).filter(([, version]) => !EXACT.test(version))).toEqual([]);
    expect(lockedRoot?.dependencies).toEqual(asked.dependencies);
    expect(lockedRoot?.devDependencies).toEqual(asked.devDependencies);
    for (const [name, version] of Object.entries(all))
      expect(locked.get(`node_modules/${name}`)?.version, name).toBe(version);
  });
});

describe("the dependencies of the add-in, and what they require", () => {
  const folders = [...pulledInBy(asked.dependencies)];

  it("are the packages that the lock file does not mark for development", () => {
    // What a dependency works with if it is there is not part of the add-in.
    const peers = folders.flatMap((folder) =>
      Object.keys(locked.get(folder)?.peerDependencies ?? {}).map((name) => `node_modules/${name}`)
    );
    const marked = foldersWhere(({ dev = false }) => !dev).filter(
      (folder) => folders.includes(folder) || !peers.includes(folder)
    );
    expect(folders.toSorted()).toEqual(marked.toSorted());
  });

  it.each(folders)("have a license that allows redistribution: %s", (folder) => {
    expect(LICENSES).toContain(locked.get(folder)?.license);
  });

  it.each(folders)(
    "are installed in the locked version, without an install script: %s",
    (folder) => {
      const file = new URL(`../../${folder}/package.json`, import.meta.url);
      const { version, scripts = {} } = JSON.parse(readFileSync(file, "utf8")) as {
        version: string;
        scripts?: Readonly<Record<string, string>>;
      };
      expect(version).toBe(locked.get(folder)?.version);
      expect(locked.get(folder)?.hasInstallScript).toBeUndefined();
      const run = ["preinstall", "install", "postinstall"].filter((step) => step in scripts);
      expect(run).toEqual([]);
    }
  );

  it("are found inside a package that has its own copy", () => {
    // webpack is no dependency of the add-in, but it contains such a copy.
    const found = pulledInBy({ webpack: "" });
    expect(found).toContain("node_modules/webpack/node_modules/es-module-lexer");
    expect(found).not.toContain("node_modules/es-module-lexer");
  });
});
