const TAGGED = /@customfunction\s+([A-Z]+)/;

/** Lines of a comment without the asterisks before them. */
function linesOf(comment) {
  return comment.value.split("\n").map((line) => line.replace(/^\s*\*?\s?/, ""));
}

/**
 * Requires that the comment of a worksheet function puts optional arguments, and no others, in square brackets. The rules of the jsdoc
 * plug-in check the rest of the comment.
 */
export const bracketedOptions = {
  meta: {
    type: "problem",
    schema: [],
    messages: {
      bracket: "{{name}} is optional: write [{{name}}] in its @param.",
      noBracket: "{{name}} is required: write {{name}} without brackets in its @param.",
    },
  },
  create: (context) => ({
    "ExportNamedDeclaration > :matches(FunctionDeclaration, TSDeclareFunction)"(node) {
      const comment = context.sourceCode.getCommentsBefore(node.parent).at(-1);
      if (!TAGGED.test(comment?.value ?? "")) return;
      const lines = linesOf(comment);
      for (const parameter of node.params) {
        const { name, optional = false } = parameter;
        const inBrackets = lines.some((line) => line.startsWith(`@param [${name}] `));
        if (inBrackets !== optional)
          context.report({
            node: parameter,
            messageId: optional ? "bracket" : "noBracket",
            data: { name },
          });
      }
    },
  }),
};
