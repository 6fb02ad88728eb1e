import path from "node:path";
import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";
import tseslint from "typescript-eslint";

const root = fileURLToPath(new URL("../..", import.meta.url));
const overrideConfigFile = path.join(root, "test", "eslint.config.js");

/** The lint of `npm run lint`. */
const withTypes = new ESLint({ cwd: root, overrideConfigFile });
/** The same lint without the rules that need types. It also takes files that are not there. */
const withoutTypes = new ESLint({
  cwd: root,
  overrideConfigFile,
  overrideConfig: tseslint.configs.disableTypeChecked as ESLint.Options["overrideConfig"] & object,
});

async function faults(eslint: ESLint, file: string, text: string): Promise<(string | null)[]> {
  const [result] = await eslint.lintText(text, { filePath: path.join(root, file) });
  return result?.messages.map(({ ruleId }) => ruleId) ?? [];
}

/** The rules that a text breaks as a file of the project, those about types aside. The file need not exist. */
export const faultsOf = (file: string, text: string) => faults(withoutTypes, file, text);

/** The rules that a text breaks in place of an existing file of the project. */
export const faultsWithTypes = (file: string, text: string) => faults(withTypes, file, text);
