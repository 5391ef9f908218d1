// The command line: help, usage faults with the nearest word, and the exit status that a shell sees.
import { spawnSync } from "node:child_process";
import path from "node:path";
import { expect, test } from "vitest";
import { openWorkshop } from "./build/workshop.ts";

test("help prints usage to standard output and is no fault", async () => {
  const { status, wrote, said } = await (await openWorkshop()).run("--help");
  expect([status, said]).toEqual([0, ""]);
  for (const words of ["npm run build", "npm run preview", "--html-only", "exit status"]) expect(wrote).toContain(words);
});

test("an unknown project is usage, with the nearest name and the list of those there are", async () => {
  const workshop = await openWorkshop("harbour-album");
  const { status, said } = await workshop.run("build", "harbor-album");
  expect(status).toBe(2);
  expect(said).toContain('no project is called "harbor-album"; did you mean harbour-album? (there are: harbour-album)');
});

test("an unknown option, command or number is usage", async () => {
  const workshop = await openWorkshop();
  const { status, said } = await workshop.run("build", "--html-onyl");
  expect(status).toBe(2);
  expect(said).toContain("unknown option '--html-onyl'; did you mean --html-only?");
  const command = await workshop.run("biuld");
  expect([command.status, command.said.includes('no command is called "biuld"; did you mean build?')]).toEqual([2, true]);
  for (const tabs of ["0", "33", "two", "1.5"]) expect((await workshop.run("build", "--tabs", tabs)).status, tabs).toBe(2);
});

test("check reports problems and writes nothing", async () => {
  const workshop = await openWorkshop("sound", "spoiled");
  await workshop.edit("spoiled", (text) => text.replace("units: mm", "units: ells"));
  const { status, said } = await workshop.run("check");
  expect(status).toBe(1);
  expect(said).toContain("content/spoiled/project.yaml:");
  expect(said).toContain("1 of 2 projects can be built");
  await expect(workshop.files()).rejects.toThrow();
  const warned = await workshop.edit("sound", (text) => text.replace(/^book:$/m, "tools: {ruler length: 100 mm}\nbook:")).then(() => workshop.run("check", "sound"));
  expect(warned.status).toBe(0);
  expect(warned.said).toMatch(/sound: warning about the design: [\s\S]*\[longer-than-tool\]\n {2}hint: /);
});

test("the process ends with the command's status", () => {
  const cli = path.resolve(import.meta.dirname, "../src/cli.ts");
  const result = spawnSync(process.execPath, ["--import", "tsx", cli, "build", "--no-such-option"], { encoding: "utf8", cwd: path.dirname(cli) });
  expect([result.status, result.stdout]).toEqual([2, ""]);
  expect(result.stderr).toContain("see --help");
});
