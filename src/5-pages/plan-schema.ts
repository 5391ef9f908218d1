// The shape of plan.json, from which schema/plan.schema.json is made: what scripts and third parties rely on.
import { z } from "zod";
import { classNumbers, cutting, length, lengthCutting, timetable } from "./class-schema.ts";

/** Name and version of the format; the number goes up when a reader of the old one would be misled. */
export const planSchemaName = "benchleaf/plan@1";

const plainValue = z.strictObject({ number: z.number(), exact: z.string().min(1) }).describe("A count or a ratio.");

const edge = z.enum(["head-left", "head-right", "tail-left", "tail-right"]);

const feature = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("corner cut"), corner: edge, distance: length }),
  z.strictObject({ kind: z.literal("placement line"), name: z.string(), direction: z.enum(["vertical", "horizontal"]), at: length }),
  z.strictObject({ kind: z.literal("slit"), name: z.string(), at: length, from: length, to: length }).describe("A cut across the part: `at` from its head edge, `from` and `to` from its left edge."),
]);

const part = z.strictObject({
  id: z.string(),
  name: z.string(),
  letter: z.string().nullable().describe("Letter in the cut list and the drawings; null for a part that is in neither."),
  material: z.string(),
  count: z.int().positive(),
  height: length.describe("Along the spine."),
  width: length.describe("Across the spine."),
  thickness: length,
  grain: z.enum(["height", "width", "none"]),
  ready_made: z.boolean(),
  note: z.string(),
  features: z.array(feature),
});

const score = z.strictObject({
  name: z.string(),
  part: z.string(),
  at: length.describe("Running dimension, on a mark of the ruler."),
  from: z.literal("left edge, seen from the inside"),
  exact_at: length.describe("The same before rounding."),
  from_centre: length.describe("Signed distance from the centre line; left is negative."),
  fold: z.enum(["mountain", "valley"]),
});

const hole = z.strictObject({
  id: z.string(),
  part: z.string(),
  along: length.describe("From the part's head edge."),
  across: length.describe("From the part's spine-side edge."),
  diameter: length,
});

const value = z.strictObject({
  name: z.string(),
  meaning: z.string(),
  value: z.union([length, plainValue]),
  formula: z.string().nullable(),
  origin: z.enum(["given", "default", "measured", "material", "computed"]),
  source: z.string(),
});

const caution = z.strictObject({
  signal: z.enum(["DANGER", "WARNING", "CAUTION", "NOTICE"]),
  hazard: z.string(),
  consequence: z.string(),
  avoid: z.string(),
});

const step = z.strictObject({
  n: z.int().positive(),
  id: z.string(),
  stage: z.string(),
  title: z.string(),
  action: z.array(z.string()),
  sizes: z.array(z.strictObject({ label: z.string(), text: z.string() })),
  table: z.strictObject({ caption: z.string(), columns: z.array(z.string()), rows: z.array(z.array(z.string())) }).nullable(),
  parts: z.array(z.string()),
  tools: z.array(z.string()),
  minutes: z.number().nonnegative(),
  before: z.string().describe("What must have set or dried before; empty when nothing holds it back."),
  adhesive: z.strictObject({ name: z.string(), note: z.string() }).nullable(),
  wait: z.strictObject({ minutes: z.number().nonnegative(), kind: z.enum(["set", "dry", "press"]), text: z.string(), meanwhile: z.string() }).nullable(),
  cautions: z.array(caution),
  own_cautions: z.array(z.string()).describe("The author's cautions, Markdown."),
  figure: z.string().nullable(),
  check: z.string(),
  mistake: z.strictObject({ sign: z.string(), repair: z.string() }).nullable(),
});

const mark = z.strictObject({
  name: z.string(),
  act: z.enum(["cut", "score", "fold", "pierce", "place"]),
  from: z.tuple([z.number(), z.number()]).describe("x and y in millimetres from the template's top left corner."),
  to: z.tuple([z.number(), z.number()]),
});

const spot = z.strictObject({ place: z.string(), side: z.enum(["inside", "outside", "front", "back", "within"]) });

const moveKind = z.enum(["hole", "run", "tape", "edge", "link", "kettle", "knot"]);

