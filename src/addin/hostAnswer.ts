/** The part of the host's script that is used here. */
export interface HostScript {
  onReady(answered: (answer: { readonly host: unknown }) => void): unknown;
}

/** What is known of the host of the page. */
export type HostState = "no script" | "waiting" | "late" | "outside" | "excel";

/** How long the page waits for a host before it says that none has answered, in milliseconds. */
const PATIENCE = 15_000;

/** What the page says of its host; empty once Excel has answered. */
export const HOST_SENTENCES: Readonly<Record<HostState, string>> = {
  "no script":
    "Microsoft's script office.js did not load, so this page is not connected to Excel and the functions do not calculate. Check the network connection and close and open this page again. You can read the guide and see the examples here.",
  waiting: "Connecting to Excel … You can read the guide and see the examples meanwhile.",
  late: "Excel has not answered yet. This page connects as soon as it does. If nothing changes within a few minutes, close the page and open it again from the Home tab.",
  outside:
    "This page is open outside Excel. You can read the guide and see the examples here. To use the functions in your own cells, open a workbook with the add-in.",
  excel: "",
};

/**
 * Tells what is known of the host, at once and whenever it changes. A host may answer at any time: on a slow network its script takes
 * minutes.
 *
 * @param script - Microsoft's script office.js, or `undefined` when it did not load.
 * @param changed - Receives each state.
 */
export function watchHost(
  script: HostScript | undefined,
  changed: (state: HostState) => void
): void {
  if (!script) {
    changed("no script");
    return;
  }
  changed("waiting");
  const waiting = setTimeout(() => {
    changed("late");
  }, PATIENCE);
  script.onReady(({ host }) => {
    clearTimeout(waiting);
    changed(host ? "excel" : "outside");
  });
}
