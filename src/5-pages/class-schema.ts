// The shape of what a class adds to plan.json: cut plans, orders and the timetable.
import { z } from "zod";

/** A length as plan.json writes it. */
export const length = z
  .strictObject({ mm: z.number(), exact: z.string().min(1) })
  .describe("A length: millimetres to a millionth, and the exact value as text in the unit that governs where it is exact there.");

const count = z.int().nonnegative();
const minute = z.int().nonnegative();
const money = z.number().nonnegative().nullable().describe("In the currency of the class; null where no price is given.");

const bound = z.strictObject({
  counts: z.enum(["sheets", "lengths", "cost"]).describe("What the plan keeps low; cost is in hundredths of the currency."),
  at_least: count.describe("No plan has less of it."),
  most_above: count.describe("The plan may be this much above the least there can be; 0 is a proven minimum."),
});

const cut = z.strictObject({
  n: z.int().positive(),
  part: z.string().describe("What is cut: the sheet, or a part by the name that an earlier cut gave it."),
  from: z.enum(["left edge", "lower edge"]).describe("The straight edge from which every mark of this cut is measured."),
  marks: z.array(length),
  gives: z.array(z.strictObject({ from: length, to: length, is: z.enum(["piece", "part", "offcut"]), name: z.string().nullable() })),
});

const layout = z.strictObject({
  count: z.int().positive().describe("Sheets that are cut so."),
  pieces: z.array(z.strictObject({
    part: z.string(),
    x: length.describe("From the sheet's left edge."),
    y: length.describe("From the sheet's lower edge."),
    width: length.describe("Across the sheet, as cut."),
    height: length.describe("Along the sheet's height, as cut."),
    turned: z.boolean().describe("Whether its own height lies across the sheet."),
  })),
  cuts: z.array(cut).describe("In order; each goes from edge to edge of what it cuts."),
  offcuts: z.array(z.strictObject({ x: length, y: length, width: length, height: length, holds: z.array(z.string()) })),
});

/** Cut plans of sheet materials: one entry for each size of sheet that is cut. */
export const cutting = z.array(z.strictObject({
  material: z.string(),
  role: z.string(),
  stock: z.strictObject({ height: length.describe("The side along which the parts' heights run."), width: length }),
  sheets: z.int().positive(),
  lower_bound: count.describe("Sheets of this size that any plan needs; where there are several sizes, those for the parts that fit on no other size."),
  bound: bound.describe("For the material, all sizes of sheet together."),
  sheets_of_all_sizes: z.strictObject({
    planned: z.int().positive(),
    at_least: count.describe("Proven: sheets of whatever size that any plan for the material needs, whatever it costs."),
  }),
  layouts: z.array(layout),
}));

/** Cut plans of what is sold by length: ribbon, tape, thread. */
export const lengthCutting = z.array(z.strictObject({
  material: z.string(),
  role: z.string(),
  stock: z.strictObject({ length }),
  lengths: z.int().positive().describe("Rolls or spools."),
  lower_bound: count,
  bound,
  layouts: z.array(z.strictObject({ count: z.int().positive(), pieces: z.array(z.strictObject({ part: z.string(), from: length, to: length })), rest: length })),
}));

const order = z.strictObject({
  role: z.string(),
  material: z.string(),
  unit: z.string(),
  needed: count,
  in_hand: count,
  packs: count.describe("To buy."),
  pack_size: z.int().positive(),
  pack_price: money,
  cost: money,
  over: count.describe("Left when all sets are made."),
  note: z.string(),
});

/** The class in numbers: who makes a book, and what is ordered for it. */
export const classNumbers = z.strictObject({
  participants: z.int().positive(),
  makers: z.int().positive().describe("Participants, and the teacher where one book is made along with the class."),
  sets: z.int().positive().describe("Sets of material: makers and spares."),
  currency: z.string(),
  orders: z.array(order),
  adhesives: z.array(z.strictObject({
    adhesive: z.string(),
    steps: z.array(z.int().positive()),
    brushed: z.strictObject({
      square_centimetres: count.describe("The surface that it is laid on, for all sets."),
      grams_per_square_metre: z.int().positive(),
      grams: count.describe("With as much again for what stays in pot and brush; common practice, no source."),
    }).nullable().describe("Null for what comes off a roll."),
    taped: length.nullable().describe("Null for what is brushed on."),
  })).describe("How much of each adhesive all sets take, whether or not it is among the orders."),
  not_planned: z.array(z.strictObject({ material: z.string(), reason: z.string() })).describe("Materials without a cut plan."),
});

const part = z.int().positive().nullable().describe("Part of a step that may be interrupted and is longer than the time between two breaks; null for a step done in one go.");

const toolUse = z.strictObject({ tool: z.string(), count: z.int().positive() });

/** The timetable and all that it keeps to, so that it can be checked from here alone. */
export const timetable = z.strictObject({
  fits: z.boolean(),
  verdict: z.string(),
  sessions: z.array(z.strictObject({
    n: z.int().positive(),
    day: count.describe("0 for the day of the first session."),
    starts: z.string().describe("Time of day."),
    minutes: z.int().positive(),
    clean_up: minute.describe("Last minutes, in which nothing else is done."),
  })),
  groups: z.int().positive(),
  teachers: z.int().positive(),
  tools: z.array(z.strictObject({ tool: z.string(), count: z.int().positive().describe("Groups that can use it at the same time.") })).describe("What is shared."),
  rules: z.array(z.strictObject({
    step: z.int().positive(),
    part,
    minutes: z.int().positive().describe("Hands-on, for each group."),
    demonstration: minute.describe("The teacher shows it to everybody before the first group begins."),
    tools: z.array(toolUse),
    after: z.array(z.strictObject({
      step: z.int().positive(),
      part,
      least: minute.describe("Minutes from the end of that step's work, breaks and nights included."),
      most: minute.nullable().describe("Open time: it must have begun by then. Null when there is no hurry."),
    })),
    rest: z.strictObject({ minutes: minute, tools: z.array(toolUse) }).nullable().describe("Tools that hold the work from its end on, breaks and nights included."),
  })),
  slots: z.array(z.strictObject({
    session: z.int().positive(),
    start: minute.describe("Minutes from the start of the session."),
    end: minute.describe("The same; a wait may end after the session."),
    group: z.int().positive().nullable().describe("Null for the whole class."),
    step: z.int().positive().nullable(),
    part,
    kind: z.enum(["work", "demonstration", "wait", "break"]).describe("Setting up at the beginning of a session is a break too."),
  })).describe("Empty when the class does not fit."),
  end: minute.nullable().describe("Minutes from the start of the first session, nights included; null when no schedule was found."),
  lower_bound: minute.describe("Counted like `end`: no timetable ends before."),
  proven: z.boolean().describe("Whether nothing earlier is possible; of a class that does not fit, whether no timetable fits."),
  advice: z.array(z.string()).describe("What keeps the class from fitting and what would help."),
});
