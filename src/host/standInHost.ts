import {
  AnsweredByArgument,
  type BlankHabit,
  marshalArgument,
  type MarshallingHabits,
} from "./argumentMarshalling";
import { type AnswerCell, type Argument, OMITTED } from "./cellValues";
import { type FunctionMetadata, readAddInMetadata } from "./functionMetadata";
import { liftOverCells } from "./liftOverCells";

/** A fault of the add-in, which a user would see only as an error without a message. */
export interface HostFault {
  readonly functionName: string;
  readonly argumentsText: string;
  readonly fault: string;
}

/** The separate page in which the add-in runs; only text passes in and out. */
export interface HostPage {
  call(id: string, argumentsText: string, wantsMatrix: boolean): string;
  associated(): string;
  remarks(): string;
  offerFormattedNumbers(): void;
}

/** What the stand-in needs: the page with the built bundle, its metadata, and how blank cells are passed. */
export interface StandInHostOptions {
  readonly page: HostPage;
  readonly metadata: string;
  readonly namespace?: string;
  readonly blankHabit?: BlankHabit;
}

const MOST_FAULTS_KEPT = 1000;
const MOST_ANSWERS_KEPT = 100_000;

/** Calls the functions of the built add-in as Excel does. */
export class StandInHost {
  readonly namespace: string;
  readonly faults: HostFault[] = [];
  readonly functions: ReadonlyMap<string, FunctionMetadata>;
  #page: HostPage;
  #answered = new Map<string, AnswerCell[][]>();
  #habits: MarshallingHabits;

  constructor(options: StandInHostOptions) {
    const metadata = readAddInMetadata(options.metadata);
    this.namespace = options.namespace ?? "EXT";
    this.functions = new Map(metadata.functions.map((entry) => [entry.name.toUpperCase(), entry]));
    this.#habits = {
      blankHabit: options.blankHabit ?? "null",
      allowErrorForDataTypeAny: metadata.allowErrorForDataTypeAny,
    };
    this.#page = options.page;
    this.#refuseMismatch();
  }

  /** What the add-in wrote to its console. */
  get remarks(): readonly string[] {
    return JSON.parse(this.#page.remarks()) as string[];
  }

  /** Calls a function by its name without the namespace and returns its answer as rows of cells. */
  call(name: string, given: readonly Argument[]): AnswerCell[][] {
    const metadata = this.functions.get(name.toUpperCase());
    if (metadata === undefined) return [[{ error: "#NAME?" }]];
    const refusal = this.#refuseCount(metadata, given);
    if (refusal !== undefined) return [[refusal]];
    const lifted = liftOverCells(metadata, given);
    if (lifted === undefined) return this.#callOnce(metadata, given);
    return lifted.map((row) => row.map((cells) => this.#callOnce(metadata, cells)[0]?.[0] ?? {}));
  }

  #callOnce(metadata: FunctionMetadata, given: readonly Argument[]): AnswerCell[][] {
    let argumentsText: string;
    try {
      argumentsText = JSON.stringify(this.#marshal(metadata, given));
    } catch (answer) {
      if (answer instanceof AnsweredByArgument) return [[{ error: answer.errorCode }]];
      throw answer;
    }
    // A function returns the same answer for the same arguments, so an answer is kept.
    const question = `${metadata.id} ${argumentsText}`;
    const known = this.#answered.get(question);
    if (known !== undefined) return known;
    const wantsMatrix = metadata.result.dimensionality === "matrix";
    const text = this.#page.call(metadata.id, argumentsText, wantsMatrix);
    const answer = JSON.parse(text) as {
      rows: AnswerCell[][];
      faults: string[];
    };
    for (const fault of answer.faults) {
      if (this.faults.length >= MOST_FAULTS_KEPT) break;
      this.faults.push({ functionName: metadata.name, argumentsText, fault });
    }
    if (this.#answered.size >= MOST_ANSWERS_KEPT) this.#answered.clear();
    if (answer.faults.length === 0) this.#answered.set(question, answer.rows);
    return answer.rows;
  }

  #marshal(metadata: FunctionMetadata, given: readonly Argument[]): unknown[] {
    return metadata.parameters.map((parameter, index) => {
      if (parameter.repeating !== true) {
        return marshalArgument(
          given[index] ?? omittedOrBlank(given, index),
          parameter,
          this.#habits
        );
      }
      const rest = given.slice(index);
      return rest.map((argument) => marshalArgument(argument, parameter, this.#habits));
    });
  }

  #refuseCount(metadata: FunctionMetadata, given: readonly Argument[]): AnswerCell | undefined {
    const { parameters } = metadata;
    const least = parameters.filter((entry) => !entry.optional && !entry.repeating).length;
    const most = parameters.at(-1)?.repeating ? Number.POSITIVE_INFINITY : parameters.length;
    if (given.length >= least && given.length <= most) return undefined;
    const wanted = least === most ? String(least) : `${least} to ${most}`;
    const name = `${this.namespace}.${metadata.name}`;
    return {
      error: "#VALUE!",
      message: `${name} takes ${wanted} arguments. The formula has ${given.length}.`,
    };
  }

  #refuseMismatch(): void {
    const associated = new Set(JSON.parse(this.#page.associated()) as string[]);
    const missing = [...this.functions.values()].filter(
      (entry) => !associated.has(entry.id.toUpperCase())
    );
    if (missing.length > 0) {
      const names = missing.map((entry) => entry.id).join(", ");
      throw new Error(`functions.json lists functions the bundle does not associate: ${names}.`);
    }
  }
}

function omittedOrBlank(given: readonly Argument[], index: number): Argument {
  return index < given.length && given[index] === null ? null : OMITTED;
}
