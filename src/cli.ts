// The command line: build, preview and check; what cannot be carried out is usage (status 2), what breaks is ours (status 3).
import path from "node:path";
import { parseArgs } from "node:util";
import type { ExitStatus } from "./build.ts";
import { UsageFault } from "./build/choose.ts";
import { faultInWords } from "./build/fault-words.ts";
import { openProgress } from "./build/progress.ts";
import { nearestOf } from "./problems/nearest.ts";

const help = `Benchleaf: illustrated instructions for hand-bound books from one YAML definition each.

usage
  npm run build                        build every project under content/ into dist/
  npm run build -- <project> …         build only these
  npm run preview                      show the pages on this computer and rebuild when a file changes
  npx tsx src/cli.ts check <project> … report problems and write nothing

options
  --content <folder>   where the projects are       (content)
  --output <folder>    where the results go         (dist)
  --html-only          pages only, no PDFs
  --afresh             build everything anew; otherwise what has not changed since the last build is left as it is
  --tabs <count>       documents printed at a time  (4)
  --port <number>      of the preview               (8080)
  --help               this text

exit status
  0 all built   1 problems in definitions   2 usage   3 fault of ours, or no browser to print with
`;

const commands = ["build", "preview", "check"] as const;

const optionTypes = {
  content: { type: "string", default: "content" },
  output: { type: "string", default: "dist" },
  "html-only": { type: "boolean", default: false },
  afresh: { type: "boolean", default: false },
  tabs: { type: "string", default: "4" },
  port: { type: "string", default: "8080" },
  help: { type: "boolean", default: false, short: "h" },
} as const;

/** Runs a command and gives its exit status. Never throws. */
export async function run(given: readonly string[]): Promise<ExitStatus> {
  const progress = openProgress(process.stderr);
  const write = (text: string): void => void process.stdout.write(text);
  try {
    const { values, positionals } = readCommand(given);
    if (values.help) {
      write(help);
      return 0;
    }
    const [command = "build", ...projects] = positionals;
    const content = path.resolve(values.content);
    const output = path.resolve(values.output);
    // Eleventy's paths are relative to the working folder.
    process.chdir(path.resolve(import.meta.dirname, ".."));
    const port = wholeNumber("port", values.port, 1, 65535);
    const tabs = wholeNumber("tabs", values.tabs, 1, 32);
    // Each command is loaded when it is its turn: most of the program and its packages serve one command only, and loading takes seconds.
    if (command === "check") return await (await import("./build/check.ts")).check({ projects, content, progress });
    if (command === "preview") return await (await import("./preview.ts")).preview({ content, port, progress });
    return await (await import("./build.ts")).build({ projects, content, output, print: !values["html-only"], afresh: values.afresh, tabs, progress, write });
  } catch (cause) {
    progress.done();
    if (cause instanceof UsageFault) {
      progress.say(`${cause.message}\nsee --help`);
      return 2;
    }
    progress.say(faultInWords(cause instanceof Error ? cause : new Error(String(cause))));
    return 3;
  }
}

function readCommand(given: readonly string[]): ReturnType<typeof parse> {
  try {
    const parsed = parse(given);
    const [command] = parsed.positionals;
    if (command !== undefined && !commands.some((known) => known === command)) {
      const near = nearestOf(command, commands);
      throw new UsageFault(`no command is called "${command}"${near ? `; did you mean ${near}?` : ""}`);
    }
    return parsed;
  } catch (cause) {
    if (cause instanceof UsageFault) throw cause;
    // parseArgs explains at length how to pass a value that begins with a dash; its first sentence says what is wrong.
    const message = cause instanceof Error ? cause.message.split(/\. |\n/)[0]! : String(cause);
    const [, option] = /'--([^' ]+)/.exec(message) ?? [];
    const near = option === undefined ? null : nearestOf(option, Object.keys(optionTypes));
    throw new UsageFault(`${message.charAt(0).toLowerCase()}${message.slice(1)}${near && near !== option ? `; did you mean --${near}?` : ""}`);
  }
}

function parse(given: readonly string[]) {
  return parseArgs({ args: [...given], options: optionTypes, allowPositionals: true, strict: true });
}

function wholeNumber(option: string, text: string, least: number, most: number): number {
  const value = Number(text);
  if (Number.isInteger(value) && least <= value && value <= most) return value;
  throw new UsageFault(`--${option} is "${text}", but must be a whole number from ${least} to ${most}`);
}

if (process.argv[1] !== undefined && path.resolve(process.argv[1]) === import.meta.filename) process.exitCode = await run(process.argv.slice(2));
