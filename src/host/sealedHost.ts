import vm from "node:vm";
import { HOST_PAGE_SOURCE } from "./hostPage";
import { type HostPage, StandInHost, type StandInHostOptions } from "./standInHost";

/** What a stand-in host in this process needs. */
export interface SealedHostOptions extends Omit<StandInHostOptions, "page"> {
  readonly bundle: string;
  /** Whether this build takes numbers with a format of their own; newer ones do. */
  readonly formattedNumbers?: boolean;
}

/** A stand-in host whose add-in runs in a world of its own, without a page and without Node. */
export function sealedHost(options: SealedHostOptions): StandInHost {
  const { bundle, formattedNumbers, ...others } = options;
  const context = vm.createContext(Object.create(null) as object);
  const page = vm.runInContext(HOST_PAGE_SOURCE, context) as HostPage;
  if (formattedNumbers !== false) page.offerFormattedNumbers();
  vm.runInContext(bundle, context, { filename: "functions.js" });
  return new StandInHost({ ...others, page });
}
