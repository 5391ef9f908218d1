// Where a Chrome or Chromium may be installed on this computer.
import { existsSync } from "node:fs";
import path from "node:path";

/** What the search looks at; tests put in their own. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly environment: Readonly<Record<string, string | undefined>>;
  exists(file: string): boolean;
}

/** The computer we run on. */
export const thisComputer: Surroundings = { platform: process.platform, environment: process.env, exists: existsSync };

const linuxCommands = ["google-chrome-stable", "google-chrome", "chromium", "chromium-browser", "chrome"];
const linuxFiles = ["/opt/google/chrome/chrome", "/usr/lib/chromium/chromium", "/snap/bin/chromium"];
const macFiles = ["Google Chrome.app/Contents/MacOS/Google Chrome", "Chromium.app/Contents/MacOS/Chromium"];
const windowsFiles = ["Google\\Chrome\\Application\\chrome.exe", "Chromium\\Application\\chrome.exe"];

/** Paths of installed browsers that exist, likeliest first; empty when there is none. */
export function installedBrowsers(surroundings: Surroundings): readonly string[] {
  return placesToLook(surroundings).filter((file) => surroundings.exists(file));
}

function placesToLook({ platform, environment }: Surroundings): readonly string[] {
  if (platform === "darwin") {
    const folders = ["/Applications", ...(environment["HOME"] ? [`${environment["HOME"]}/Applications`] : [])];
    return macFiles.flatMap((file) => folders.map((folder) => `${folder}/${file}`));
  }
  if (platform === "win32") {
    const folders = ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((name) => environment[name] ?? []);
    return windowsFiles.flatMap((file) => folders.map((folder) => path.win32.join(folder, file)));
  }
  const folders = (environment["PATH"] ?? "").split(":").filter((folder) => folder.startsWith("/"));
  return [...linuxCommands.flatMap((command) => folders.map((folder) => path.posix.join(folder, command))), ...linuxFiles];
}
