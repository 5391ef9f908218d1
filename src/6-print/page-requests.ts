// Which requests a page that is being printed may make: itself and files below the output folder, nothing else.
import { realpathSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { HTTPRequest, Page } from "puppeteer";

/** What a page asked for, and what of it in vain; filled while the page loads. */
export interface PageRequests {
  /** Addresses outside the output folder. */
  readonly refused: ReadonlySet<string>;
  /** Files of the output folder that could not be read. */
  readonly missing: ReadonlySet<string>;
  /** Files of the output folder that it got. */
  readonly loaded: ReadonlySet<string>;
  /** Forgets all that was noted; what earlier requests come to is not noted any more. To be called before the tab goes to another page. */
  forget(): void;
}

/** Refuses every request of the page but those for files below `folder`, and keeps a note of each one that was refused or failed. */
export async function refuseRequests(page: Page, folder: string): Promise<PageRequests> {
  const refused = new Set<string>();
  const missing = new Set<string>();
  const loaded = new Set<string>();
  let noted = new WeakSet<HTTPRequest>();
  const root = realpathSync(folder);
  await page.setRequestInterception(true);
  page.on("request", (request) => {
    if (request.isInterceptResolutionHandled()) return;
    noted.add(request);
    const allowed = isFileBelow(request.url(), root);
    if (allowed) loaded.add(fileName(request, root));
    else refused.add(shown(request.url()));
    // A page that is gone cannot be answered; its loading fails with a message of its own.
    void (allowed ? request.continue() : request.abort("accessdenied")).catch(() => undefined);
  });
  page.on("requestfailed", (request) => {
    if (!noted.has(request) || !isFileBelow(request.url(), root)) return;
    missing.add(`${fileName(request, root)} (${request.failure()?.errorText ?? "no reason given"})`);
  });
  const forget = (): void => {
    noted = new WeakSet();
    for (const notes of [refused, missing, loaded]) notes.clear();
  };
  return { refused, missing, loaded, forget };
}

/** The same in words, in an order that does not depend on which request came first; null when nothing was asked for in vain. */
export function describeRefusals({ refused, missing }: Pick<PageRequests, "refused" | "missing">): string | null {
  const reasons = [
    ...(refused.size > 0 ? [`the page asks for ${[...refused].toSorted().join(", ")}: refused, only files of the output folder are printed`] : []),
    ...(missing.size > 0 ? [`the page needs ${[...missing].toSorted().join(", ")}: cannot be read`] : []),
  ];
  return reasons.length > 0 ? reasons.join("; ") : null;
}

/** Whether the address is that of an existing or missing file below the folder; links out of the folder are followed first. */
export function isFileBelow(address: string, realFolder: string): boolean {
  if (!URL.canParse(address) || new URL(address).protocol !== "file:") return false;
  try {
    const file = realPath(fileURLToPath(address));
    return file.startsWith(realFolder.endsWith(path.sep) ? realFolder : realFolder + path.sep);
  } catch {
    // A file address with a host or an encoded slash is no file of ours.
    return false;
  }
}

function realPath(file: string): string {
  try {
    return realpathSync(file);
  } catch {
    const parent = path.dirname(file);
    // A missing file is judged by where it would be.
    return parent === file ? file : path.join(realPath(parent), path.basename(file));
  }
}

function fileName(request: HTTPRequest, root: string): string {
  return path.relative(root, realPath(fileURLToPath(request.url()))).split(path.sep).join("/");
}

function shown(address: string): string {
  return address.length > 200 ? `${address.slice(0, 200)}…` : address;
}
