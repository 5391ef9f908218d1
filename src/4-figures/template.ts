// A drafted template becomes the untiled drawing and the same for cutting machines.
import { writeDxf } from "./dxf.ts";
import { writeNamedPath, writeSvg } from "./svg.ts";
import type { TemplateDraft } from "./template-draft.ts";
import { templateActs, templateLines } from "./template-lines.ts";
import type { TemplateLines } from "./template-lines.ts";
import type { Template } from "./types.ts";

/** White rim of the untiled drawing in millimetres. */
const rim = 2;

/** Writes a template whole. Its sheets, which it may share with others, come from `layOutSheets`. */
export function finishTemplate(draft: TemplateDraft): Template {
  const lines = templateLines(draft);
  const drawing = writeSvg(lines.words, {
    id: `template-${draft.id}`, title: draft.title, description: draft.alternative, pen: "small", before: writeLayers(lines),
    box: { left: -rim, top: -rim, right: draft.width + rim, bottom: draft.height + rim },
  });
  return { id: draft.id, title: draft.title, use: draft.use, width: draft.width, height: draft.height, svg: drawing.svg, dxf: writeDxf(lines, draft.width, draft.height), marks: draft.marks };
}

/** One group for each act, in the order of work, each line in it with an id and its name. */
function writeLayers({ lines }: TemplateLines): string {
  const ids = new Set<string>();
  return templateActs.flatMap((act) => {
    const own = lines.filter((each) => each.act === act);
    return own.length === 0 ? [] : [`<g id="${act}">`, ...own.map(({ name, path, line }) => writeNamedPath(path, line, "small", uniqueId(`${act}-${name}`, ids), name)), "</g>"];
  }).join("\n");
}

/** "pierce-head-hole"; a second of the same name gets a number. */
function uniqueId(words: string, taken: Set<string>): string {
  const plain = words.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
  let id = plain;
  for (let count = 2; taken.has(id); count += 1) id = `${plain}-${count}`;
  taken.add(id);
  return id;
}
