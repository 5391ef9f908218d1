// Which of the author's pictures a booklet shows: those are copied beside its pages, and nothing else is.
import { picturesInProse } from "./markdown.ts";
import type { Booklet } from "./types.ts";

const pictureKinds = /\.(?:jpe?g|png|webp|avif|gif|svg)$/i;

/** Relative paths inside the project's folder, each once, in order of appearance. */
export function projectPictures({ plan }: Pick<Booklet, "plan">): readonly string[] {
  const ownTexts = plan.steps.flatMap((step) => [step.ownText, step.tip, ...step.ownCautions]);
  const texts = [...plan.prose.values(), ...ownTexts.filter((text) => text !== null)];
  const named = [...plan.steps.flatMap((step) => (step.picture ? [step.picture.file] : [])), ...texts.flatMap(picturesInProse)];
  return [...new Set(named)].filter(isInsideFolder);
}

function isInsideFolder(file: string): boolean {
  return pictureKinds.test(file) && !file.startsWith("/") && !/^[a-z]+:/i.test(file) && !file.split("/").includes("..");
}
