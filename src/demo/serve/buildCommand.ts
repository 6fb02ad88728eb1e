import { addinBuild, build, isStale, sheetBuild } from "./freshBuild";
import { runCommand } from "./runCommand";

// `npm start` and `npm run sheet` run this first. Nothing is built again whose source files have not changed.
await runCommand(() => {
  const parts = process.argv.includes("--sheet") ? [addinBuild, sheetBuild] : [addinBuild];
  for (const part of parts) if (isStale(part)) build(part);
  return Promise.resolve();
});
