import { chartResidence } from "../../calculation/request/chartResidence";
import type { Carrier } from "../../calculation/request/clientRequest";
import { mailingAddress } from "../../calculation/request/mailingAddress";
import type { FilerType } from "../../calculation/filerType";
import type { State } from "../../calculation/state";
import { extensionParts } from "../../calculation/stateReturn/extensionParts";
import { stateRule } from "../../calculation/stateReturn/stateRule";
import { isFiscalYear, type TaxYear } from "../../calculation/taxYear";
import type { Decimal } from "../../money/dollars";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import { stateCaveats } from "../stateReturn/stateCaveats";

/** What decides which rules a client's extension depends on. */
interface ExtensionOfClient {
  readonly taxYear: TaxYear;
  readonly state: State | undefined;
  readonly filerType: FilerType;
  readonly paidWithRequest: Decimal;
  readonly carrier: Carrier | undefined;
}

type ConfirmRules = Pick<Rulebook, "stateExtensions" | "mailingAddresses" | "serviceCenterStreets">;

/** The answer, or `undefined` for what the tables do not cover. */
function ifCovered<Answer>(work: () => Answer): Answer | undefined {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof NotInTableError) return undefined;
    throw thrown;
  }
}

function ofState({ taxYear, state }: ExtensionOfClient, rules: ConfirmRules): readonly string[] {
  if (state === undefined || isFiscalYear(taxYear)) return [];
  const rule = ifCovered(() => stateRule(taxYear, state, rules));
  if (rule?.dueDay === undefined) return [];
  const caveats = extensionParts(taxYear, rule).flatMap((part) => stateCaveats(taxYear, part));
  if (caveats.length === 0) return [];
  return [`${rule.name} extension: ${[...new Set(caveats)].join("; ")}`];
}

function ofAddress(client: ExtensionOfClient, rules: ConfirmRules): readonly string[] {
  const { taxYear, state, filerType, paidWithRequest, carrier } = client;
  const residence = chartResidence(state, filerType);
  if (residence === undefined) return [];
  const isPaid = paidWithRequest.greaterThan(0);
  const address = ifCovered(() =>
    mailingAddress(taxYear, residence, isPaid, carrier !== undefined, rules)
  );
  if (address === undefined) return ["mailing address: not in the rule tables"];
  const caveats = { official: [], secondary: ["secondary source"], memory: ["unverified"] };
  return caveats[address.source.confidence].map((caveat) => `mailing address: ${caveat}`);
}

/**
 * What to confirm in the official text before a client's row is used: an old, unverified or reported rule of the state, and the
 * mailing address of a request on paper.
 *
 * @param client - The client. What a part does not need is not read, so that an error in its cell does not hide the others.
 * @param isToMail - Whether the request is still to be mailed on paper.
 * @param rules - State rules and addresses.
 * @returns One line of text; empty if there is nothing to confirm.
 */
export function confirmFirst(
  client: ExtensionOfClient,
  isToMail: () => boolean,
  rules: ConfirmRules
): string {
  const addressed = ifCovered(isToMail) === true ? ofAddress(client, rules) : [];
  return [...ofState(client, rules), ...addressed].join(". ");
}
