import js from "@eslint/js";
import importX from "eslint-plugin-import-x";
import jsdoc from "eslint-plugin-jsdoc";
import tseslint from "typescript-eslint";
import { worksheetComment } from "./eslint/worksheetComment.js";

const noInstants = {
  selector: "NewExpression[callee.name='Date']",
  message: "A day is a CalendarDate: only src/calendar makes a Date.",
};
const noClock = {
  selector: "MemberExpression[object.name='Date'][property.name='now']",
  message: "No clock: the day is an argument.",
};

export default tseslint.config(
  { ignores: ["dist/**", "node_modules/**", "coverage/**"] },
  js.configs.recommended,
  ...tseslint.configs.strict,
  {
    plugins: { "import-x": importX, jsdoc },
    rules: {
      "import-x/no-cycle": "error",
      "import-x/no-duplicates": "error",
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/switch-exhaustiveness-check": "off",
      "no-restricted-syntax": ["error", noInstants, noClock],
      eqeqeq: "error",
      "no-param-reassign": "error",
    },
    settings: { "import-x/resolver-next": [], "import-x/extensions": [".ts"] },
  },
  {
    files: ["src/**/*.ts"],
    rules: {
      "jsdoc/require-jsdoc": [
        "error",
        {
          publicOnly: true,
          require: { FunctionDeclaration: true, ClassDeclaration: true },
          contexts: ["TSInterfaceDeclaration", "TSTypeAliasDeclaration", "VariableDeclaration"],
        },
      ],
      "jsdoc/check-param-names": "error",
      "max-lines": ["error", { max: 200 }],
    },
  },
  ...worksheetComment,
  {
    // src/calendar makes the days; the workbook library wants a Date written and gives one back; a second opinion must not borrow ours.
    files: [
      "src/calendar/**/*.ts",
      "src/addin/addin.ts",
      "src/demo/season/sheetStyle.ts",
      "test/demo/**/*.ts",
      "test/secondOpinion/**/*.ts",
    ],
    rules: { "no-restricted-syntax": "off" },
  },
  {
    files: ["**/*.js"],
    languageOptions: { globals: { process: "readonly", URL: "readonly", console: "readonly" } },
  }
);
