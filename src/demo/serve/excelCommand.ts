import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { BUILD_FOLDER, NotBuilt } from "../../host/builtAddIn";
import { excelCertificate } from "./excelCertificate";
import { serveAddIn } from "./excelServer";
import { freePort } from "./freePort";
import { readServeArguments } from "./portArgument";
import { print, runCommand } from "./runCommand";
import { LOOPBACK } from "./sheetServer";
import { sideloadSteps, trustSteps } from "./sideloadSteps";

/** The port in the manifest, unless the command line has another. */
const USUAL_PORT = 3000;
const USAGE = `npm run excel                  Build the add-in and serve it to Excel on this machine.
npm run excel -- --port N      Use port N instead of ${USUAL_PORT}, also in the manifest.
npm run excel -- --trust       Make this machine trust the certificate first.`;

function build(address: string): void {
  const { status } = spawnSync("npm run --silent build", {
    cwd: fileURLToPath(new URL("../", BUILD_FOLDER)),
    env: { ...process.env, ADDIN_ADDRESS: address },
    shell: true,
    stdio: ["ignore", "ignore", "inherit"],
  });
  if (status !== 0) throw new NotBuilt("The add-in could not be built. See the messages above.");
}

await runCommand(async () => {
  const { port: wanted, trust, help } = readServeArguments(process.argv.slice(2), USUAL_PORT);
  if (help) {
    print(USAGE);
    return;
  }
  const certificate = await excelCertificate(trust);
  const { port, sentence } = await freePort(wanted, LOOPBACK);
  if (sentence !== undefined) print(`${sentence} The manifest has that port.`);
  const address = `https://localhost:${port}/`;
  print("Building the add-in …");
  build(address);
  await serveAddIn(port, certificate);
  print(`The add-in is served at ${address} on this machine only. Press Ctrl+C to stop.`);
  print("");
  if (!certificate.isTrusted) {
    for (const line of trustSteps(certificate.authority, address)) print(line);
    print("");
  }
  for (const line of sideloadSteps(fileURLToPath(new URL("manifest.xml", BUILD_FOLDER))))
    print(line);
});
