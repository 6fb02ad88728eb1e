import path from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Any package, and any module of Node. */
const ANY = undefined;
const LAW = ["calendar", "money", "rules", "calculation"];

/**
 * The folders of src: which others each may import, which packages, and what it may use outside src. Imports go downward only, and
 * nothing imports the demo.
 */
const LAYERS = {
  calendar: { folders: [], packages: ["@date-fns/utc", "date-fns"] },
  money: { folders: [], packages: ["decimal.js"] },
  // The schemas of src/rules/schema may also import zod, because only types come from them.
  rules: { folders: ["calendar", "money"], packages: [], outside: ["rules", "package.json"] },
  calculation: { folders: ["calendar", "money", "rules"], packages: [] },
  functions: { folders: LAW, packages: ["fastest-levenshtein"] },
  addin: {
    folders: ["calendar", "rules", "calculation", "functions"],
    packages: ["preact", "@fluentui/tokens", "@fluentui/web-components"],
    outside: [
      "src/host/cellAddress.ts",
      "src/host/customFunctions.ts",
      "src/host/formulaPieces.ts",
    ],
  },
  // The rest runs beside the add-in, so its packages are not in the bundle.
  host: { folders: [], packages: ANY },
  help: { folders: ["rules", "functions", "host", "addin"], packages: ANY },
  demo: { folders: [...LAW, "functions", "host", "addin"], packages: ANY },
  upkeep: { folders: ["calendar", "rules", "functions"], packages: ANY },
};

/** What the calculation may import from src/rules besides types: the look-ups, not the tables, which are passed in. */
const LOOK_UPS = ["datedTable", "listTable", "notInTableError"];

/** Names that would make a result depend on a host, a page, a clock or chance. */
const SURROUNDINGS = [
  "Office",
  "Excel",
  "CustomFunctions",
  "window",
  "document",
  "navigator",
  "localStorage",
  "fetch",
  "process",
  "globalThis",
  "Date",
  "performance",
  "setTimeout",
  "crypto",
  "console",
];

const DATE = { name: "Date", message: "Use CalendarDate. Only src/calendar works with Date." };
const EXCEL = {
  name: "Excel",
  message: "Only the files of src/addin/excel use the workbook.",
};
const ERRORS = {
  name: "CustomFunctions",
  message: "Only hostError.ts in src/functions makes errors of the host.",
};

/** Allows imports from some files and folders of the project, and from packages. */
const onlyFrom = (target, allowed, message) => [
  "error",
  {
    basePath: root,
    zones: [{ target, from: ".", except: ["node_modules", ...allowed], message }],
  },
];

/** Forbids every package but those named. */
const onlyPackages = (packages) => ({
  regex: `^(?!\\.{1,2}/|(?:${packages.join("|")})(?:/|$))`,
  message: `Packages allowed here: ${packages.join(", ") || "none"}.`,
});

const onlyLookUps = {
  regex: `/rules/(?!(?:${LOOK_UPS.join("|")})$)`,
  allowTypeImports: true,
  message: "The calculation takes its rules as arguments. It imports look-ups and types only.",
};

const noSchemas = {
  regex: "/schema/",
  allowTypeImports: true,
  message: "The schemas check the tables in the tests. The rest of src imports their types only.",
};

function importsOf(layer) {
  const { folders, packages, outside = [] } = LAYERS[layer];
  const allowed = [layer, ...folders].map((folder) => path.posix.join("src", folder));
  const message = `src/${layer} may import only ${[...allowed, ...outside].join(", ")}.`;
  const patterns = [
    noSchemas,
    ...(packages === ANY ? [] : [onlyPackages(packages)]),
    ...(layer === "calculation" ? [onlyLookUps] : []),
  ];
  return {
    files: [`src/${layer}/**`],
    rules: {
      "import-x/no-restricted-paths": onlyFrom(`src/${layer}`, [...allowed, ...outside], message),
      "@typescript-eslint/no-restricted-imports": ["error", { patterns }],
    },
  };
}

/** Forbids global names in some files. */
const without = (files, ...names) => ({
  files,
  rules: { "no-restricted-globals": ["error", { globals: names, checkGlobalObject: true }] },
});

/** The rules that keep each layer of src to its imports and to the global names it may use. */
export const layers = [
  ...Object.keys(LAYERS).map(importsOf),
  {
    files: ["src/rules/schema/**"],
    rules: {
      "@typescript-eslint/no-restricted-imports": ["error", { patterns: [onlyPackages(["zod"])] }],
    },
  },
  without(["src/**"], DATE, ERRORS, EXCEL),
  // A new client list starts with the date of the reader.
  without(["src/calendar/**", "src/addin/addin.tsx"], ERRORS, EXCEL),
  without(["src/functions/cells/hostError.ts"], DATE, EXCEL),
  without(["src/addin/excel/**"], DATE, ERRORS),
  // The diagnosis counts the functions that the host knows.
  without(["src/addin/hostFacts.ts"], DATE, EXCEL),
  // The script without a host defines an empty CustomFunctions, and the stand-in host a working one.
  without(["src/addin/outside.ts", "src/host/**"], DATE, EXCEL),
  // The page of the host recognizes a Date in a result, which is a fault of the function.
  without(["src/host/hostPage.ts"], EXCEL),
  // The workbook library reads and writes dates as Date.
  without(["src/demo/**"], ERRORS, EXCEL),
  without(["src/money/**", "src/calculation/**"], ...SURROUNDINGS),
  {
    files: ["src/money/**", "src/calculation/**"],
    rules: { "no-restricted-properties": ["error", { object: "Math", property: "random" }] },
  },
];

/**
 * A second implementation that shares code with the first proves nothing. Its files use nothing of src, rules or the other tests, and
 * no package that src uses. They get their figures from the law, copied by hand. Only answerOfCall.ts calls the function under test.
 */
export const independence = [
  {
    files: ["test/secondOpinion/*.ts"],
    ignores: ["**/*.test.ts", "**/answerOfCall.ts"],
    rules: {
      "import-x/no-restricted-paths": onlyFrom(
        "test/secondOpinion",
        ["test/secondOpinion"],
        "A second implementation uses nothing of what it checks."
      ),
      "@typescript-eslint/no-restricted-imports": [
        "error",
        {
          patterns: [
            onlyPackages(["@cj-tech-master/excelts", "@18f/us-federal-holidays", "fast-check"]),
            { regex: "/answerOfCall$", message: "Only tests call the function under test." },
          ],
        },
      ],
      "no-restricted-globals": ["error", "require", "process", "fetch"],
    },
  },
];
