import { addressProblems, iconSizeProblems } from "./addresses";
import { baseElementProblems } from "./baseElements";
import { elementOrderProblems } from "./elementOrder";
import { manifestTree } from "./manifestTree";
import { resourceProblems } from "./resources";
import { sharedRuntimeProblems } from "./sharedRuntime";

/**
 * Checks an add-in manifest as far as possible without a host. The official validator is a web service, and the published schemas
 * miss the two most frequent mistakes, a reference to a missing resource and an address without https.
 *
 * @param xml - Text of the manifest.
 * @param served - Whether the address of the add-in serves a path such as "icons/icon-16.png".
 * @returns One sentence for each problem, which names the element. Empty for a good manifest.
 */
export function manifestProblems(xml: string, served: (path: string) => boolean): string[] {
  const app = manifestTree(xml);
  if (typeof app === "string") return [app];
  return [
    ...elementOrderProblems(app),
    ...baseElementProblems(app),
    ...resourceProblems(app),
    ...addressProblems(app, served),
    ...iconSizeProblems(app),
    ...sharedRuntimeProblems(app),
  ];
}
