// Makes dist/: one bundle for the program and one for each library entry, with the embedded data beside them.
// Everything the program needs at run time is inside the bundle, so an installed package has no dependencies.
//
//   --if-missing     does nothing where the program is built already
//   --types          declarations for the library entries too
//   --out FOLDER     somewhere else than dist
//   --program FILE   this file in place of src/commands/open-program.ts, and no library: for tests of the faces
import { execFileSync } from "node:child_process";
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const { values: flags } = parseArgs({
  options: {
    "if-missing": { type: "boolean" },
    types: { type: "boolean" },
    out: { type: "string", default: join(root, "dist") },
    program: { type: "string" },
  },
});
const dist = resolve(flags.out);

if (flags["if-missing"] && existsSync(join(dist, "mastwright.js"))) process.exit(0);

/** Ink's optional developer tools must be absent from the bundle: an external import of them fails at start. */
const withoutInkDevtools = {
  name: "without-ink-devtools",
  setup(b) {
    b.onResolve({ filter: /^react-devtools-core$/ }, () => ({
      path: "react-devtools-core",
      namespace: "empty",
    }));
    b.onLoad({ filter: /.*/, namespace: "empty" }, () => ({ contents: "export default {}" }));
    b.onLoad({ filter: /ink[\\/]build[\\/]devtools\.js$/ }, () => ({ contents: "" }));
  },
};
const withProgram = {
  name: "with-program",
  setup(b) {
    b.onResolve({ filter: /^\.\/open-program\.ts$/ }, () => ({ path: resolve(flags.program) }));
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
  absWorkingDir: root,
  plugins: flags.program ? [withoutInkDevtools, withProgram] : [withoutInkDevtools],
  define: { "process.env.NODE_ENV": '"production"' },
};

/** The licence of every package that went into the bundle, as each asks. */
function licences(inputs) {
  const packages = new Set(
    inputs.flatMap((file) => /^(?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1] ?? []),
  );
  const texts = [...packages].sort().map((name) => {
    const folder = join(root, "node_modules", name);
    const { version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
    const text = file === undefined ? `Licence: ${license}` : readFileSync(join(folder, file), "utf8").trim();
    return `${name} ${version} (${license})\n\n${text}`;
  });
  return `Mastwright contains these packages.\n\n${texts.join(`\n\n${"-".repeat(72)}\n\n`)}\n`;
}

rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });

const program = await build({
  ...common,
  metafile: true,
  entryPoints: {
    mastwright: "src/commands/main.ts",
    "ask-power": "src/commands/ask-power.ts",
    "ask-geotiff": "src/commands/ask-geotiff.ts",
  },
  banner: {
    js: "#!/usr/bin/env node\nimport{createRequire as mwRequire}from'node:module';const require=mwRequire(import.meta.url);",
  },
});
chmodSync(join(dist, "mastwright.js"), 0o755);
if (flags.program) process.exit(0);

const library = await build({
  ...common,
  metafile: true,
  entryPoints: { core: "src/core/index.ts", design: "src/design/index.ts" },
  chunkNames: "lib-[hash]",
});

writeFileSync(
  join(dist, "LICENSES.txt"),
  licences([...Object.keys(program.metafile.inputs), ...Object.keys(library.metafile.inputs)]),
);

mkdirSync(join(dist, "data"), { recursive: true });
for (const field of readdirSync(join(root, "src/core"), { withFileTypes: true })) {
  const data = join(root, "src/core", field.name, "data");
  if (field.isDirectory() && existsSync(data)) cpSync(data, join(dist, "data"), { recursive: true });
}

if (flags.types) {
  execFileSync(
    process.execPath,
    [
      join(root, "node_modules/typescript/bin/tsc"),
      ..."--noEmit false --declaration --emitDeclarationOnly --rewriteRelativeImportExtensions --rootDir .".split(
        " ",
      ),
      "--outDir",
      join(dist, "types"),
    ],
    { cwd: root, stdio: "inherit" },
  );
  // Only what the two library entries reach; a type of the program's own is nobody's business.
  const shown = new Set(["core", "design"]);
  const types = join(dist, "types");
  for (const room of readdirSync(types)) if (room !== "src") rmSync(join(types, room), { recursive: true });
  for (const room of readdirSync(join(types, "src")))
    if (!shown.has(room)) rmSync(join(types, "src", room), { recursive: true });
}
