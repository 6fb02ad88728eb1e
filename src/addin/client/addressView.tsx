import { clientAddress, type ClientAddress } from "./clientAddress";
import type { ClientRow } from "../list/clientRow";
import { copyText } from "../copyText";
import type { PaneSettings } from "../list/rosterAnswers";
import { ConfirmFirst } from "./statusMark";
import { NotDone } from "../workbook/workbookHost";

/** What {@link AddressView} works on. */
interface AddressViewProps {
  readonly client: ClientRow;
  readonly settings: PaneSettings;
  readonly run: (work: () => Promise<string>) => void;
}

function addressOr(work: () => ClientAddress): ClientAddress | string {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof NotDone) return thrown.message;
    throw thrown;
  }
}

/** The address to mail the client's request to, clean, with a mark beside it where it is to be confirmed. */
export function AddressView({ client, settings, run }: AddressViewProps) {
  const address = addressOr(() => clientAddress(client, settings));
  if (typeof address === "string") return <p class="panel error">{address}</p>;
  const copy = async (): Promise<string> =>
    (await copyText(address.lines.join("\n")))
      ? "Copied the address."
      : "The pane is not allowed to copy. Select the address, and press Ctrl+C or Cmd+C.";
  return (
    <section class="panel" aria-label="Mailing address">
      <p>Mail a paper Form 4868 to:</p>
      <address>
        {address.lines.map((line) => (
          <span>{line}</span>
        ))}
      </address>
      {address.confirm === "" ? (
        <p>Source: {address.source}.</p>
      ) : (
        <ConfirmFirst
          why={`${address.confirm} Check the address in the current Form 4868 instructions. Source: ${address.source}.`}
        />
      )}
      <fluent-button
        onClick={() => {
          run(copy);
        }}
      >
        Copy the address
      </fluent-button>
    </section>
  );
}
