import { MEANINGS, PART_OF_PAYMENTS, type ReadHeading } from "./listReading";

/** What {@link HeadingTable} shows. */
interface HeadingTableProps {
  readonly headings: readonly ReadHeading[];
  /** Chooses another meaning of a heading. */
  readonly choose: (heading: string, means: string) => void;
}

/** How the headings of a list are read. Each reading can be changed. */
export function HeadingTable({ headings, choose }: HeadingTableProps) {
  return (
    <table class="headings">
      <caption>How your headings are read</caption>
      <thead>
        <tr>
          <th scope="col">Your heading</th>
          <th scope="col">Read as</th>
        </tr>
      </thead>
      <tbody>
        {headings.map(({ heading, readAs, remark }) => (
          <tr>
            <th scope="row">{heading}</th>
            <td>
              <select
                aria-label={`Read ${heading} as`}
                value={readAs}
                onChange={({ currentTarget }) => {
                  choose(heading, currentTarget.value);
                }}
              >
                {MEANINGS.map((meaning) => (
                  <option value={meaning}>
                    {meaning === PART_OF_PAYMENTS ? "Part of payments" : meaning}
                  </option>
                ))}
              </select>
              {remark !== "" && (
                <small class={remark.startsWith("Check") ? "error" : ""}>{remark}</small>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
