// Lays a variant's keys over the definition; every value keeps the place where it was written.
import type { Problem } from "../problems/problem.ts";
import { slugOf } from "./names.ts";
import { variantKeys } from "./shared-keys.ts";
import { isScalarNode, nodeAt } from "./tree.ts";
import type { Entry, MapNode, Node, ScalarNode } from "./tree.ts";

/** One book to be read: the definition itself, or the definition with a variant laid over it. */
export interface Version {
  readonly project: string;
  /** Null for the definition itself. */
  readonly variant: { readonly name: string; readonly written: MapNode } | null;
  readonly root: MapNode;
  /** The scalars that were written inside the variant: bare numbers there are in the variant's own unit. */
  readonly ownScalars: ReadonlySet<ScalarNode>;
}

/** The definition and its variants, in the order written. Variants without a usable name are left out: that is a problem of its own. */
export function versionsOf(project: string, file: string, root: MapNode): { readonly versions: readonly Version[]; readonly problems: readonly Problem[] } {
  const entries = new Map(root.entries);
  entries.delete("variants");
  const base: MapNode = { ...root, entries };
  const versions: Version[] = [{ project, variant: null, root, ownScalars: new Set() }];
  const problems: Problem[] = [];
  const taken = new Map<string, string>();
  const written = root.entries.get("variants")?.value;
  for (const variant of written?.kind === "list" ? written.items : []) {
    const name = nodeAt(variant, ["name"]);
    if (variant.kind !== "map" || !name || !isScalarNode(name) || name.isEmpty || name.text.trim() === "") continue;
    const slug = slugOf(name.text);
    const report = (code: "name-taken" | "value-unknown", message: string, hint: string): void => {
      problems.push({ code, severity: "error", message, hint, place: { file, span: name.span } });
    };
    if (slug === "") report("value-unknown", `name: "${name.text.trim().slice(0, 40)}" gives no name for a folder`, "use letters from a to z or digits in it");
    else if (taken.has(slug)) report("name-taken", `name: the folder ${project}-${slug} is that of the variant "${taken.get(slug)!}" already`, "name one of the two otherwise");
    else {
      taken.set(slug, name.text.trim());
      versions.push({
        project: `${project}-${slug}`,
        variant: { name: name.text.trim(), written: variant },
        root: layOver(base, onlyVariantKeys(variant)),
        ownScalars: new Set(scalarsIn(variant)),
      });
    }
  }
  return { versions, problems };
}

/** Keys that a variant cannot change are reported where the frame of the variant is checked; here they have no effect. */
function onlyVariantKeys(variant: MapNode): MapNode {
  const known: readonly string[] = variantKeys;
  return { ...variant, entries: new Map([...variant.entries].filter(([key]) => known.includes(key))) };
}

/**
 * Mappings are merged key by key, everything else is replaced; a key with nothing behind it takes the key away,
 * as null does in JSON Merge Patch (RFC 7396).
 */
function layOver(below: MapNode, over: MapNode, path: readonly string[] = []): MapNode {
  const entries = new Map<string, Entry>(below.entries);
  // A ruler's step belongs to its unit: with another unit the definition's own step has no meaning.
  if (path.join("/") === "units" && over.entries.has("governing")) entries.delete("step");
  for (const [key, entry] of over.entries) {
    const at = [...path, key];
    const known = entries.get(key);
    const knownInFull = known && inFull(known.value, at);
    if (known && isScalarNode(entry.value) && entry.value.isEmpty) entries.delete(key);
    else if (knownInFull?.kind === "map" && entry.value.kind === "map") entries.set(key, { ...known, keySpan: entry.keySpan, value: layOver(knownInFull, entry.value, at) });
    else entries.set(key, entry);
  }
  return { ...below, entries };
}

/** A value that stands for a mapping with one key (`units: mm`, `stubs: PVA`), as that mapping. */
function inFull(node: Node, path: readonly string[]): Node {
  const key = path.join("/") === "units" ? "governing" : path[0] === "adhesives" && path.length === 2 ? "use" : null;
  if (key === null || !isScalarNode(node) || node.isEmpty) return node;
  return { kind: "map", span: node.span, entries: new Map([[key, { keySpan: node.span, value: node }]]) };
}

function scalarsIn(node: Node): readonly ScalarNode[] {
  if (node.kind === "scalar") return [node];
  return node.kind === "list" ? node.items.flatMap(scalarsIn) : [...node.entries.values()].flatMap((entry) => scalarsIn(entry.value));
}
