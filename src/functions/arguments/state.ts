import type { MailingResidence } from "../../calculation/request/mailingAddress";
import { isState, STATE_NAMES, type State } from "../../calculation/state";
import { isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";
import { nearName } from "./closestName";
import { CODE_OF_NAME, postalCode } from "./stateNames";

const ENTER = "Enter a postal code or a name, such as ME or Maine, or foreign.";

/** A state, by its code or its name. `others` are words that are accepted as well, for the closest one in the error message. */
function stateOf(value: CellValue, name: string, others: readonly string[] = []): State {
  const word = String(plainWord(value));
  const code = word === "foreign" ? word : postalCode(word);
  if (isState(code)) return code;
  const near = nearName(word, [...CODE_OF_NAME.keys(), "foreign", ...others]);
  const spelled = STATE_NAMES[CODE_OF_NAME.get(near ?? "") ?? ""] ?? near;
  const closest = spelled === undefined ? "" : ` The closest is ${spelled}.`;
  throw new InputError(name, `${shown(value)} is not a state.${closest} ${ENTER}`);
}

/** The state of residence. A blank cell is a place without a legal holiday of its own. */
export const state: CellKind<State | undefined> = {
  id: "state",
  title: "State",
  description:
    "The postal code, the name or the usual abbreviation of the state where the client lives, including possessions and military mail areas, or `foreign`, in any case. If it is blank, state holidays such as Patriots' Day do not move a date.",
  accepted: ['"ME"', '"oh"', '"Maine"', '"N.Y."', '"Calif."', '"foreign"', '""'],
  notAccepted: ['"XX"', '"New England"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: undefined },
  read: (value, name) => stateOf(value, name),
};

/** The state whose return is asked about. A blank cell returns an error. */
export const stateOfReturn: CellKind<State> = {
  ...state,
  id: "state-of-return",
  title: "State of the return",
  description:
    "The postal code or the name of the state, in any case. A blank cell returns an error.",
  accepted: ['"NY"', '"new york"'],
  notAccepted: ['"XX"', '""'],
  whenBlank: { enter: "Enter a postal code or a name, such as ME or Maine." },
  read: (value, name) => stateOf(value, name),
};

/** The residence as the form's chart of addresses has it. A blank cell is read with the filer type. */
export const mailingResidence: CellKind<MailingResidence | undefined> = {
  id: "mailing-residence",
  title: "Residence on the form",
  description:
    "The postal code or the name of the state, `foreign`, `estate` (foreign estate or trust) or `nonresident` (other Form 1040-NR filers), in any case. It may be blank only if the filer type is out of country or nonresident.",
  accepted: ['"TX"', '"Texas"', '"foreign"', '"estate"', '"nonresident"'],
  notAccepted: ['"XX"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: undefined },
  read: (value, name) => {
    const word = plainWord(value);
    return word === "estate" || word === "nonresident"
      ? word
      : stateOf(value, name, ["estate", "nonresident"]);
  },
};
