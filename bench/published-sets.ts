// Reads the sets of published instances, which lie beside the project and are no part of it.
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

const folder = path.resolve(import.meta.dirname, "../../shared/data");

/** One instance of a set: what it is called, what is published about it, and the rest as its `meta` says. */
export interface Instance {
  readonly id: string;
  readonly best: Readonly<Record<string, number>>;
  readonly items: readonly (readonly number[])[];
  readonly sheets?: readonly { readonly w: number; readonly h: number; readonly cost?: number }[];
  readonly cap?: number;
}

/** The instances of a set, every n-th of them; `null`, with a line that says so, when the set is not there. */
export function readSet(name: string, every: number): readonly Instance[] | null {
  const file = path.join(folder, `${name}.json`);
  if (!existsSync(file)) {
    console.log(`${name}: not there; the sets are looked for in ../shared/data beside the project`);
    return null;
  }
  const { instances } = JSON.parse(readFileSync(file, "utf8")) as { readonly instances: readonly Instance[] };
  return instances.filter((_, index) => index % every === 0);
}
