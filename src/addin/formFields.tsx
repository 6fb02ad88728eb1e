import type { TargetedInputEvent } from "preact";
import { FILER_TYPES, type FilerType } from "../calculation/filerType";
import { STATE_NAMES, STATES } from "../calculation/state";

/** A value to choose, and what it is called. */
interface Option {
  readonly value: string;
  readonly text: string;
}

const FILER_TEXTS: Readonly<Record<FilerType, string>> = {
  resident: "resident",
  "out of country": "out of the country (line 8)",
  nonresident: "nonresident without wages (line 9)",
};

/** The states of residence to choose from. */
export const STATE_OPTIONS: readonly Option[] = [
  { value: "", text: "any other" },
  ...STATES.map((value) => ({ value, text: STATE_NAMES[value] ?? "outside the United States" })),
];
/** The filer types to choose from. */
export const FILER_OPTIONS: readonly Option[] = FILER_TYPES.map((value) => ({
  value,
  text: FILER_TEXTS[value],
}));

/** What every field has. */
interface FieldProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  /** Called with each new value. */
  readonly enter: (value: string) => void;
}

/** A field for a text or a date, below its label. */
export function EntryField({
  id,
  label,
  value,
  enter,
  isDate = false,
}: FieldProps & { readonly isDate?: boolean }) {
  const entry = {
    id,
    value,
    onInput: ({ currentTarget }: TargetedInputEvent<HTMLInputElement>): void => {
      enter(currentTarget.value);
    },
  };
  return (
    <div>
      <label for={id}>{label}</label>
      {isDate ? <input type="date" {...entry} /> : <input {...entry} />}
    </div>
  );
}

/** Values to choose from, below their label. */
export function ChoiceField({
  id,
  label,
  value: chosen,
  enter,
  options,
}: FieldProps & { readonly options: readonly Option[] }) {
  return (
    <div>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={chosen}
        onChange={({ currentTarget }) => {
          enter(currentTarget.value);
        }}
      >
        {options.map(({ value, text }) => (
          <option value={value}>{text}</option>
        ))}
      </select>
    </div>
  );
}
