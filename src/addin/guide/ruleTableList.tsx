import { ruleTables, summarize } from "../../rules/ruleTables";
import { coverageDateText } from "./coverageDate";

/** The rule tables: title, the last date covered, and in words which entries are unverified. */
export function RuleTableList() {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Rule table</th>
          <th scope="col">Covers through</th>
        </tr>
      </thead>
      <tbody>
        {[...ruleTables().values()]
          .map(summarize)
          .map(({ title, knownThrough, entries, fromMemory }) => (
            <tr>
              <th scope="row">
                {title}
                {fromMemory > 0 && (
                  <small>{`Unverified: ${fromMemory} of ${entries} ${entries === 1 ? "entry" : "entries"}. Confirm first.`}</small>
                )}
              </th>
              <td>{coverageDateText(knownThrough)}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
