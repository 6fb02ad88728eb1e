/** One parameter as the generated functions.json describes it. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly dimensionality?: "scalar" | "matrix";
  readonly optional?: boolean;
  readonly repeating?: boolean;
  readonly type?: string;
}

/** One worksheet function as the generated functions.json describes it. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: {
    readonly dimensionality?: "scalar" | "matrix";
    readonly type?: string;
  };
  readonly options?: Readonly<Record<string, unknown>>;
}

/** The whole of functions.json. */
export interface AddInMetadata {
  readonly functions: readonly FunctionMetadata[];
  readonly allowErrorForDataTypeAny: boolean;
}

const UNSUPPORTED_OPTIONS = [
  "stream",
  "cancelable",
  "requiresAddress",
  "requiresParameterAddresses",
];

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function readFunction(entry: unknown): FunctionMetadata {
  if (!isRecord(entry) || typeof entry["id"] !== "string" || typeof entry["name"] !== "string") {
    throw new Error("functions.json has a function without an id or a name.");
  }
  if (!Array.isArray(entry["parameters"]) || !isRecord(entry["result"])) {
    throw new Error(`functions.json has no parameters or no result for ${entry["id"]}.`);
  }
  const options = isRecord(entry["options"]) ? entry["options"] : {};
  for (const option of UNSUPPORTED_OPTIONS) {
    if (options[option] === true) {
      throw new Error(`${entry["id"]} needs "${option}", which this stand-in does not offer.`);
    }
  }
  return entry as unknown as FunctionMetadata;
}

/** Reads the text of functions.json and rejects functions that the stand-in cannot call as Excel does. */
export function readAddInMetadata(text: string): AddInMetadata {
  const parsed: unknown = JSON.parse(text);
  if (!isRecord(parsed) || !Array.isArray(parsed["functions"])) {
    throw new Error("functions.json has no list of functions.");
  }
  return {
    functions: parsed["functions"].map(readFunction),
    allowErrorForDataTypeAny: parsed["allowErrorForDataTypeAny"] === true,
  };
}
