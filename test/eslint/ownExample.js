const TAGGED = /@customfunction\s+([A-Z]+)/;

/** Lines of a comment without the asterisks before them. */
function linesOf(comment) {
  return comment.value.split("\n").map((line) => line.replace(/^\s*\*?\s?/, ""));
}

/**
 * Requires that every example of a worksheet function calls that function, and that its comment puts optional arguments, and no others,
 * in square brackets. The rules of the jsdoc plug-in check the rest of the comment.
 */
export const ownExample = {
  meta: {
    type: "problem",
    schema: [],
    messages: {
      other: "An example of {{id}} does not begin with =EXT.{{id}}(.",
      bracket: "{{name}} is optional: write [{{name}}] in its @param.",
      noBracket: "{{name}} is required: write {{name}} without brackets in its @param.",
    },
  },
  create: (context) => ({
    "ExportNamedDeclaration > :matches(FunctionDeclaration, TSDeclareFunction)"(node) {
      const comment = context.sourceCode.getCommentsBefore(node.parent).at(-1);
      const id = TAGGED.exec(comment?.value ?? "")?.[1];
      if (id === undefined) return;
      const lines = linesOf(comment);
      const examples = lines.filter((line) => line.startsWith("@example"));
      if (examples.some((line) => !line.startsWith(`@example =EXT.${id}(`)))
        context.report({ node, messageId: "other", data: { id } });
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
