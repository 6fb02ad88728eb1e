import { highestSets, type HostFacts } from "./tools/diagnosis";

/** Microsoft's list of the functions that were registered. It is not documented, so it can be missing. */
interface Registered {
  readonly _association?: { readonly mappings?: object };
}

interface Loading {
  readonly context?: Partial<Office.Context>;
}

/** What is known of Excel now. */
export function hostFacts(): HostFacts {
  const scripts = [...document.scripts]
    .map((script) => script.getAttribute("src") ?? "")
    .filter((address) => address.startsWith("https:"));
  const { mappings } = (CustomFunctions as Registered)._association ?? {};
  const functions = mappings && Object.keys(mappings).length;
  const isOfficeThere = typeof Office !== "undefined";
  // Before the host has answered, the context can be missing or empty.
  const diagnostics = isOfficeThere ? (Office as Loading).context?.diagnostics : undefined;
  const requirements = isOfficeThere ? (Office as Loading).context?.requirements : undefined;
  return {
    scripts,
    functions,
    host: diagnostics?.host.toString(),
    platform: diagnostics?.platform.toString(),
    build: diagnostics?.version,
    sets: requirements
      ? highestSets((name, minimum) => requirements.isSetSupported(name, minimum))
      : [],
  };
}
