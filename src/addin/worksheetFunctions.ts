import * as account from "../functions/account";
import * as charges from "../functions/charges";
import * as checking from "../functions/checking";
import * as deductions from "../functions/deductions";
import * as dueDates from "../functions/dueDates";
import * as estimates from "../functions/estimates";
import * as filing from "../functions/filing";
import * as interest from "../functions/interest";
import * as liability from "../functions/liability";
import * as memo from "../functions/memo";
import * as request from "../functions/request";
import * as roster from "../functions/roster";
import * as rulesInForce from "../functions/rulesInForce";
import * as season from "../functions/season";
import * as standing from "../functions/standing";
import * as states from "../functions/states";
import * as taxes from "../functions/taxes";

/** A worksheet function as the host calls it. */
export type WorksheetFunction = (...cells: readonly unknown[]) => unknown;

const families = [
  ...[account, charges, checking, deductions, dueDates, estimates, filing, interest, liability],
  ...[memo, request, roster, rulesInForce, season, standing, states, taxes],
];

/** Every worksheet function by the name it bears in a cell: that of its declaration, in capitals. */
export const worksheetFunctions: ReadonlyMap<string, WorksheetFunction> = new Map(
  families.flatMap((family) =>
    Object.entries(family).map(
      ([name, answer]) => [name.toUpperCase(), answer as WorksheetFunction] as const
    )
  )
);
