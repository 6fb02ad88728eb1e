const NOT_SUPPORTED =
  "This version of Excel does not support this tool. Update Excel, then try again.";
const TOO_LARGE =
  "The workbook is too large for Excel to do this at once. Split the client list into smaller workbooks, then try again.";

/** What the codes of Excel's errors mean for whoever pressed a button. */
const SENTENCES: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "A cell is being edited. Press Enter or Esc, then try again.",
  AccessDenied:
    "The workbook or the sheet is protected or read-only. Remove the protection or use a copy, then try again.",
  InvalidSelection:
    "No cell is selected. Select a cell instead of a chart or a picture, then try again.",
  ItemNotFound: "A sheet or a table was removed meanwhile. Try again.",
  ApiNotFound: NOT_SUPPORTED,
  ApiNotAvailable: NOT_SUPPORTED,
  NotImplemented: NOT_SUPPORTED,
  UnsupportedOperation: NOT_SUPPORTED,
  RequestPayloadSizeLimitExceeded: TOO_LARGE,
  ResponsePayloadSizeLimitExceeded: TOO_LARGE,
};

/**
 * Why Excel did not do what a button asked for.
 *
 * @param thrown - What a request to the workbook threw.
 * @returns A sentence for each error of Excel; `undefined` for any other exception, which is a bug.
 * @see https://learn.microsoft.com/office/dev/add-ins/testing/application-specific-api-error-handling
 */
export function excelErrorSentence(thrown: unknown): string | undefined {
  if (typeof thrown !== "object" || thrown === null || !("code" in thrown)) return undefined;
  const { code } = thrown;
  if (typeof code !== "string") return undefined;
  return (
    SENTENCES[code] ??
    `Excel could not make the change (${code}). Try again. If it fails again, save the workbook and restart Excel.`
  );
}
