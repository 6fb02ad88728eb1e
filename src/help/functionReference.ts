import { format } from "prettier";
import { TASKS } from "../functions/catalog";
import type { KindHelp } from "../functions/arguments/argumentKind";
import { fillsSeveralCells, type AnsweredExample } from "./answeredExample";
import { kindsOf, type FunctionHelp, type Help } from "./helpModel";
import { shownCell } from "./shownAnswer";
import { signature } from "./signature";
import { topics, type Block } from "./topics";

/** Longest line of the file, unless a single word is longer. */
const LINE_WIDTH = 120;

/** Code with its spaces, or a word; with the number after it, since a line that begins with a number would begin a list. */
const WORD = /(?:`[^`]*`|[^\s`])+(?: \d+[.)](?= |$))?/g;

/** Breaks a text at its spaces. Lines after the first are indented, so that they stay in the same list item. */
function wrapped(text: string, indent = ""): string {
  const lines: string[] = [];
  let line = "";
  for (const [word] of text.matchAll(WORD)) {
    if (line !== "" && line.length + 1 + word.length > LINE_WIDTH) {
      lines.push(line);
      line = indent + word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line].join("\n");
}

const bullet = (text: string): string => wrapped(`- ${text}`, "  ");
const code = (text: string): string => `\`${text}\``;

function exampleLine(example: AnsweredExample): string {
  const { formula, answer, remark, cells } = example;
  const shown = fillsSeveralCells(example) ? answer : shownCell(cells[0]?.[0] ?? {}).text;
  const verb = fillsSeveralCells(example) ? "returns a table with" : "returns";
  const written = shown.length > LINE_WIDTH ? `"${shown}"` : code(shown);
  return bullet(`${code(formula)} ${verb} ${written}${remark === undefined ? "" : ` (${remark})`}`);
}

/** A signature in lines, broken after its commas. */
function signatureLines(text: string): string[] {
  return wrapped(text, "  ").split("\n");
}

function functionEntry(help: FunctionHelp): string {
  const { name, purpose, arguments: given, examples, note, law } = help;
  const argumentLines = given.map((argument) => {
    const shown = argument.optional ? `[${argument.name}]` : argument.name;
    return bullet(`${code(shown)} (${argument.kind.title}): ${argument.description}`);
  });
  return [
    `### ${name}`,
    wrapped(purpose),
    ["```text", ...signatureLines(signature(help)), "```"].join("\n"),
    argumentLines.join("\n"),
    examples.length > 1 ? "Examples:" : "Example:",
    examples.map(exampleLine).join("\n"),
    note === undefined ? "" : wrapped(note),
    law.length === 0 ? "" : wrapped(`Law: ${law.join("; ")}.`),
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

function kindEntry({ title, description, accepted, notAccepted }: KindHelp): string {
  const values = (label: string, list: readonly string[]): string =>
    list.length === 0 ? "" : ` ${label}: ${list.map(code).join(", ")}.`;
  return bullet(
    `**${title}**: ${description}${values("Accepted", accepted)}${values("Not accepted", notAccepted)}`
  );
}

function blockText(block: Block): string {
  if (typeof block === "string") return wrapped(block);
  if ("items" in block) return block.items.map(bullet).join("\n");
  const terms = block.terms.map(({ term, text }) => bullet(`**${term}**: ${text}`)).join("\n");
  return block.title === undefined ? terms : `### ${block.title}\n\n${terms}`;
}

/** The anchor that GitHub gives a heading. */
const anchor = (heading: string): string => heading.toLowerCase().replaceAll(" ", "-");

/**
 * The reference of all functions as Markdown, for readers of the code.
 *
 * @param help - The whole help.
 * @returns The text of src/help/functions.md.
 */
export function functionReference(help: Help): Promise<string> {
  const subjects = topics(help);
  const taskSections = TASKS.map(({ title }) =>
    [`## ${title}`, ...help.functions.filter(({ task }) => task === title).map(functionEntry)].join(
      "\n\n"
    )
  );
  const kinds = kindsOf(help.functions.flatMap(({ arguments: given }) => given));
  const headings = [
    ...TASKS.map(({ title }) => title),
    "How to enter arguments",
    ...subjects.map(({ title }) => title),
  ];
  const text = [
    "# Functions",
    wrapped(
      `Every function of Extension Season ${help.version}, by task. \`npm run reference\` writes this file. Arguments in square brackets are optional. Every result is an estimate, not tax advice.`
    ),
    headings.map((heading) => `- [${heading}](#${anchor(heading)})`).join("\n"),
    ...taskSections,
    "## How to enter arguments",
    kinds.map(kindEntry).join("\n"),
    ...subjects.map(({ title, blocks }) => [`## ${title}`, ...blocks.map(blockText)].join("\n\n")),
  ].join("\n\n");
  return format(text, { parser: "markdown" });
}
