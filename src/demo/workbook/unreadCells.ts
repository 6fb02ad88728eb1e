import type { Cell, Workbook } from "@cj-tech-master/excelts";

const TEXT = 3;

function isUnread(cell: Cell): boolean {
  const { value } = cell;
  if (Number(cell.type) === TEXT) return typeof value !== "string";
  return Number.isNaN(value) || (value instanceof Date && Number.isNaN(value.getTime()));
}

/** The first cell whose content the workbook library could not read: a missing text, or a number that is not valid. */
export function firstUnreadCell(workbook: Workbook): string | undefined {
  let found: string | undefined;
  for (const worksheet of workbook.worksheets) {
    worksheet.eachRow((row) => {
      row.eachCell((cell) => {
        if (isUnread(cell)) found ??= `${worksheet.name}!${cell.address}`;
      });
    });
  }
  return found;
}
