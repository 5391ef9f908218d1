// Gives every random test one seed, so that a run of the suite repeats; `npm run sweep` draws a new one and prints it.
import fc from "fast-check";

const given = process.env["BENCHLEAF_SEED"];

/** The suite's own seed; no number is special. */
const suiteSeed = 20_260;

fc.configureGlobal({ seed: given === undefined ? suiteSeed : Number(given) });
