// Fingerprints of contents: two things with the same fingerprint are the same, wherever and whenever they were made.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";

/** The fingerprint of several parts in order; where one part ends and the next begins counts. */
export function digestOf(parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash("sha256");
  for (const part of parts) {
    const bytes = typeof part === "string" ? Buffer.from(part) : part;
    hash.update(`${bytes.length}:`).update(bytes);
  }
  return hash.digest("hex");
}

/** The fingerprint of a file's bytes; null when it cannot be read. */
export async function digestOfFile(file: string): Promise<string | null> {
  const bytes = await readFile(file).catch(() => null);
  return bytes && digestOf([bytes]);
}
