import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import HtmlWebpackPlugin from "html-webpack-plugin";
import TerserPlugin from "terser-webpack-plugin";
import webpack from "webpack";
import { buildAddresses, DEVELOPMENT_ADDRESS } from "./src/addin/buildAddresses.js";

const root = path.dirname(fileURLToPath(import.meta.url));

/** The files that declare worksheet functions. The metadata generator and the bundle read the same list. */
const functionFiles = readdirSync(path.join(root, "src", "functions"), { recursive: true })
  .map((file) => path.join(root, "src", "functions", file))
  .filter((file) => file.endsWith(".ts") && readFileSync(file, "utf8").includes("@customfunction"))
  .toSorted();

const { address, problem, ...pageAddresses } = buildAddresses(process.env);
if (problem !== undefined) {
  console.error(problem);
  process.exit(1);
}

/**
 * Writes the manifest with the address of the add-in, and adds to functions.json what the metadata generator does not write: that
 * error cells are passed to the functions, and the help page of each function (written by src/help).
 */
class FinishedMetadataPlugin {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("FinishedMetadataPlugin", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "FinishedMetadataPlugin", stage }, () => {
        const emitted = compilation.getAsset("functions.json");
        if (emitted) {
          const metadata = JSON.parse(emitted.source.source().toString());
          metadata.allowErrorForDataTypeAny = true;
          for (const entry of metadata.functions)
            entry.helpUrl = `${address}help/${entry.name}.html`;
          const text = `${JSON.stringify(metadata, null, 2)}\n`;
          compilation.updateAsset("functions.json", new webpack.sources.RawSource(text));
        }
        const template = readFileSync(path.join(root, "manifest.xml"), "utf8");
        const manifest = template.replaceAll(DEVELOPMENT_ADDRESS, address);
        compilation.emitAsset("manifest.xml", new webpack.sources.RawSource(manifest));
      });
    });
  }
}

/** Writes the licenses of the packages in a script beside it, as the licenses require. */
class LicensesPlugin {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("LicensesPlugin", (compilation) => {
      const stage = webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "LicensesPlugin", stage }, () => {
        for (const chunk of compilation.chunks) {
          const packages = packagesOf(compilation.chunkGraph.getChunkModules(chunk));
          if (packages.size === 0) continue;
          const text = [...packages.keys()].toSorted().map((name) => packages.get(name));
          const source = new webpack.sources.RawSource(text.join("\n"));
          const file = `${chunk.name}.js.LICENSE.txt`;
          // A script with notices in its comments has this file already, and names it in its first line.
          if (compilation.getAsset(file)) compilation.updateAsset(file, source);
          else {
            compilation.emitAsset(file, source);
            compilation.updateAsset(
              `${chunk.name}.js`,
              (script) =>
                new webpack.sources.ConcatSource(
                  `/*! For license information please see ${file} */\n`,
                  script
                )
            );
          }
        }
      });
    });
  }
}

/** The folder of the package that a module is part of. */
const PACKAGE_FOLDER = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/;

/** The packages among the modules: the license of each, by the name of the package. */
function packagesOf(modules) {
  const found = new Map();
  for (const { resource } of modules.flatMap((one) => one.modules ?? one)) {
    const folder = PACKAGE_FOLDER.exec(resource ?? "")?.[0];
    if (folder === undefined) continue;
    const described = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8"));
    const license = readdirSync(folder).find((file) => /^licen[cs]e/i.test(file));
    const text =
      license === undefined
        ? mitLicense(described)
        : readFileSync(path.join(folder, license), "utf8").trim();
    found.set(
      described.name,
      `${described.name} ${described.version} (${described.license})\n\n${text}\n`
    );
  }
  return found;
}

/** The license of a package that says it is under the MIT license but has no license file: the terms in our own, with its author. */
function mitLicense({ name, license, author }) {
  if (license !== "MIT" || author === undefined)
    throw new Error(`The package ${name} has no license file.`);
  const terms = readFileSync(path.join(root, "LICENSE"), "utf8").trim();
  return terms.replace(/^Copyright .*$/m, `Copyright (c) ${author.name ?? author}`);
}

