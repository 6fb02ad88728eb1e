import "../customFunctionsRuntime";
import { runBundle } from "./builtAddIn";
import { answersOf } from "./calls";

/** Runs in a process of its own and prints the time zone of its environment and the results of all calls. */
const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
process.stdout.write(JSON.stringify({ timeZone, answers: answersOf(runBundle()) }));
