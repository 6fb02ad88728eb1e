import { calculateFormulas } from "@cj-tech-master/excelts/formula";
import { calculationView } from "./calculationView";
import { NativeCorrections } from "./nativeCorrections";
import { SheetStore, StoredCell, type StoredFormula } from "./sheetStore";
import { isErrorCell } from "../../host/cellValues";

/**
 * The function names that the calculating library does not know. It publishes no list, so each is called without arguments, which
 * returns #NAME? only when the name is unknown.
 */
export function unknownFunctions(names: Iterable<string>): Set<string> {
  const sheet = new SheetStore(1, "Names", []);
  const asked = [...names].map((name, index) => {
    const formula: StoredFormula = {
      site: index,
      sheet: sheet.name,
      row: index + 1,
      column: 1,
      text: `${name}()`,
      kind: "ordinary",
      reference: undefined,
      hasValue: false,
      calculationText: `${name}()`,
      answers: 0,
      active: true,
      height: 1,
      width: 1,
    };
    return {
      name,
      cell: sheet.put(new StoredCell(index + 1, 1, null, formula)),
    };
  });
  calculateFormulas(
    calculationView({
      sheets: [sheet],
      definedNames: { getAllEntries: () => [], getAllNames: () => [] },
      userFunctions: new NativeCorrections().functions(),
      calcProperties: {},
    })
  );
  const unknown = asked.filter(
    ({ cell }) => isErrorCell(cell.content) && cell.content.error === "#NAME?"
  );
  return new Set(unknown.map(({ name }) => name));
}
