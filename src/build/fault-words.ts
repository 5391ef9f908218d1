// What the person at the terminal is told about a mistake of ours.

/** A mistake of ours in words, with its cause; the author gets no stack trace, whoever asks for it by DEBUG does. */
export function faultInWords(fault: Error): string {
  const message = fault.message.startsWith("internal error:") ? fault.message : `internal error: ${fault.message}`;
  const causes: string[] = [];
  for (let cause: unknown = fault.cause; cause instanceof Error && causes.length < 8; cause = cause.cause) causes.push(`caused by: ${cause.message}`);
  const trace = process.env["DEBUG"] && fault.stack ? [fault.stack] : [];
  return [message, ...causes, "this is a mistake in Benchleaf, not in your definition; please report it with the definition", ...trace].join("\n  ");
}
