import { theClientList } from "../workbook/theClientList";
import type { WorkbookHost } from "../workbook/workbookHost";

/** What {@link GoToClients} works on. */
interface GoToClientsProps {
  readonly workbook: WorkbookHost;
  /** The tax year, for headings that name one. */
  readonly taxYear: number;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
}

/** The button that shows the client list of the workbook, where the host can look for it. */
export function GoToClients({ workbook, taxYear, run }: GoToClientsProps) {
  if (!workbook.sheetTops || !workbook.goTo) return null;
  return (
    <p>
      <fluent-button
        size="small"
        onClick={() => {
          run(async () => {
            const tops = (await workbook.sheetTops?.()) ?? [];
            await workbook.goTo?.(theClientList(tops, taxYear));
            return "";
          });
        }}
      >
        Go to the client list
      </fluent-button>
    </p>
  );
}
