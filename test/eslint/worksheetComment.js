import { bracketedOptions } from "./bracketedOptions.js";

const TAGGED = 'JsdocBlock:has(JsdocTag[tag="customfunction"])';
/** A function, or its declaration without a body above the function that answers. */
const DECLARED = ":matches(FunctionDeclaration, TSDeclareFunction)";
/** Functions with the comment of a worksheet function. */
const contexts = [{ context: DECLARED, comment: TAGGED }];

/**
 * What the comment above a worksheet function must say, because Excel, the guide and the help show it: its purpose, each argument and
 * the result. The type of its definition asks for the law, the rule tables and the examples.
 */
export const worksheetComment = [
  {
    files: ["src/functions/**/*.ts"],
    plugins: { worksheet: { rules: { "bracketed-options": bracketedOptions } } },
    rules: {
      "worksheet/bracketed-options": "error",
      "jsdoc/require-description": ["error", { contexts }],
      "jsdoc/require-param": ["error", { contexts }],
      "jsdoc/require-param-description": ["error", { contexts }],
      "jsdoc/require-returns": ["error", { contexts }],
      "jsdoc/require-returns-description": ["error", { contexts }],
      "jsdoc/match-description": [
        "error",
        {
          contexts,
          mainDescription: {
            match: String.raw`/^\n?\p{Lu}[^\n]*\.\s*$/u`,
            message: "Write the purpose of the function in one line of full sentences.",
          },
          tags: {
            param: {
              match: String.raw`/^\S[^\n]*[.\)]$/u`,
              message: "Describe an argument in one line that ends with a period.",
            },
            returns: {
              match: String.raw`/^\S[^\n]*\.$/u`,
              message: "Describe the result in one line that ends with a period.",
            },
          },
        },
      ],
    },
  },
];
