import { chartResidence } from "../../calculation/request/chartResidence";
import { mailingAddress } from "../../calculation/request/mailingAddress";
import type { State } from "../../calculation/state";
import { extensionParts } from "../../calculation/stateReturn/extensionParts";
import { stateRule } from "../../calculation/stateReturn/stateRule";
import { isFiscalYear, type TaxYear } from "../../calculation/taxYear";
import { remembered } from "../../calendar/remembered";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { RowReader } from "../arguments/argumentKind";
import type { clientRequest } from "../arguments/clientRequest";
import { stateCaveats } from "../stateReturn/stateCaveats";

/** The arguments that decide which rules a client's extension depends on. */
type ExtensionReader = RowReader<
  Pick<typeof clientRequest, "taxYear" | "state" | "filerType" | "paidWithRequest" | "carrier">
>;

type StateRules = Pick<Rulebook, "stateExtensions">;
type ConfirmRules = StateRules & Pick<Rulebook, "mailingAddresses" | "serviceCenterStreets">;

const MOST_REMEMBERED = 1_000;
const MOST_TABLES = 10;

/** The answer, or `undefined` for what the tables do not cover. */
function ifCovered<Answer>(work: () => Answer): Answer | undefined {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof NotInTableError) return undefined;
    throw thrown;
  }
}

/** The clients of a list have the same few states. */
const caveatsOfStates = remembered(
  (rules: StateRules) =>
    remembered(
      (taxYear: TaxYear, state: State): readonly string[] => {
        const rule = ifCovered(() => stateRule(taxYear, state, rules));
        if (rule?.dueDay === undefined) return [];
        const parts = extensionParts(taxYear, rule);
        const caveats = parts.flatMap((part) => stateCaveats(taxYear, part));
        if (caveats.length === 0) return [];
        return [`${rule.name} extension: ${[...new Set(caveats)].join("; ")}`];
      },
      ({ lastDay }, state) => `${String(lastDay)} ${state}`,
      MOST_REMEMBERED
    ),
  ({ stateExtensions }) => stateExtensions,
  MOST_TABLES
);

function ofState(given: ExtensionReader, rules: ConfirmRules): readonly string[] {
  const [taxYear, state] = [given("taxYear"), given("state")];
  if (state === undefined || isFiscalYear(taxYear)) return [];
  return caveatsOfStates(rules)(taxYear, state);
}

function ofAddress(given: ExtensionReader, rules: ConfirmRules): readonly string[] {
  const taxYear = given("taxYear");
  const residence = chartResidence(given("state"), given("filerType"));
  const isPaid = given("paidWithRequest").greaterThan(0);
  const isCarried = given("carrier") !== undefined;
  if (residence === undefined) return [];
  const address = ifCovered(() => mailingAddress(taxYear, residence, isPaid, isCarried, rules));
  if (address === undefined) return ["mailing address: not in the rule tables"];
  const caveats = { official: [], secondary: ["secondary source"], memory: ["unverified"] };
  return caveats[address.source.confidence].map((caveat) => `mailing address: ${caveat}`);
}

/**
 * What to confirm in the official text before a client's row is used: an old, unverified or reported rule of the state, and the
 * mailing address of a request on paper.
 *
 * @param given - The client's arguments. What a part does not need is not read, so that an error in its cell does not hide the others.
 * @param isToMail - Whether the request is still to be mailed on paper.
 * @param rules - State rules and addresses.
 * @returns One line of text; empty if there is nothing to confirm.
 */
export function confirmFirst(
  given: ExtensionReader,
  isToMail: () => boolean,
  rules: ConfirmRules
): string {
  const addressed = ifCovered(isToMail) === true ? ofAddress(given, rules) : [];
  return [...ofState(given, rules), ...addressed].join(". ");
}
