import { ownExample } from "./ownExample.js";

const TAGGED = 'JsdocBlock:has(JsdocTag[tag="customfunction"])';
/** A function, or its declaration without a body above the function that answers. */
const DECLARED = ":matches(FunctionDeclaration, TSDeclareFunction)";
/** Functions with the comment of a worksheet function. */
const contexts = [{ context: DECLARED, comment: TAGGED }];

/** Such functions whose comment lacks a tag. */
const lacking = (tag, message, context = DECLARED) => ({
  context,
  comment: `${TAGGED}:not(:has(JsdocTag[tag="${tag}"]))`,
  message,
});

const NO_ERRORS = lacking(
  "throws",
  "Missing @throws: say what returns which error.",
  `${DECLARED}[params.length>0]`
);
const NO_LAW = lacking("see", "Missing @see: name the law that the result follows.");

/**
 * What the comment above a worksheet function must say, because Excel, the guide and the help show it: its purpose, each argument, the
 * result, its errors, the law, and examples with their results.
 */
export const worksheetComment = [
  {
    files: ["src/functions/**/*.ts"],
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
            throws: {
              match: "/^`#(VALUE!|N\\/A)` (?!\\s)(?:(?!`#)[^\\n])+\\.$/u",
              message:
                "Write one @throws for each error: `#VALUE!` or `#N/A`, what returns it, and a period.",
            },
            example: {
              match: String.raw`/^=EXT\.[A-Z]+\((?:(?!=EXT\.)[^\n])*\) (is|gives|shows|begins|ends|has|says):? (?:(?!=EXT\.)[^\n])+\s*$/u`,
              message: "Write one @example for each formula and its result: =EXT.NAME(...) is ...",
            },
          },
        },
      ],
    },
  },
  {
    // These functions return the rule tables themselves, which follow no single law.
    files: ["src/functions/rules/*.ts"],
    rules: { "jsdoc/no-restricted-syntax": ["error", { contexts: [NO_ERRORS] }] },
  },
];
