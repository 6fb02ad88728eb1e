import { customFunctions } from "../host/customFunctions";

// Without Excel's own script there is no `CustomFunctions` to associate the functions with; only the guide calls them.
if (typeof Office === "undefined") {
  Object.assign(globalThis, { CustomFunctions: customFunctions(() => undefined) });
}
