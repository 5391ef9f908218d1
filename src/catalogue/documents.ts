// The documents that a booklet can be printed as: their names in files and in words.

/** The documents by the name of their file. */
export const documents = {
  handout: { label: "Handout for the bench" },
  "bench-cards": { label: "Bench cards, one step on each" },
  templates: { label: "Templates at full size" },
  booklet: { label: "Handout to fold and sew into a booklet" },
  "class-plan": { label: "Class plan for the teacher" },
  "kit-slips": { label: "Kit slips" },
} as const satisfies Readonly<Record<string, { readonly label: string }>>;

/** A document by the name of its file. */
export type DocumentId = keyof typeof documents;

/** All of them, in the order in which they are listed. */
export const documentIds = Object.keys(documents) as readonly DocumentId[];
