import { useState } from "preact/hooks";
import { copyText } from "../copyText";
import type { Diagnosis } from "./diagnosis";

/** What {@link DiagnosisTool} shows. */
interface DiagnosisToolProps {
  readonly diagnosis: Diagnosis;
}

/** The button that copies the diagnosis, and its text, so that one sees what is sent and can copy it by hand. */
export function DiagnosisTool({ diagnosis }: DiagnosisToolProps) {
  const [text, setText] = useState("");
  const [said, setSaid] = useState("");
  const copy = async (): Promise<void> => {
    const lines = diagnosis.text();
    setText(lines);
    setSaid(
      (await copyText(lines))
        ? "Copied the diagnosis. It has no content of your cells."
        : "Select the text and copy it. It has no content of your cells."
    );
  };
  return (
    <div id="diagnosis">
      <fluent-button
        size="small"
        onClick={() => {
          void copy();
        }}
      >
        Copy a diagnosis
      </fluent-button>
      <p role="status">{said}</p>
      {text !== "" && (
        <>
          <label for="diagnosis-text">Diagnosis</label>
          <textarea
            id="diagnosis-text"
            readOnly
            rows={14}
            value={text}
            onFocus={({ currentTarget }) => {
              currentTarget.select();
            }}
          />
        </>
      )}
    </div>
  );
}
