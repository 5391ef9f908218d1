// Where a picture's path leads, judged by its letters alone: no file system is asked.
import { nearestOf } from "../problems/nearest.ts";
import { quoted } from "../units/read-number.ts";
import type { Refusal } from "./refusal.ts";

/** Kinds of picture that every browser shows and the printer can embed. */
export const pictureKinds: readonly string[] = ["png", "jpg", "jpeg", "svg", "webp"];

type PicturePath = { readonly ok: true; readonly value: string } | ({ readonly ok: false } & Omit<Refusal, "kind">);

/** Reads a path within the project's folder; the path that comes back has no `.` or `..` left in it and names an existing file. */
export function readPicturePath(written: string, files: ReadonlySet<string>): PicturePath {
  const path = written.trim();
  const outside = (why: string): PicturePath =>
    ({ ok: false, code: "picture-outside", says: `: ${quoted(path)} ${why}`, hint: "copy the picture into the project's folder and give its path from there, such as pictures/fold.jpg" });
  if (path.includes("\\")) return { ...outside("is written with backslashes"), hint: `write the path with forward slashes: ${path.replaceAll("\\", "/").slice(0, 60)}` } as PicturePath;
  if (/^[a-z]:/i.test(path)) return outside("begins with a drive letter");
  if (/^[a-z][a-z0-9+.-]*:/i.test(path) || path.startsWith("//")) return outside("is an address on the web, and nothing is fetched");
  if (path.startsWith("/") || path.startsWith("~")) return outside("does not begin in the project's folder");
  const parts: string[] = [];
  for (const part of path.split("/")) {
    if (part === "" || part === ".") continue;
    if (part !== "..") parts.push(part);
    else if (parts.pop() === undefined) return outside("leads out of the project's folder");
  }
  const clean = parts.join("/");
  const ending = /\.([^./]+)$/.exec(clean)?.[1]?.toLowerCase();
  if (ending === undefined || !pictureKinds.includes(ending)) {
    const kind = ending === undefined ? "has no ending that tells its kind" : `is a .${ending.slice(0, 12)} file`;
    return { ok: false, code: "picture-kind", says: `: ${quoted(path)} ${kind}`, hint: `use ${pictureKinds.slice(0, -1).join(", ")} or ${pictureKinds.at(-1)!}` };
  }
  if (files.has(clean)) return { ok: true, value: clean };
  const pictures = [...files].filter((file) => pictureKinds.some((kind) => file.toLowerCase().endsWith(`.${kind}`)));
  const near = nearestOf(clean, pictures) ?? pictures.find((file) => file.split("/").at(-1) === parts.at(-1)) ?? null;
  const hint = near ? `did you mean ${near}?` : pictures.length === 0 ? "the folder holds no picture yet" : "check the spelling, capitals included";
  return { ok: false, code: "picture-missing", says: `: ${quoted(path)} is not in the project's folder`, hint };
}
