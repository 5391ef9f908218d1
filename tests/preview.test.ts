// The preview as its user meets it: pages at once, new pages after a change, problems in the terminal while the old pages stay.
import { spawn } from "node:child_process";
import type { ChildProcess } from "node:child_process";
import { once } from "node:events";
import path from "node:path";
import { afterAll, expect, test } from "vitest";
import { openWorkshop } from "./build/workshop.ts";

const cli = path.resolve(import.meta.dirname, "../src/cli.ts");
let server: ChildProcess | null = null;
let said = "";

afterAll(async () => {
  if (server && server.exitCode === null) {
    server.kill();
    await once(server, "exit");
  }
});

/** Waits until the look finds what is wanted; the last thing seen is in the failure. */
async function until(wanted: (seen: string) => boolean, look: () => Promise<string>): Promise<string> {
  let seen = "";
  for (let tries = 0; tries < 300; tries += 1) {
    seen = await look().catch(() => seen);
    if (wanted(seen)) return seen;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Error(`waited in vain; last seen: ${seen.slice(-2000)}\nsaid: ${said}`);
}

test("the preview shows a project, follows its changes, and keeps its pages while the definition has problems", async () => {
  const workshop = await openWorkshop("album");
  server = spawn(process.execPath, ["--import", "tsx", cli, "preview", "--content", workshop.content, "--port", "8391"], { stdio: ["ignore", "pipe", "pipe"] });
  server.stdout!.on("data", (data) => (said += String(data)));
  server.stderr!.on("data", (data) => (said += String(data)));
  await until((text) => /Server at http:\/\/localhost:\d+/.test(text), () => Promise.resolve(said));
  const address = /Server at (http:\/\/localhost:\d+)/.exec(said)![1]!;
  const page = async (file: string): Promise<string> => (await fetch(`${address}/${file}`)).text();
  expect(await page("album/index.html")).toContain("<h1>Harbour album</h1>");
  expect(await page("album/index.html")).not.toContain(".pdf");
  await workshop.edit("album", (text) => text.replace("title: Harbour album", "title: Quay album"));
  await until((html) => html.includes("<h1>Quay album</h1>"), () => page("album/index.html"));
  await workshop.edit("album", (text) => text.replace("stubs: 10", "stubs: ten"));
  await until((text) => text.includes('stubs is "ten"'), () => Promise.resolve(said));
  await until((html) => html.includes("Stale."), () => page("index.html"));
  expect(await page("album/index.html")).toContain("<h1>Quay album</h1>");
});
