import { ownExample } from "./ownExample.js";

const TAGGED = 'JsdocBlock:has(JsdocTag[tag="customfunction"])';
/** Functions with the comment of a worksheet function. */
const contexts = [{ context: "FunctionDeclaration", comment: TAGGED }];

/** Such functions whose comment lacks a tag. */
const lacking = (tag, message, context = "FunctionDeclaration") => ({
  context,
  comment: `${TAGGED}:not(:has(JsdocTag[tag="${tag}"]))`,
  message,
});

const NO_ERRORS = lacking(
  "throws",
  "Missing @throws: when which error is the answer.",
  "FunctionDeclaration[params.length>0]"
);
const NO_LAW = lacking("see", "Missing @see: the law the answer rests on.");

/**
 * What the comment above a worksheet function must say, because Excel, the guide and the help are made of it: what it answers, each
 * argument, the answer, its errors, the law, an example with its answer.
 */
export const worksheetComment = [
  {
    files: ["src/functions/*.ts"],
    plugins: { worksheet: { rules: { "own-example": ownExample } } },
    rules: {
      "worksheet/own-example": "error",
      "jsdoc/require-description": ["error", { contexts }],
      "jsdoc/require-param": ["error", { contexts }],
      "jsdoc/require-param-description": ["error", { contexts }],
      "jsdoc/require-returns": ["error", { contexts }],
      "jsdoc/require-returns-description": ["error", { contexts }],
      "jsdoc/require-example": ["error", { contexts }],
      "jsdoc/no-restricted-syntax": ["error", { contexts: [NO_ERRORS, NO_LAW] }],
      "jsdoc/match-description": [
        "error",
        {
          contexts,
          mainDescription: {
            match: String.raw`/^\n?\p{Lu}[^\n]*\.\s*$/u`,
            message: "What the function answers is said in one line of whole sentences.",
          },
          tags: {
            param: {
              match: String.raw`/^\S[^\n]*[.\)]$/u`,
              message: "An argument is described in one line that ends with a full stop.",
            },
            returns: {
              match: String.raw`/^\S[^\n]*\.$/u`,
              message: "The answer is described in one line that ends with a full stop.",
            },
            throws: {
              match: "/^`#(VALUE!|N\\/A)` \\S.*\\.$/u",
              message: "The errors begin with `#VALUE!` or `#N/A` and end with a full stop.",
            },
            example: {
              match: String.raw`/^=EXT\.[A-Z]+\(.*\) (is|gives|shows|begins|ends|has|says):? \S/u`,
              message: "An example is a formula and what it answers: =EXT.NAME(...) is ...",
            },
          },
        },
      ],
    },
  },
  {
    // These answer about the tables of rules themselves, behind which there is no one law.
    files: ["src/functions/rulesInForce.ts"],
    rules: { "jsdoc/no-restricted-syntax": ["error", { contexts: [NO_ERRORS] }] },
  },
];
