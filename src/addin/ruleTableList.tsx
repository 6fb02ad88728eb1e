import { ruleTables, summarize } from "../rules/ruleTables";
import { coverageDateText } from "./coverageDate";

/** The rule tables: title, the last date covered, and the number of unverified entries. */
export function RuleTableList() {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Rule table</th>
          <th scope="col">Covers through</th>
          <th scope="col">Unverified entries</th>
        </tr>
      </thead>
      <tbody>
        {[...ruleTables.values()]
          .map(summarize)
          .map(({ title, knownThrough, entries, fromMemory }) => (
            <tr>
              <th scope="row">{title}</th>
              <td>{coverageDateText(knownThrough)}</td>
              <td>{fromMemory === 0 ? "none" : `${fromMemory} of ${entries}`}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
