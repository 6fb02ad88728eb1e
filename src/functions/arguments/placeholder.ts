import type { CellValue } from "../cells/cellValue";
import { plainText } from "./argumentKind";

const LONGEST = 20;
const PLACEHOLDER = /^(n\.?\/?a\.?|t\.?b\.?[ad]\.?|to be determined|unknown|pending|[-–—?]+)$/;

/** Whether a text stands for something that is not known yet, such as `n/a`, `TBD`, `-` or `?`. No argument takes it as a value. */
export function isPlaceholder(value: CellValue): value is string {
  return typeof value === "string" && value.length <= LONGEST && PLACEHOLDER.test(plainText(value));
}
