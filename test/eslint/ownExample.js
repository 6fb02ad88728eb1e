const TAGGED = /@customfunction\s+([A-Z]+)/;

/** Lines of a comment without the stars before them. */
function linesOf(comment) {
  return comment.value.split("\n").map((line) => line.replace(/^\s*\*?\s?/, ""));
}

/**
 * A worksheet function's example calls that function, and its comment puts in square brackets exactly what may be left out. The rest of such
 * a comment is a matter of the jsdoc rules.
 */
export const ownExample = {
  meta: {
    type: "problem",
    schema: [],
    messages: {
      other: "The example of {{id}} does not begin with =EXT.{{id}}(.",
      bracket: "{{name}} may be left out: write [{{name}}] in its @param.",
      noBracket: "{{name}} may not be left out: write {{name}} without brackets in its @param.",
    },
  },
  create: (context) => ({
    "ExportNamedDeclaration > FunctionDeclaration"(node) {
      const comment = context.sourceCode.getCommentsBefore(node.parent).at(-1);
      const id = TAGGED.exec(comment?.value ?? "")?.[1];
      if (id === undefined) return;
      const lines = linesOf(comment);
      const example = lines.find((line) => line.startsWith("@example"));
      if (example !== undefined && !example.startsWith(`@example =EXT.${id}(`))
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
