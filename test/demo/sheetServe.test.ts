import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { request } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import vm from "node:vm";
import { generateCertificates } from "office-addin-dev-certs";
import { afterEach, describe, expect, it } from "vitest";
import { serveAddIn } from "../../src/demo/serve/excelServer";
import { freePort } from "../../src/demo/serve/freePort";
import { readServeArguments } from "../../src/demo/serve/portArgument";
import { LOOPBACK, serveSheet } from "../../src/demo/serve/sheetServer";
import { sideloadSteps } from "../../src/demo/serve/sideloadSteps";
import { UsageError } from "../../src/demo/terminal/commandLine";

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

const portOf = (server: Pick<Server, "address">): number => (server.address() as AddressInfo).port;

describe("the options of a command that starts a server", () => {
  it("may have a port", () => {
    expect(readServeArguments([], 4869)).toEqual({ port: 4869, trust: false, help: false });
    expect(readServeArguments(["--port", "5000", "--trust"], 4869)).toEqual({
      port: 5000,
      trust: true,
      help: false,
    });
  });

  it.each(["80", "65536", "-1", "3e3", "0x1000", "many", ""])("reject %j as a port", (port) => {
    expect(() => readServeArguments([`--port=${port}`], 4869)).toThrow(
      new UsageError("--port must be a whole number from 1024 to 65535.")
    );
  });

  it("reject an unknown option", () => {
    expect(() => readServeArguments(["--prot", "5000"], 4869)).toThrow(UsageError);
    expect(() => readServeArguments(["5000"], 4869)).toThrow(UsageError);
  });
});

describe("a port", () => {
  it("that is in use is replaced by the next free one, with a message", async () => {
    const other = createServer();
    servers.push(other);
    await new Promise<void>((resolve) => other.listen(0, LOOPBACK, resolve));
    const taken = portOf(other);
    const { port, sentence } = await freePort(taken, LOOPBACK);
    expect(port).toBeGreaterThan(taken);
    expect(sentence).toBe(`Port ${taken} is in use. The server uses port ${port} instead.`);
  });

  it("that is free is used without a message", async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, LOOPBACK, resolve));
    const wanted = portOf(other);
    await new Promise((resolve) => other.close(resolve));
    expect(await freePort(wanted, LOOPBACK)).toEqual({ port: wanted, sentence: undefined });
  });
});

describe("the server of the sheet", () => {
  it("serves the build on loopback, and no other file", async () => {
    const server = await serveSheet(0);
    servers.push(server);
    expect((server.address() as AddressInfo).address).toBe("127.0.0.1");
    const address = `http://${LOOPBACK}:${portOf(server)}/`;
    const answer = await fetch(`${address}functions.json`);
    expect(answer.headers.get("content-type")).toMatch(/^application\/json/);
    expect(answer.headers.get("cross-origin-resource-policy")).toBe("same-origin");
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    expect(await answer.json()).toHaveProperty("functions");
    for (const outside of ["package.json", "..%2fpackage.json", "%2e%2e/package.json"]) {
      expect((await fetch(address + outside)).status).toBe(404);
    }
  });

  it("serves the script of the host page", async () => {
    const server = await serveSheet(0);
    servers.push(server);
    const script = await fetch(`http://${LOOPBACK}:${portOf(server)}/hostPage.js`);
    expect(script.headers.get("content-type")).toMatch(/^text\/javascript/);
    // The script defines globals, so it runs in a context of its own.
    const world = vm.createContext();
    vm.runInContext(await script.text(), world);
    expect(vm.runInContext("standInPage.associated()", world)).toBe("[]");
    expect(vm.runInContext("typeof Office", world)).toBe("object");
  });
});

describe("the server for Excel", () => {
  it("serves the add-in over https to any origin, with icons that may be cached", async () => {
    const folder = mkdtempSync(path.join(tmpdir(), "certificate-"));
    const [authority, certificate, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) =>
      path.join(folder, name)
    ) as [string, string, string];
    await generateCertificates(authority, certificate, key, 1);
    const ca = readFileSync(authority);
    const served = { cert: readFileSync(certificate), key: readFileSync(key) };
    rmSync(folder, { recursive: true });
    const server = await serveAddIn(0, served);
    servers.push(server);
    const asked = (file: string, method = "GET") =>
      new Promise<{ status: number | undefined; headers: NodeJS.Dict<string | string[]> }>(
        (resolve, reject) => {
          request(
            { host: "localhost", port: portOf(server), path: file, method, ca, family: 4 },
            (response) => {
              response.resume();
              resolve({ status: response.statusCode, headers: response.headers });
            }
          )
            .on("error", reject)
            .end();
        }
      );
    const metadata = await asked("/functions.json");
    expect(metadata.status).toBe(200);
    expect(metadata.headers["access-control-allow-origin"]).toBe("*");
    const icon = await asked("/icons/icon-32.png");
    expect(icon.headers["cache-control"]).not.toMatch(/no-store|no-cache/);
    expect((await asked("/functions.json", "OPTIONS")).status).toBe(204);
    expect((await asked("/package.json")).status).toBe(404);
  });

  it("prints where the manifest is and the steps for each platform", () => {
    const steps = sideloadSteps("/somewhere/manifest.xml").join("\n");
    for (const part of [
      "/somewhere/manifest.xml",
      "on the web",
      "Windows",
      "Mac",
      "=EXT.",
      "local network",
      "Select Allow",
      "If you selected Block",
      "Recalculate this workbook",
    ]) {
      expect(steps).toContain(part);
    }
  });
});
