import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const root = new URL("../../", import.meta.url);
const read = (file: string) => readFileSync(new URL(file, root), "utf8");

/** Microsoft's addresses of office.js: since August 2026, and before. */
const OFFICE_SERVERS = [
  "https://officeapis.public.onecdn.static.microsoft",
  "https://appsforoffice.microsoft.com",
];
const OFFICE_ADDRESS = "https://officeapis.public.onecdn.static.microsoft/1/office.js";

describe("the built page", () => {
  const html = read("dist/addin.html");
  const policy = /Content-Security-Policy"?\s+content="([^"]+)"/.exec(html)?.[1];

  it("has a policy that allows only its own files and those of office.js", () => {
    expect(policy?.split("; ")).toEqual([
      "default-src 'none'",
      `script-src 'self' ${OFFICE_SERVERS.join(" ")}`,
      "style-src 'self' 'unsafe-inline'",
      "img-src 'self'",
      "connect-src 'self'",
      `frame-src ${OFFICE_SERVERS.join(" ")}`,
      "base-uri 'none'",
      "form-action 'none'",
    ]);
  });

  it("has a tag, a policy and a text that name the same server of office.js", () => {
    const tag = /<script[^>]*\ssrc="?(https:[^">\s]+)/.exec(html)?.[1] ?? "";
    const { origin, host } = new URL(tag);
    expect(policy).toMatch(new RegExp(`script-src [^;]*${origin}[ ;]`));
    expect(html.replace(/\s+/g, " ")).toContain(`must load, from <code>${host}</code>`);
  });

  it("has no inline script, handler or style", () => {
    expect(html).not.toMatch(/<script(?![^>]*\ssrc=)/);
    expect(html).not.toMatch(/<[^>]*\s(on\w+|style)=/);
    expect(html).not.toMatch(/<style/);
  });

  it("has no outside address but the host's script", () => {
    const named = new Set(
      [...html.replace(/content="default-src[^"]*"/, "").matchAll(/https?:\/\/[^\s"'<>]+/g)].map(
        String
      )
    );
    expect([...named]).toEqual([OFFICE_ADDRESS]);
  });

  it("has landmarks, one main heading and a language", () => {
    expect(html).toMatch(/<html lang="?en-US"?>/);
    for (const landmark of ["header", "main"]) expect(html.split(`<${landmark}>`)).toHaveLength(2);
    expect(html.split("<h1>")).toHaveLength(2);
    const labels = [...html.matchAll(/<section[^>]*aria-labelledby="?([\w-]+)/g)].map(
      ([, label]) => label
    );
    const headings = [...html.matchAll(/<h2 id="?([\w-]+)/g)].map(([, id]) => id);
    expect(labels).toEqual(headings);
  });

  it("has the cautions", () => {
    const text = html.replace(/\s+/g, " ");
    for (const caution of [
      "an estimate, not tax or legal advice",
      "Check it against the current official text",
      "The licensed tax professional makes the final decision",
      "Your data stays in the workbook",
    ]) {
      expect(text).toContain(caution);
    }
  });

  it("loads the host's script, then the functions, then its own script, in the head", () => {
    const head = html.split("</head>")[0] ?? "";
    const scripts = [...head.matchAll(/<script[^>]*\ssrc="?([^\s">]+)[^>]*>/g)];
    expect(scripts.map(([, source]) => source)).toEqual([
      OFFICE_ADDRESS,
      "outside.js",
      "functions.js",
      "addin.js",
    ]);
    for (const [tag] of scripts) expect(tag).not.toMatch(/\s(defer|async|type=)/);
  });
});
