// Makes dist/: one bundle for the program and one for each library entry, with the embedded data beside them.
// Everything the program needs at run time is inside the bundle, so an installed package has no dependencies.
import { execFileSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const dist = join(root, "dist");
const flags = new Set(process.argv.slice(2));

if (flags.has("--if-missing") && existsSync(join(dist, "mastwright.js"))) process.exit(0);

/** Ink's optional developer tools must be absent from the bundle: an external import of them fails at start. */
const withoutInkDevtools = {
  name: "without-ink-devtools",
  setup(b) {
    b.onResolve({ filter: /^react-devtools-core$/ }, () => ({ path: "react-devtools-core", namespace: "empty" }));
    b.onLoad({ filter: /.*/, namespace: "empty" }, () => ({ contents: "export default {}" }));
    b.onLoad({ filter: /ink[\\/]build[\\/]devtools\.js$/ }, () => ({ contents: "" }));
  },
};

const common = {
  bundle: true,
  platform: "node",
  target: "node20.19",
  format: "esm",
  splitting: true,
  outdir: dist,
  outbase: "src",
  legalComments: "none",
  minify: true,
  keepNames: false,
  logLevel: "warning",
  plugins: [withoutInkDevtools],
  define: { "process.env.NODE_ENV": '"production"' },
};

rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });

const programEntries = { mastwright: "src/commands/main.ts" };
if (existsSync(join(root, "src/commands/transcripts.ts"))) programEntries.transcripts = "src/commands/transcripts.ts";
await build({
  ...common,
  absWorkingDir: root,
  entryPoints: programEntries,
  banner: { js: "#!/usr/bin/env node\nimport{createRequire as mwRequire}from'node:module';const require=mwRequire(import.meta.url);" },
});
await build({
  ...common,
  absWorkingDir: root,
  entryPoints: { core: "src/core/index.ts", design: "src/design/index.ts" },
  chunkNames: "lib-[hash]",
});
chmodSync(join(dist, "mastwright.js"), 0o755);

mkdirSync(join(dist, "data"), { recursive: true });
for (const field of readdirSync(join(root, "src/core"), { withFileTypes: true })) {
  const data = join(root, "src/core", field.name, "data");
  if (field.isDirectory() && existsSync(data)) cpSync(data, join(dist, "data"), { recursive: true });
}

if (flags.has("--types")) {
  execFileSync(
    process.execPath,
    [
      join(root, "node_modules/typescript/bin/tsc"),
      ..."--noEmit false --declaration --emitDeclarationOnly --rewriteRelativeImportExtensions --rootDir . --outDir dist/types".split(" "),
    ],
    { cwd: root, stdio: "inherit" },
  );
}
