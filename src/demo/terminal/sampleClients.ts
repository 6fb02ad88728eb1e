import { readFileSync } from "node:fs";
import { readClients, type SampleClient } from "../season/clients";

/** The clients of the sample firm, read from the file clients.csv. */
export function sampleClients(): SampleClient[] {
  return readClients(readFileSync(new URL("../season/clients.csv", import.meta.url), "utf8"));
}
