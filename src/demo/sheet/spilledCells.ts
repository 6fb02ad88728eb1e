import type { Worksheet } from "@cj-tech-master/excelts";
import { cellAddress, readAddress } from "../../host/cellAddress";

interface ArrayModel {
  readonly shareType?: string;
  readonly ref?: string;
}

/**
 * The cells of a sheet of a file that a formula in another cell filled. They contain its earlier result, not content of their own.
 *
 * @param sheet - The sheet.
 * @returns The addresses of the cells.
 */
export function spilledCells(sheet: Worksheet): ReadonlySet<string> {
  const filled = new Set<string>();
  sheet.eachRow((row) => {
    row.eachCell((cell) => {
      const { shareType, ref = "" } = cell.model as ArrayModel;
      const block = shareType === "array" ? readAddress(ref) : undefined;
      if (block === undefined) return;
      for (let down = block.top; down <= block.bottom; down += 1) {
        for (let across = block.left; across <= block.right; across += 1) {
          const address = cellAddress(down, across);
          if (address !== cell.address) filled.add(address);
        }
      }
    });
  });
  return filled;
}
