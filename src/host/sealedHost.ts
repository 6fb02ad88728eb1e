import vm from "node:vm";
import { hostPageScript } from "./hostPageScript";
import { type HostPage, StandInHost, type StandInHostOptions } from "./standInHost";

/** What a stand-in host in this process needs. */
export interface SealedHostOptions extends Omit<StandInHostOptions, "page"> {
  /** Text of the add-in's script. */
  readonly bundle: string;
  /** Whether this build of Excel takes numbers that have a format of their own; newer builds do. */
  readonly formattedNumbers?: boolean;
}

/** A stand-in host whose add-in runs in a context of its own, which has neither a page nor Node. */
export function sealedHost(options: SealedHostOptions): StandInHost {
  const { bundle, formattedNumbers, ...others } = options;
  const context = vm.createContext(Object.create(null) as object);
  vm.runInContext(hostPageScript(), context, { filename: "hostPage.js" });
  const page = vm.runInContext("standInPage", context) as HostPage;
  if (formattedNumbers !== false) page.offerFormattedNumbers();
  vm.runInContext(bundle, context, { filename: "functions.js" });
  return new StandInHost({ ...others, page });
}
