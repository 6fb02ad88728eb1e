import "../customFunctionsRuntime";
import { runBundle } from "./builtAddIn";
import { answersOf } from "./calls";

/** Run in a process of its own, under the time zone of its environment: writes that zone and the answers to all calls. */
const { timeZone } = new Intl.DateTimeFormat().resolvedOptions();
process.stdout.write(JSON.stringify({ timeZone, answers: answersOf(runBundle()) }));