/** A rules file without what only its readers need: the units of the figures, and of a document more than its citation and date. */
function rulesForScript(text) {
  const { documents, ...rules } = JSON.parse(text);
  delete rules.units;
  if (documents === undefined) return rules;
  const cited = Object.entries(documents).map(([id, { cite, read }]) => [id, { cite, read }]);
  return { ...rules, documents: Object.fromEntries(cited) };
}

/** Settings of every part of the build. */
const common = {
  mode: "production",
  devtool: false,
  context: root,
  target: ["web", "es2020"],
  output: {
    path: path.join(root, "dist"),
    filename: "[name].js",
    assetModuleFilename: "icons/[name][ext]",
  },
  // Modules are numbered by their paths, which must not depend on where the project is or what is linked into it.
  resolve: { extensions: [".tsx", ".ts", ".js"], symlinks: false },
  resolveLoader: { symlinks: false },
  module: {
    rules: [
      {
        test: /\.tsx?$/,
        exclude: /node_modules/,
        use: {
          loader: "ts-loader",
          // Types are checked by `npm run typecheck`, not again in every build.
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
      },
      { test: /\.json$/, include: path.join(root, "rules"), parser: { parse: rulesForScript } },
      { test: /\.css$/, type: "asset/resource", generator: { filename: "[name][ext]" } },
      { test: /\.png$/, type: "asset/resource" },
    ],
  },
  performance: { hints: "error", maxAssetSize: 460_000, maxEntrypointSize: 680_000 },
  stats: "errors-warnings",
};

/**
 * The worksheet functions, registered with the host, functions.json, which describes them to the host, and the page of the add-in.
 * The page calls the functions too, but they must be registered with the host only once: its script takes them from functions.js,
 * which runs without it.
 */
const addin = {
  ...common,
  name: "addin",
  entry: {
    functions: functionFiles,
    addin: { import: path.join(root, "src", "addin", "addin.tsx"), dependOn: "functions" },
    outside: path.join(root, "src", "addin", "outside.ts"),
  },
  // The style sheet and the icons are beside the page. Otherwise the script would look up the address of the page.
  output: { ...common.output, publicPath: "" },
  plugins: [
    new CustomFunctionsMetadataPlugin({ output: "functions.json", input: functionFiles }),
    new FinishedMetadataPlugin(),
    new HtmlWebpackPlugin({
      filename: "addin.html",
      template: path.join(root, "src", "addin", "addin.html"),
      templateParameters: pageAddresses,
      inject: false,
      minify: false,
    }),
    new LicensesPlugin(),
  ],
};

/** The demo sheet, to use the functions in a browser without Excel. It is not part of the add-in and is built only on request. */
const sheet = {
  ...common,
  name: "sheet",
  entry: { sheet: path.join(root, "src", "demo", "sheet", "sheet.ts") },
  output: { ...common.output, path: path.join(root, "dist", "sheet") },
  module: {
    rules: [
      ...common.module.rules.map((rule) =>
        rule.test.test("a.css")
          ? {
              ...rule,
              generator: {
                filename: ({ filename }) =>
                  filename.includes("univerjs") ? "grid.css" : "[name][ext]",
              },
            }
          : rule
      ),
      { resourceQuery: /^\?raw$/, type: "asset/source" },
    ],
  },
  plugins: [
    ["index.html", "sheet.html"],
    ["functions.html", "functions.html"],
  ].map(
    ([filename, template]) =>
      new HtmlWebpackPlugin({
        filename,
        template: path.join(root, "src", "demo", "sheet", template),
        inject: false,
        minify: false,
      })
  ),
  optimization: {
    concatenateModules: false,
    // This minimizer takes seconds for the grid library; the usual one takes minutes.
    minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })],
  },
  performance: { hints: false },
  cache: { type: "filesystem", buildDependencies: { config: [fileURLToPath(import.meta.url)] } },
};

/** `webpack` builds the add-in, `webpack --env sheet` the demo sheet. */
export default (environment = {}) => (environment.sheet ? sheet : addin);
