// Takes the changed pages that tests/looks/pages.test.ts left in .cache/looks as they are now as the new references. Look at them first.
import { copyFile, mkdir, readdir } from "node:fs/promises";
import path from "node:path";

const root = path.resolve(import.meta.dirname, "..");
const [changed, references] = [path.join(root, ".cache/looks"), path.join(root, "tests/looks/references")];
const images = (await readdir(changed).catch(() => [])).filter((name) => name.endsWith(".png") && !name.endsWith("-before-after.png"));
await mkdir(references, { recursive: true });
for (const name of images) await copyFile(path.join(changed, name), path.join(references, name));
console.log(images.length === 0 ? "nothing to accept" : `accepted: ${images.sort().join(", ")}`);
