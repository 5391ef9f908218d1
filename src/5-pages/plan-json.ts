// A booklet's results as plan.json: the model and the plan in the published shape, nothing computed anew.
import type { Feature, Value } from "../2-model/types.ts";
import { printFormula } from "../units/formula.ts";
import { lengthOf, toMillimetres } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { printExact } from "../units/print-length.ts";
import { rationalToNumber } from "../units/rational.ts";
import type { Rational } from "../units/rational.ts";
import { classJson, cuttingJson, lengthCuttingJson, orderedJson } from "./class-json.ts";
import { threadJson } from "./thread-json.ts";
import { timetableJson } from "./timetable-json.ts";
import { planSchemaName } from "./plan-schema.ts";
import type { PlanJson } from "./plan-schema.ts";
import type { Booklet } from "./types.ts";

/** What is written to `dist/<project>/plan.json`. */
export function planJson({ definition, model, plan, drawings, folder }: Booklet): PlanJson {
  const length = (value: Length): { mm: number; exact: string } => ({
    mm: toDecimals(toMillimetres(value), 6),
    exact: printExact(value, definition.units.governing),
  });
  const feature = (given: Feature): PlanJson["parts"][number]["features"][number] => {
    switch (given.kind) {
      case "corner cut": return { kind: given.kind, corner: given.corner, distance: length(given.distance) };
      case "placement line": return { kind: given.kind, name: given.name, direction: given.direction, at: length(given.at) };
      case "slit": return { kind: given.kind, name: given.name, at: length(given.at), from: length(given.from), to: length(given.to) };
    }
  };
  const value = (given: Value): PlanJson["values"][number]["value"] =>
    given.quantity.dimension === 1
      ? length(lengthOf(given.quantity.value))
      : { number: toDecimals(rationalToNumber(given.quantity.value), 12), exact: exactNumber(given.quantity.value) };
  return {
    schema: planSchemaName,
    project: definition.project,
    folder,
    title: definition.title,
    summary: definition.summary,
    revision: definition.revision,
    language: definition.language,
    level: definition.level,
    binding: definition.binding,
    units: { governing: definition.units.governing, step: length(definition.units.step), dual: definition.units.dual },
    finished: { height: length(model.finished.height), width: length(model.finished.width), thickness: length(model.finished.thickness) },
    values: [...model.values.values()].map((given) => ({
      name: given.name,
      meaning: given.meaning,
      value: value(given),
      formula: given.formula && printFormula(given.formula),
      origin: given.origin,
      source: given.source,
    })),
    parts: model.parts.map((part) => ({
      id: part.id,
      name: part.name,
      letter: plan.cutList.find((item) => item.part.id === part.id)?.letter ?? null,
      material: part.material,
      count: part.count,
      height: length(part.height),
      width: length(part.width),
      thickness: length(part.thickness),
      grain: part.grain,
      ready_made: part.readyMade,
      note: part.note,
      features: part.features.map(feature),
    })),
    scores: model.scores.map((score) => ({
      name: score.name,
      part: score.part,
      at: length(score.at),
      from: "left edge, seen from the inside",
      exact_at: length(score.exactAt),
      from_centre: length(score.fromCentre),
      fold: score.fold,
    })),
    holes: model.holes.map((hole) => ({
      id: hole.id,
      part: hole.part,
      along: length(hole.along),
      across: length(hole.across),
      diameter: length(hole.diameter),
    })),
    thread: model.thread ? threadJson(model.thread, length) : null,
    materials: plan.materials.map(({ role, name, pieces, quantity, thickness, note }) => ({ role, name, pieces: [...pieces], quantity, thickness, note, ...orderedJson({ role, name }, plan.class) })),
    class: plan.class && classJson(plan.class, definition.class!.currency, length, (id) => plan.steps.find((step) => step.id === id)!.n),
    cutting: plan.class ? cuttingJson(plan.class.cutPlans, length) : [],
    length_cutting: plan.class ? lengthCuttingJson(plan.class.lengthPlans, length) : [],
    timetable: plan.class && timetableJson(plan.class, definition.class!.sessions[0]!.start, (id) => plan.steps.find((step) => step.id === id)!.n),
    tools: plan.tools.map(({ id, name, note }) => ({ id, name, note })),
    steps: plan.steps.map((step) => ({
      n: step.n,
      id: step.id,
      stage: step.stage,
      title: step.title,
      action: [...step.action],
      sizes: step.sizes.map(({ label, text }) => ({ label, text })),
      table: step.table && { caption: step.table.caption, columns: [...step.table.columns], rows: step.table.rows.map((row) => [...row]) },
      parts: [...step.parts],
      tools: [...step.tools],
      minutes: step.minutes,
      before: step.before,
      adhesive: step.adhesive && { name: step.adhesive.name, note: step.adhesive.note },
      wait: step.wait && { minutes: step.wait.minutes, kind: step.wait.kind, text: step.wait.text, meanwhile: step.wait.meanwhile },
      cautions: step.cautions.map(({ signal, hazard, consequence, avoid }) => ({ signal, hazard, consequence, avoid })),
      own_cautions: [...step.ownCautions],
      figure: step.figure,
      check: step.check,
      mistake: step.mistake && { sign: step.mistake.sign, repair: step.mistake.repair },
    })),
    sittings: plan.sittings.map((sitting) => ({
      n: sitting.n,
      first_step: sitting.firstStep,
      last_step: sitting.lastStep,
      hands_on_minutes: sitting.handsOnMinutes,
      minutes: sitting.minutes,
      ends_because: sitting.endsBecause,
    })),
    hands_on_minutes: plan.handsOnMinutes,
    longest_wait_minutes: plan.longestWaitMinutes,
    idle_minutes: plan.idleMinutes,
    findings: [...plan.findings, ...(plan.class?.timetable.findings ?? [])].map(({ code, severity, message, where, consequence, remedy }) => ({ code, severity, message, where, consequence, remedy })),
    templates: drawings.templates.map((template) => ({
      id: template.id,
      title: template.title,
      file: `templates/${template.id}.svg`,
      dxf: `templates/${template.id}.dxf`,
      width_mm: template.width,
      height_mm: template.height,
      marks: template.marks.map(({ name, act, from, to }) => ({ name, act, from: [from[0], from[1]], to: [to[0], to[1]] })),
    })),
  };
}

/** "16" or "40/3". */
function exactNumber({ n, d }: Rational): string {
  return d === 1n ? String(n) : `${n}/${d}`;
}

function toDecimals(value: number, places: number): number {
  return Number(value.toFixed(places));
}
