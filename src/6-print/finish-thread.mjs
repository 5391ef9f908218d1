// Begins the thread that finishes prints: a thread does not inherit the loader of TypeScript, so it registers it before anything of ours is loaded.
import { register } from "tsx/esm/api";

register();
await import("./finish-worker.ts");
