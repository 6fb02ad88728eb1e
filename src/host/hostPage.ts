/**
 * What runs inside the sealed page before the add-in's own bundle: the `CustomFunctions` object, a
 * console that only remembers, and one entry that takes and gives JSON text. It is kept as text so
 * that no object of this process, and through it no `process` or `require`, can leak into the page.
 * The text is one expression: the page's side of the stand-in.
 */
export const HOST_PAGE_SOURCE = `(function () {
  "use strict";
  const page = globalThis;
  const functions = new Map();
  const remarks = [];
  class CustomFunctionsError {
    constructor(code, message) {
      this.code = code;
      this.message = message;
    }
  }
  function associate(idOrMappings, functionObject) {
    const mappings =
      typeof idOrMappings === "string" ? { [idOrMappings]: functionObject } : idOrMappings;
    for (const id of Object.keys(mappings)) {
      if (typeof mappings[id] !== "function") throw new TypeError(id + " is not a function");
      functions.set(id.toUpperCase(), mappings[id]);
    }
  }
  page.CustomFunctions = {
    associate,
    Error: CustomFunctionsError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
      invalidName: "#NAME?",
      invalidReference: "#REF!",
    },
  };
  const remember = (level) => (...parts) => {
    remarks.push(level + ": " + parts.map(String).join(" "));
  };
  // A page of a browser has these already, and keeps them.
  if (typeof page.window === "undefined") {
    page.window = page;
    page.self = page;
    page.console = {};
    for (const level of ["log", "info", "debug", "warn", "error"]) {
      page.console[level] = remember(level);
    }
  }

  const MESSAGE_CODES = ["#VALUE!", "#N/A"];
  function errorCell(error) {
    const shown = MESSAGE_CODES.includes(error.code) && typeof error.message === "string";
    return shown ? { error: error.code, message: error.message } : { error: error.code };
  }
  function encodeObject(value, faults) {
    if (value instanceof CustomFunctionsError) return errorCell(value);
    if (value.type === "Error" && typeof value.basicValue === "string") {
      return { error: value.basicValue };
    }
    if (typeof value.type === "string" && "basicValue" in value) {
      const cell = encodeCell(value.basicValue, faults);
      return typeof value.numberFormat === "string"
        ? { ...cell, numberFormat: value.numberFormat }
        : cell;
    }
    if (value instanceof Date) {
      faults.push("a Date object in the result; the platform shows it as text");
      return { value: String(value) };
    }
    if (typeof value.then === "function") {
      faults.push("a promise in the result; every function here answers at once");
      return { error: "#VALUE!" };
    }
    faults.push("an object the platform does not know in the result");
    return { error: "#VALUE!" };
  }
  function encodeCell(value, faults) {
    switch (typeof value) {
      case "string":
      case "boolean":
        return { value };
      case "number":
        if (Number.isFinite(value)) return { value };
        faults.push(String(value) + " in the result");
        return { error: "#NUM!" };
      case "undefined":
      case "object":
        if (value === null || value === undefined) {
          faults.push(String(value) + " in the result; the platform shows it as 0");
          return { value: 0 };
        }
        return encodeObject(value, faults);
      default:
        faults.push("a " + typeof value + " in the result");
        return { error: "#VALUE!" };
    }
  }
  function encodeRows(value, faults) {
    if (!Array.isArray(value)) return [[encodeCell(value, faults)]];
    const width = Array.isArray(value[0]) ? value[0].length : 0;
    const rectangular = value.every((row) => Array.isArray(row) && row.length === width);
    if (width === 0 || !rectangular) {
      faults.push("a result that is not a rectangle of at least one cell");
      return [[{ error: "#VALUE!" }]];
    }
    return value.map((row) => row.map((cell) => encodeCell(cell, faults)));
  }
  function call(id, argumentsText, wantsMatrix) {
    const faults = [];
    let rows;
    try {
      const values = JSON.parse(argumentsText);
      const value = functions.get(id.toUpperCase())(...values, { functionName: id });
      if (value instanceof CustomFunctionsError) {
        rows = [[errorCell(value)]];
      } else {
        if (Array.isArray(value) !== wantsMatrix) {
          faults.push(wantsMatrix ? "a single value where rows are declared" : "rows where a single value is declared");
        }
        rows = encodeRows(value, faults);
      }
    } catch (thrown) {
      if (thrown instanceof CustomFunctionsError) {
        rows = [[errorCell(thrown)]];
      } else {
        const text = thrown && thrown.message ? thrown.message : thrown;
        faults.push("an exception: " + String(text));
        rows = [[{ error: "#VALUE!" }]];
      }
    }
    return JSON.stringify({ rows, faults });
  }
  return {
    call,
    associated: () => JSON.stringify([...functions.keys()]),
    remarks: () => JSON.stringify(remarks),
    offerFormattedNumbers: () => {
      page.Office = { context: { requirements: { isSetSupported: () => true } } };
    },
  };
})()`;
