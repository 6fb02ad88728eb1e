import { type HostPage, StandInHost } from "../../host/standInHost";

type FunctionsWindow = Window & { readonly standInPage?: HostPage };

/**
 * A stand-in host whose add-in runs in its own frame, because Excel also separates it from the sheet. Only text passes.
 *
 * @param frame - The frame that has loaded the functions.
 * @param metadata - Text of functions.json.
 * @returns The host.
 * @throws Error when the frame does not contain the functions.
 */
export function framedHost(frame: HTMLIFrameElement, metadata: string): StandInHost {
  const page = (frame.contentWindow as FunctionsWindow | null)?.standInPage;
  if (!page) throw new Error("The functions did not load. Reload the page.");
  return new StandInHost({ page, metadata });
}
