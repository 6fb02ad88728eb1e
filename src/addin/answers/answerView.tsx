import type { ShownCell } from "./liveAnswer";

/** What {@link AnswerView} shows. */
interface AnswerViewProps {
  readonly rows: readonly (readonly ShownCell[])[];
  /** The name of the table, for screen readers. */
  readonly caption: string;
}

/** An answer as the page shows it: one value as a line, several cells as a table with headings. */
export function AnswerView({ rows, caption }: AnswerViewProps) {
  const [headings = [], ...body] = rows;
  const [only] = headings;
  if (rows.length === 1 && headings.length === 1 && only)
    return <output class={only.kind}>{only.text}</output>;
  return (
    <div class="scroller" role="region" aria-label={caption} tabIndex={0}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {headings.map(({ text, kind }) => (
              <th scope="col" class={kind}>
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {body.map((row) => (
            <tr>
              {row.map(({ text, kind }) => (
                <td class={kind}>{text}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
