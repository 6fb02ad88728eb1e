import path from "node:path";
import { pathToFileURL } from "node:url";
import webpack from "webpack";

const [, , folder = "."] = process.argv;

const { default: configured } = (await import(
  pathToFileURL(path.join(folder, "webpack.config.js")).href
)) as { default: () => webpack.Configuration };

/** The modules of a chunk, including those that webpack joined into one. */
function partsOf(module: webpack.Module): readonly webpack.Module[] {
  return "modules" in module ? (module.modules as webpack.Module[]) : [module];
}

/** The package a file belongs to, by its path. */
function packageOf(file: string): string | undefined {
  return /.*[\\/]node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(file)?.[1]?.replace("\\", "/");
}

/** The packages in each script, by the name of the script. */
function packagesByScript({ chunks, chunkGraph }: webpack.Compilation): [string, string[]][] {
  return [...chunks].map((chunk) => {
    const files = chunkGraph
      .getChunkModules(chunk)
      .flatMap(partsOf)
      .map((module) => (module instanceof webpack.NormalModule ? module.resource : ""));
    const packages = new Set(files.map(packageOf).filter((name) => name !== undefined));
    return [chunk.name ?? "", [...packages].toSorted()];
  });
}

/**
 * Runs in a process of its own, in the time zone and language of its environment. Builds the add-in in a folder
 * without any cache, and prints the packages in each script.
 */
const compiler = webpack({ ...configured(), cache: false });
compiler.run((failed, stats) => {
  if (failed || !stats || stats.hasErrors()) throw failed ?? new Error(stats?.toString());
  process.stdout.write(JSON.stringify(Object.fromEntries(packagesByScript(stats.compilation))));
});
