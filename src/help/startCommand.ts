/** The options of `npm start`. A test compares them with the command itself. */
export const START_OPTIONS = [
  { term: "`-o`, `--output OUT.xlsx`", text: "Save under this name." },
  { term: "`--force`", text: "Replace an existing file." },
  {
    term: "`--blanks VALUE`",
    text: "Pass blank cells as `zero`, `null` (default) or `text`. Builds of Excel differ.",
  },
  {
    term: "`--requests CLIENT`",
    text: "Add a request sheet and a letter for a client of the sample, or for all. Each prints on one page.",
  },
  { term: "`--width COLUMNS`", text: "Print lines of at most this width. The default is 100." },
  { term: "`--all`", text: "List all errors." },
  { term: "`-h`, `--help`", text: "Show these options." },
] as const;

/** The largest workbook that `npm start` accepts. A test compares the size with that of the command. */
export const START_LIMITS =
  "A workbook can have at most 500,000 cells, and at most 100 MB when unpacked. If it is larger or damaged, the command says so in one sentence and saves nothing.";
