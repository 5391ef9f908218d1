// What went wrong in one line, for the author.

/** The first line of an error's message that says something. */
export function firstLine(cause: unknown): string {
  const text = cause instanceof Error ? cause.message : String(cause);
  return text.split("\n").find((line) => line.trim() !== "")?.trim() ?? "unknown fault";
}