const thread = z.strictObject({
  length: length.describe("All lengths as cut."),
  sewn: length.describe("The sum of the moves."),
  net: length.describe("Sewn length and the two ends of each path."),
  by_kind: z.array(z.strictObject({ kind: moveKind, length })),
  places: z.array(z.strictObject({
    path: z.int().positive(), id: z.string(), name: z.string(), kind: z.enum(["hole", "edge", "tape"]), part: z.string(), hole: z.string().nullable(),
    along: length.describe("From the head."), across: length.describe("From the spine edge."), depth: length.describe("From the front of the book."),
  })),
  needlefuls: z.array(z.strictObject({ n: z.int().positive(), path: z.int().positive(), first_move: z.int().positive(), last_move: z.int().positive(), join_at: spot.nullable(), length })),
  moves: z.array(z.strictObject({
    path: z.int().positive().describe("Each path is sewn with a thread of its own."),
    n: z.int().positive().describe("Counted from 1 in its path."),
    kind: moveKind,
    from: spot,
    to: spot,
    pass: z.string(),
    run: z.string().nullable().describe("The run of the pattern that it covers."),
    tape: z.string().nullable(),
    edge: z.enum(["spine", "head", "tail", "board"]).nullable(),
    under: z.int().positive().nullable().describe("The earlier move that it goes under."),
    length,
  })),
});

const material = z.strictObject({
  role: z.string(),
  name: z.string(),
  pieces: z.array(z.string()),
  quantity: z.string().describe("For one book, in words."),
  thickness: z.string(),
  note: z.string(),
  unit: z.string().nullable().describe("What the two numbers count; null without a class, and for what is not counted."),
  per_book: z.number().nonnegative().nullable().describe("Share of one set in what the class needs, spares counted as sets."),
  per_class: z.int().nonnegative().nullable(),
  packs: z.int().nonnegative().nullable().describe("To buy for the class."),
  cost: z.number().nonnegative().nullable().describe("Of these packs, in the currency of the class; null where a price is missing."),
});

/** The schema that plan.json keeps to; unknown keys are refused, so that nothing is published by accident. */
export const planSchema = z.strictObject({
  schema: z.literal(planSchemaName),
  project: z.string().describe("Folder in the output; a variant has its name after a hyphen."),
  folder: z.string().describe("Folder under content/ that the project comes from."),
  title: z.string(),
  summary: z.string(),
  revision: z.string(),
  language: z.string(),
  level: z.string(),
  binding: z.string(),
  units: z.strictObject({ governing: z.enum(["mm", "in"]), step: length, dual: z.boolean() }),
  finished: z.strictObject({ height: length, width: length, thickness: length }),
  values: z.array(value),
  parts: z.array(part),
  scores: z.array(score),
  holes: z.array(hole),
  thread: thread.nullable().describe("The sewing thread; null for a book that is not sewn."),
  materials: z.array(material),
  class: classNumbers.nullable().describe("Null for a book without a class."),
  cutting,
  length_cutting: lengthCutting,
  timetable: timetable.nullable(),
  tools: z.array(z.strictObject({ id: z.string(), name: z.string(), note: z.string() })),
  steps: z.array(step),
  sittings: z.array(
    z.strictObject({
      n: z.int().positive(),
      first_step: z.int().positive(),
      last_step: z.int().positive(),
      hands_on_minutes: z.number().nonnegative(),
      minutes: z.number().nonnegative(),
      ends_because: z.string(),
    }),
  ),
  hands_on_minutes: z.number().nonnegative(),
  longest_wait_minutes: z.number().nonnegative(),
  idle_minutes: z.number().nonnegative().describe("Minutes inside sittings in which there is nothing to do but wait."),
  findings: z.array(
    z.strictObject({
      code: z.string(),
      severity: z.enum(["stop", "warn", "note"]),
      message: z.string(),
      where: z.string(),
      consequence: z.string(),
      remedy: z.string(),
    }),
  ),
  templates: z.array(
    z.strictObject({
      id: z.string(),
      title: z.string(),
      file: z.string().describe("SVG at 1:1, one unit is one millimetre."),
      dxf: z.string().describe("DXF in millimetres with one layer for each act: place, pierce, score, fold, cut."),
      width_mm: z.number().positive(),
      height_mm: z.number().positive(),
      marks: z.array(mark),
    }),
  ),
});

/** What plan.json holds. */
export type PlanJson = z.infer<typeof planSchema>;

/** The published JSON Schema as text, the same every time. */
export function planSchemaText(): string {
  const { $schema, ...rest } = z.toJSONSchema(planSchema);
  return `${JSON.stringify({ $schema, title: "Benchleaf plan", description: `Computed results of one project, format ${planSchemaName}.`, ...rest }, null, 2)}\n`;
}
