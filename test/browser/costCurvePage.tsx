import { render } from "preact";
import { CostCurve } from "../../src/addin/costCurve/costCurve";
import { followTheme } from "../../src/addin/theme";
import { customFunctions } from "../../src/host/customFunctions";

/** A page with the curve of one client. */
Object.assign(globalThis, { CustomFunctions: customFunctions(() => undefined) });
const place = document.getElementById("curve");
if (place) {
  followTheme(undefined);
  const client = {
    taxYear: 2025,
    totalTax: 20_000,
    payments: 18_500,
    state: "OH",
    filerType: "",
    postponementBegins: "",
    postponementEnds: "",
    assumedRate: 0.07,
    asOf: "6/1/2026",
  };
  render(<CostCurve input={client} />, place);
}
