import js from "@eslint/js";
import importX from "eslint-plugin-import-x";
import jsdoc from "eslint-plugin-jsdoc";
import tseslint from "typescript-eslint";
import { independence, layers } from "./eslint/layers.js";
import { worksheetComment } from "./eslint/worksheetComment.js";

/** A list or object of literals that is spread only to make the formatter break lines differently. */
const noSpreadLiteral = {
  selector: "SpreadElement > :matches(ArrayExpression, ObjectExpression)",
  message: "Write the elements themselves instead of spreading a literal.",
};
/** The rule for packages does not see a dynamic import. */
const noDynamicImport = { selector: "ImportExpression", message: "Use a static import." };
const noClock = {
  selector:
    ":matches([type=/^(New|Call)Expression$/][callee.name='Date'][arguments.length=0], MemberExpression[object.name='Date'][property.name='now'])",
  message: "Nothing depends on today's date: the date is an argument.",
};
const noInstant = {
  selector: "NewExpression[callee.name='Date'][arguments.length>0]",
  message: "Use CalendarDate. Only src/calendar works with Date.",
};
const noSkippedTest = {
  selector:
    "MemberExpression[object.name=/^(it|test|describe|suite|bench)$/][property.name=/^(skip|only|todo|fails|skipIf|runIf)$/]",
  message: "Every test runs.",
};

const syntax = (files, ...selectors) => ({
  files,
  rules: { "no-restricted-syntax": ["error", noSpreadLiteral, ...selectors] },
});

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", "coverage/**"] },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: `${import.meta.dirname}/..` },
    },
    plugins: { "import-x": importX, jsdoc },
    rules: {
      "import-x/no-cycle": ["error", { ignoreExternal: true }],
      "import-x/no-duplicates": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/switch-exhaustiveness-check": [
        "error",
        { considerDefaultExhaustiveForUnions: true, requireDefaultForNonUnion: true },
      ],
      // A number in a text reads as a person writes it, and needs no conversion.
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-deprecated": [
        "error",
        {
          allow: [
            // The tag of this function speaks of a parameter that it no longer has.
            { from: "package", package: "office-addin-cli", name: "logErrorMessage" },
            // The package that succeeds this class brings seven packages for the same check.
            { from: "package", package: "fast-xml-parser", name: "XMLValidator" },
          ],
        },
      ],
      // The host takes its own class of errors, which does not extend Error.
      "@typescript-eslint/only-throw-error": [
        "error",
        { allow: [{ from: "package", package: "custom-functions-runtime", name: "Error" }] },
      ],
      // The objects that tests pass for those of a library are made to its interface, not by its classes.
      "@typescript-eslint/no-unsafe-class-instance-assignment": "off",
      eqeqeq: "error",
      "no-param-reassign": "error",
    },
    settings: {
      "import-x/resolver-next": [
        importX.createNodeResolver({ extensions: [".ts", ".tsx", ".js"] }),
      ],
      "import-x/extensions": [".ts", ".tsx"],
    },
  },
  {
    files: ["src/**/*.{ts,tsx}"],
    rules: {
      "jsdoc/require-jsdoc": [
        "error",
        {
          publicOnly: true,
          exemptOverloadedImplementations: true,
          require: { FunctionDeclaration: true, ClassDeclaration: true },
          contexts: [
            "TSDeclareFunction",
            "TSInterfaceDeclaration",
            "TSTypeAliasDeclaration",
            "VariableDeclaration",
          ],
        },
      ],
      "jsdoc/check-param-names": ["error", { checkDestructured: false }],
      "max-lines": ["error", { max: 200 }],
    },
  },
  {
    // A date is a number here, so a text takes no number as it is: written, shortDate and longDate write a date.
    files: ["src/{calendar,rules,calculation,functions,upkeep}/**"],
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: false }],
    },
  },
  syntax(["**/*.js"]),
  syntax(["src/**"], noClock, noInstant, noDynamicImport),
  syntax(["test/**/*.{ts,tsx}"], noClock, noInstant, noSkippedTest),
  // The workbook library takes dates as Date, and a second implementation must not use CalendarDate.
  syntax(["test/demo/**", "test/secondOpinion/**"], noClock, noSkippedTest),
  syntax(["src/calendar/**", "src/demo/season/sheetStyle.ts"], noClock, noDynamicImport),
  // A new client list starts with the date of the reader.
  syntax(["src/addin/addin.tsx"], noDynamicImport),
  ...layers,
  ...independence,
  ...worksheetComment,
  {
    files: ["**/*.js"],
    extends: [tseslint.configs.disableTypeChecked],
    languageOptions: { globals: { process: "readonly", URL: "readonly", console: "readonly" } },
  }
);
