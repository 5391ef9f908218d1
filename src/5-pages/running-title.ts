// What a book is called where its title alone might name two.
import type { Definition } from "../1-definition/types.ts";

/** "Eleven tides (in inches)" where the title alone would name two books. */
export function runningTitle({ project, title, subtitle }: Definition, others: readonly Definition[]): string {
  const isDouble = others.some((other) => other.project !== project && other.title === title);
  return isDouble && subtitle ? `${title}: ${subtitle}` : title;
}
