// The shape of a binding's file in this phase: it exports one `bindingDefinition`.
import { bindingIds } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import type { Length } from "../units/length.ts";
import type { Field, FieldContext } from "./leaf.ts";
import type { BookOf } from "./types.ts";

/** What a binding adds to the keys that all definitions share. */
export interface BindingDefinition<B extends BindingId = BindingId> {
  readonly id: B;
  /** The `book:` section. */
  book(context: FieldContext): Field<BookOf<B>>;
  /** Keys of `book:` of which only one may be written. */
  readonly exclusiveKeys: readonly (readonly [string, string])[];
  /** Its materials by role, in the order of the material list. */
  readonly materials: Readonly<Record<string, MaterialRole>>;
  /** Thickness of a material that the book's own sizes give, with its path in the definition; null for every other role. */
  thicknessFromBook(role: string, book: BookOf<B>): { readonly thickness: Length; readonly path: string } | null;
  /** The values that an author may give as measured off the real object; limits in millimetres. */
  readonly measured: Readonly<Record<string, { readonly about: string; readonly least: string; readonly most: string; readonly example: string }>>;
  /** Its glueing jobs with the id of the usual adhesive. */
  readonly adhesives: Readonly<Record<string, { readonly about: string; readonly usual: string }>>;
  /** Ids of its steps, in order. */
  readonly steps: readonly string[];
}

/** A material of a binding, and the stand-in when the author does not say. */
export interface MaterialRole {
  readonly about: string;
  readonly usual: { readonly name: string; readonly thickness: Length | null; readonly grain: "long" | "short" | "none" | "unknown" };
  /** Which keys make sense: a sheet has a thickness, a grain and sheet sizes; a board all but the thickness; a ribbon only a thickness. */
  readonly keys: "sheet" | "board" | "band" | "hardware" | "extended hardware";
}

const loaded = new Map<BindingId, BindingDefinition>();
for (const id of bindingIds) {
  const file = (await import(/* @vite-ignore */ `./${id}.ts`)) as { bindingDefinition: BindingDefinition };
  loaded.set(id, file.bindingDefinition);
}

/** What a binding adds to the shared keys. */
export function definitionOf(id: BindingId): BindingDefinition {
  return loaded.get(id)!;
}
