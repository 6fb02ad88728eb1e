import { addressProblems, iconSizeProblems } from "./addresses";
import { baseElementProblems } from "./baseElements";
import { elementOrderProblems } from "./elementOrder";
import { manifestTree } from "./manifestTree";
import { resourceProblems } from "./resources";
import { sharedRuntimeProblems } from "./sharedRuntime";

/**
 * What is wrong with an add-in manifest, as far as can be told without a host. The official validator is a web service, and the
 * published schemas miss the two commonest slips, a reference to nothing and an address without https.
 *
 * @param xml - Text of the manifest.
 * @param served - Whether the add-in's own address serves a path such as "icons/icon-16.png".
 * @returns One sentence a problem, naming the element; empty when nothing is wrong.
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
