// The shape of a binding's file in this phase: it exports `build`.
import type { BindingId } from "../catalogue/bindings.ts";
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "./types.ts";

/** Builds the model of one binding; faults of the design come back as findings, mistakes of ours are thrown. */
export type BuildBinding<B extends BindingId> = (definition: Definition<B>) => Model<B>;
