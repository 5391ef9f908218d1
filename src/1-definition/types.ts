// The product of phase 1: a checked definition in which every length is exact and every key knows where it was written.
import type { CatalogueAdhesive } from "../catalogue/adhesives.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import type { DocumentId } from "../catalogue/documents.ts";
import type { PaperId } from "../catalogue/papers.ts";
import type { ToolId } from "../catalogue/tools.ts";
import type { Place, Problem } from "../problems/problem.ts";
import type { Length, Unit } from "../units/length.ts";
import type { Rational } from "../units/rational.ts";
import type { LabelSheet } from "./label-keys.ts";

/** Each binding adds the type of its `book:` section here, from its own file, by declaration merging. */
export interface BindingBooks {}

/** The `book:` section of a binding. */
export type BookOf<B extends BindingId> = B extends keyof BindingBooks ? BindingBooks[B] : never;

/** One book as its author wants it: read, checked, with every default filled in. The product of phase 1. */
export interface Definition<B extends BindingId = BindingId> {
  /** Folder name under `content/`; also the folder in `dist/`. A variant has its name after a hyphen. */
  readonly project: string;
  readonly file: string;
  readonly binding: B;
  readonly title: string;
  readonly subtitle: string | null;
  /** One or two sentences for the cover and the list of projects. */
  readonly summary: string;
  readonly author: { readonly name: string; readonly workshop: string | null };
  /** What the author calls this state of the instructions, printed in every footer ("1", "2026-03"). */
  readonly revision: string;
  /** BCP 47 tag; only English text ships today. */
  readonly language: string;
  readonly level: "first book" | "some practice" | "practised";
  readonly units: Units;
  readonly book: BookOf<B>;
  /** Materials in hand by role (`card`, `cloth`, …); every role the binding knows is present, defaults filled in. */
  readonly materials: Readonly<Record<string, Material>>;
  /** Values measured off the real object by name; they govern over what is calculated. */
  readonly measured: Readonly<Record<string, Length>>;
  /** Which adhesive each glueing job uses, and its times after any override by the author. */
  readonly adhesives: Readonly<Record<string, Adhesive>>;
  readonly bench: BenchTime;
  readonly tools: ToolLimits;
  /** The class that makes this book; null when there is none. */
  readonly class: ClassSettings | null;
  readonly stepChanges: readonly StepChange[];
  readonly addedSteps: readonly AddedStep[];
  /** Markdown from the project's `prose/` folder and from the definition, still holding `{named values}`. */
  readonly prose: readonly ProsePiece[];
  readonly print: PrintSettings;
  /** Paths such as `book/stub depth` that the author left to the default. */
  readonly defaulted: ReadonlySet<string>;
  /** Where each path was written; a path that was not written is absent (use the nearest parent). */
  readonly places: ReadonlyMap<string, Place>;
}

/** How lengths are written and rounded in this project. */
export interface Units {
  readonly governing: Unit;
  /** Distance between the marks that sizes are rounded to: 1/16 in, 0.5 mm … */
  readonly step: Length;
  /** Whether the other unit is printed behind, marked as rounded. */
  readonly dual: boolean;
}

/** What is printed, and on what. */
export interface PrintSettings {
  /** The first one gives the print-outs with plain names. */
  readonly papers: readonly PaperId[];
  /** Whether the handout is set in large type. */
  readonly isLarge: boolean;
  readonly ink: "colour" | "grey";
  /** Of one sheet of the paper in the printer. */
  readonly paperThickness: Length;
  /** The documents that are wanted; those of a class are made only where there is one. */
  readonly documents: ReadonlySet<DocumentId>;
}

export type { PaperId } from "../catalogue/papers.ts";

/** Grain relative to the sheet as sold; `none` for hand-made paper and metal, `unknown` when the author does not say. */
export type SheetGrain = "long" | "short" | "none" | "unknown";

/** A sheet size in hand or for sale. */
export interface Sheet {
  readonly height: Length;
  readonly width: Length;
  /** Price of a pack, and how many sheets are in it; null when the author does not say. */
  readonly price: Rational | null;
  readonly pack: number;
  /** Sheets that are there already and need not be bought. */
  readonly inHand: number;
}

/** A material in hand for one role, after defaults. */
export interface Material {
  readonly role: string;
  readonly name: string;
  /** Thickness of one layer; null where it does not enter the geometry (thread on a spool, a bottle of paste). */
  readonly thickness: Length | null;
  /** How the thickness is known: given, from grammage × bulk, or the catalogue's default. */
  readonly thicknessFrom: "given" | "grammage" | "default";
  readonly grammage: number | null;
  readonly grain: SheetGrain;
  /** Sheets in hand or for sale, height × width as the author wrote them; empty when the author named none. */
  readonly sheets: readonly Sheet[];
  /** What a pack costs of a material that is not sold in sheets, and what is in it: a length, or a number of pieces. Null when the author does not say. */
  readonly price: Rational | null;
  readonly packLength: Length | null;
  readonly packCount: number;
  /** The same of what is screwed into posts that are too short alone. */
  readonly extensions?: { readonly price: Rational | null; readonly packCount: number };
}

