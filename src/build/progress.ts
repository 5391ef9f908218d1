// What a build says while it runs: one line that is written over on a terminal, plain lines elsewhere.

/** The part of a stream that is written to. */
export interface Terminal {
  write(text: string): unknown;
  readonly isTTY?: boolean | undefined;
  readonly columns?: number | undefined;
}

/** Tells the person at the terminal what is going on. */
export interface Progress {
  /** What is being done now; on a terminal it takes the place of the last one. */
  step(text: string): void;
  /** Something that stays. */
  say(text: string): void;
  /** Takes the last step off the terminal. */
  done(): void;
}

const clearLine = "\r\u001b[2K";

/** Progress on a stream. */
export function openProgress(terminal: Terminal): Progress {
  if (!terminal.isTTY) {
    return { step: (text) => void terminal.write(`${text}\n`), say: (text) => void terminal.write(`${text}\n`), done: () => undefined };
  }
  const width = Math.max(20, (terminal.columns ?? 80) - 1);
  return {
    step: (text) => void terminal.write(clearLine + (text.length > width ? `${text.slice(0, width - 1)}…` : text)),
    say: (text) => void terminal.write(`${clearLine}${text}\n`),
    done: () => void terminal.write(clearLine),
  };
}

/** "1.4 MB", "312 kB", "980 B". */
export function sizeInWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`;
  if (bytes < 1_000_000) return `${Math.round(bytes / 1000)} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}

/** "0.8 s", "1 min 05 s". */
export function timeInWords(milliseconds: number): string {
  const seconds = milliseconds / 1000;
  if (seconds < 60) return `${seconds.toFixed(1)} s`;
  return `${Math.floor(seconds / 60)} min ${String(Math.floor(seconds % 60)).padStart(2, "0")} s`;
}

/** "1 page", "3 pages". */
export function countOf(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
