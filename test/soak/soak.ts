import { spawnSync } from "node:child_process";

const [first, ...rest] = process.argv.slice(2);
const [program, words] =
  first === "workbooks"
    ? ["tsx", ["test/soak/workbooks.ts", ...rest]]
    : ["vitest", ["run", "--config", "test/soak/vitest.config.ts", ...process.argv.slice(2)]];
const options = { stdio: "inherit", shell: process.platform === "win32" } as const;
process.exitCode = spawnSync(program, words, options).status ?? 1;