/** The adhesive of one glueing job, after defaults. */
export type Adhesive = Omit<CatalogueAdhesive, "aliases">;

/** How far the tools in hand reach; null for what the author does not say. */
export interface ToolLimits {
  /** Along which parts are measured and cut. */
  readonly rulerLength: Length | null;
  /** Longest cut of the board cutter. */
  readonly cutterLength: Length | null;
  /** From an edge to the middle of a hole. */
  readonly punchReach: Length | null;
  /** How much the drill or the hollow punch goes through in one go. */
  readonly drillDepth: Length | null;
}

/** What the author says about time at the bench. */
export interface BenchTime {
  /** Length of one sitting in minutes, breaks not counted. */
  readonly sittingMinutes: number;
  /** Factor on every hands-on minute: 1 for a median beginner. */
  readonly pace: number;
}

/** A class as its teacher plans it. */
export interface ClassSettings {
  readonly participants: number;
  /** Sets of material cut besides. */
  readonly spares: number;
  /** Whether the teacher makes a book along with the class. */
  readonly teacherCopy: boolean;
  /** Whether the parts are cut before the class meets. */
  readonly cutBeforehand: boolean;
  /** In the order in which they are held; `start` in minutes after midnight. */
  readonly sessions: readonly { readonly minutes: number; readonly start: number; readonly daysAfter: number }[];
  readonly breaks: { readonly every: number; readonly length: number };
  readonly setUp: number;
  readonly cleanUp: number;
  /** Share of a step's working time that the teacher takes to show it. */
  readonly demonstration: Rational;
  /** How many the class has of a tool; one for each participant where it is not named. */
  readonly tools: ReadonlyMap<ToolId, number>;
  /** Packs in which adhesives are bought, each adhesive once. */
  readonly packs: readonly AdhesivePack[];
  readonly currency: string;
  /** What a kit is sold for above its cost, as a share of the cost. */
  readonly kitMargin: Rational;
  /** The sheet on which labels for the bags are printed. */
  readonly labels: LabelSheet;
}

/** A pack of an adhesive: grams of what is brushed on, a length of what comes off a roll. */
export interface AdhesivePack {
  readonly name: string;
  readonly price: Rational | null;
  readonly grams: number | null;
  readonly length: Length | null;
}

/** What the author adds to or changes in a step that the binding already has. Text fields are Markdown. */
export interface StepChange {
  readonly step: string;
  readonly tip: ProsePiece | null;
  readonly cautions: readonly ProsePiece[];
  readonly minutes: number | null;
  readonly picture: Picture | null;
  readonly place: Place;
}

/** A step of the author's own. */
export interface AddedStep {
  readonly id: string;
  readonly after: string;
  readonly title: string;
  readonly text: ProsePiece;
  readonly minutes: number;
  readonly cautions: readonly ProsePiece[];
  readonly check: string | null;
  readonly picture: Picture | null;
  readonly place: Place;
}

/** A picture of the author's own, with its text for those who cannot see it. */
export interface Picture {
  /** Path relative to the project's folder; proven to lie inside it. */
  readonly file: string;
  readonly alternative: string;
}

/** A piece of the author's Markdown and where it stands, so that an unknown name in it can be shown with a caret. */
export interface ProsePiece {
  /** `introduction`, `closing`, or a step's id. */
  readonly slot: string;
  readonly markdown: string;
  readonly place: Place;
  /** Offset in the file of each character of `markdown` is `offsets[i]`; lets a caret land inside block scalars too. */
  readonly offsets: readonly number[];
}

/** Everything phase 1 may look at: it reads no files itself. */
export interface DefinitionSource {
  readonly project: string;
  /** Path as shown in messages. */
  readonly file: string;
  readonly bytes: Uint8Array;
  /** The other files of the project's folder, relative, with forward slashes. */
  readonly files: ReadonlySet<string>;
  /** Contents of `prose/*.md`. */
  readonly prose: ReadonlyMap<string, Uint8Array>;
}

/** One definition per variant; `definitions` is empty when any problem is an error. */
export interface DefinitionResult {
  readonly definitions: readonly Definition[];
  readonly problems: readonly Problem[];
  /** Text of every file that problems point into, for code frames. */
  readonly texts: ReadonlyMap<string, string>;
}
