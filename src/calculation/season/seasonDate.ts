import type { CalendarDate } from "../../calendar/calendarDate";
import type { ExtensionEffect } from "../../rules/calendarWords";
import type { Source } from "../../rules/source";
import type { DateMove } from "../dueDate/dueDate";

/** A deadline of a client. */
export interface SeasonDate {
  readonly label: string;
  /** The deadline with a valid extension. */
  readonly date: CalendarDate;
  /** The deadline if no extension was requested, or the extension is void. */
  readonly dateWithoutExtension: CalendarDate;
  /** What an extension of time to file the return does to this deadline. */
  readonly extension: ExtensionEffect;
  /** Moves from the date the law names; empty if it did not move. */
  readonly moves: readonly DateMove[];
  readonly source: Source;
}
