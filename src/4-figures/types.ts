// The product of phase 4: drawings and 1:1 templates as SVG text, each with words for those who cannot see it.
import type { PaperId } from "../1-definition/types.ts";
import type { Box } from "../geometry/box.ts";
import type { SceneItem } from "./scene.ts";

/** All drawings of one book. The product of phase 4. */
export interface Drawings {
  /** By id; steps and cut list refer to these ids. */
  readonly figures: ReadonlyMap<string, Figure>;
  readonly templates: readonly Template[];
  /** The same on sheets of paper, small ones sharing a sheet, for each paper of the definition. */
  readonly sheets: ReadonlyMap<PaperId, readonly TemplateSheet[]>;
  /** Drawings of the class plan, by id; none without a class. */
  readonly classFigures: ReadonlyMap<string, Figure>;
  /** Labels for the bags of a class; null without a class. */
  readonly bagLabels: BagLabels | null;
}

/** Labels at full size on sheets of one paper. */
export interface BagLabels {
  readonly paper: PaperId;
  readonly sheets: readonly BagLabelSheet[];
}

/** One sheet of labels. */
export interface BagLabelSheet {
  readonly label: string;
  /** Complete `<svg>` element as large as the paper, its viewBox in millimetres from the paper’s upper left corner. */
  readonly svg: string;
  readonly items: readonly SceneItem[];
  /** The outline of each label, for a test that measures the print. */
  readonly boxes: readonly Box[];
}

/** One drawing for the booklet, with its words. */
export interface Figure {
  readonly id: string;
  readonly title: string;
  /** What the drawing shows and to which scale: "Section through the closed spine, 1:1; thickness drawn three times too thick". */
  readonly caption: string;
  /** Says what the drawing says, for a reader who cannot see it. */
  readonly alternative: string;
  /** Complete `<svg>` element with viewBox in millimetres, `role="img"` and a title; ids are unique across figures. */
  readonly svg: string;
  /** Size on paper in millimetres. */
  readonly width: number;
  readonly height: number;
  /** The line kinds used, so that a legend prints only what occurs. */
  readonly lines: readonly LineKind[];
}

/** What a line means; look and legend words are in `line-kinds.ts`. */
export type LineKind =
  | "outline" | "edge" | "mountain" | "valley" | "hidden" | "centre" | "dimension" | "placement" | "cut" | "formed"
  | "thread" | "thread-hidden" | "thread-before" | "thread-before-hidden";

/** A template at 1:1 for one part (or group of marks), split into sheets of the chosen paper. */
export interface Template {
  readonly id: string;
  readonly title: string;
  /** How to use it, one imperative sentence a line. */
  readonly use: readonly string[];
  /** Full size in millimetres. */
  readonly width: number;
  readonly height: number;
  /** The untiled drawing at 1:1 (viewBox in millimetres), for cutters and the web. */
  readonly svg: string;
  /** The same for cutting machines that read DXF: millimetres, one layer for each act, names as texts. */
  readonly dxf: string;
  /** Positions that a test measures in the print and in the files: class of line, name, start and end in template millimetres. */
  readonly marks: readonly TemplateMark[];
}

/** A mark on a template that can be measured in print. */
export interface TemplateMark {
  /** As the template and the steps call it. */
  readonly name: string;
  readonly act: "cut" | "score" | "fold" | "pierce" | "place";
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  /** Of a hole that is drilled or punched, in millimetres; an awl's prick has none. */
  readonly diameter?: number;
}

/** One sheet of paper with a template, a part of one, or several small ones. */
export interface TemplateSheet {
  /** "Hole template for the fold"; several are parted by semicolons. */
  readonly title: string;
  readonly landscape: boolean;
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly pieces: readonly SheetPiece[];
}

/** What of a template lies on a sheet. */
export interface SheetPiece {
  /** The template's id. */
  readonly template: string;
  /** "row 1 of 1, column 2 of 3"; empty when the template is in one piece. */
  readonly label: string;
  /** Template millimetres at the sheet drawing's origin. */
  readonly origin: readonly [x: number, y: number];
}
