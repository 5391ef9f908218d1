// Names that become ids and folders.

/** A name in small Latin letters, digits and hyphens ("Größe 2" becomes "groesse-2"); empty when none of it can be written so. */
export function slugOf(name: string): string {
  const spelled = name.toLowerCase().replace(/[äöüßæøåœ]/gu, (letter) => spelledOut[letter] ?? letter);
  return spelled.normalize("NFKD").replace(/\p{M}/gu, "").replace(/[^a-z0-9]+/gu, "-").replace(/^-+|-+$/gu, "");
}

const spelledOut: Readonly<Record<string, string>> = { ä: "ae", ö: "oe", ü: "ue", ß: "ss", æ: "ae", ø: "oe", å: "aa", œ: "oe" };
