// Unpacks the Chromium that comes inside the npm package @sparticuz/chromium into a folder of our own.
import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { promisify } from "node:util";

/** An unpacked browser with what must be in its environment to start. */
export interface ShippedBrowser {
  readonly executable: string;
  readonly environment: Readonly<Record<string, string>>;
}

/**
 * Unpacks the shipped browser once for each version and returns where it is. The package itself unpacks into the system's folder for temporary files
 * under a fixed name, half-written while another process already uses it; we give it a new folder and rename that when it is whole.
 * Throws when the package is missing, is not for this processor, or the folder cannot be written.
 */
export async function unpackShippedBrowser(): Promise<ShippedBrowser> {
  if (process.arch !== "x64") throw new Error(`@sparticuz/chromium has no browser for ${process.arch}`);
  const packageFolder = path.resolve(createRequire(import.meta.url).resolve("@sparticuz/chromium"), "../../..");
  const { version } = JSON.parse(await readFile(path.join(packageFolder, "package.json"), "utf8")) as { version: string };
  const cache = path.resolve(packageFolder, "../../.cache/benchleaf");
  const folder = path.join(cache, `chromium-${version}`);
  if (!existsSync(folder)) await unpackInto(folder, cache, packageFolder);
  return {
    executable: path.join(folder, "chromium"),
    environment: {
      // The package brings the few libraries that a bare container lacks, and one font, so that a character which our fonts
      // lack looks the same on every computer.
      LD_LIBRARY_PATH: [path.join(folder, "al2023/lib"), process.env["LD_LIBRARY_PATH"]].filter(Boolean).join(":"),
      FONTCONFIG_PATH: path.join(folder, "fonts"),
    },
  };
}

async function unpackInto(folder: string, cache: string, packageFolder: string): Promise<void> {
  await mkdir(cache, { recursive: true });
  const unfinished = await mkdtemp(path.join(cache, "unpacking-"));
  try {
    await runPackage(packageFolder, unfinished);
    await writeFile(path.join(unfinished, "fonts/fonts.conf"), fontSettings);
    await rename(unfinished, folder).catch((cause: unknown) => {
      // Another process was first: its folder is as good.
      if (!existsSync(folder)) throw cause;
    });
  } finally {
    await rm(unfinished, { recursive: true, force: true });
  }
}

/** The package takes its target from TMPDIR and adds the libraries only when it believes to run where they are always missing. */
async function runPackage(packageFolder: string, target: string): Promise<void> {
  const program = `import chromium from "@sparticuz/chromium"; await chromium.executablePath();`;
  const { NODE_OPTIONS: _ours, ...environment } = process.env;
  await promisify(execFile)(process.execPath, ["--input-type=module", "--eval", program], {
    cwd: packageFolder,
    env: { ...environment, TMPDIR: target, AWS_LAMBDA_JS_RUNTIME: "nodejs20.x" },
  });
}

const fontSettings = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir prefix="relative">fonts</dir></fontconfig>
`;
