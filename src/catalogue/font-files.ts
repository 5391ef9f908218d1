// The font files that every page needs: where they lie among the installed packages and where they go in the output.

/** One font file and its two places. */
export interface FontFile {
  /** Path below `node_modules`, with forward slashes. */
  readonly package: string;
  /** Path below the output folder, with forward slashes. */
  readonly dist: string;
}

/**
 * The faces that `templates/assets/fonts.css` names, each in two subsets: `latin` for English and Western Europe,
 * `latin-ext` for the other Latin alphabets (names of people and places). A page loads a subset only when it uses a character of it.
 */
export const fontFiles: readonly FontFile[] = [
  ...facesOf("source-serif-4", ["400-normal", "400-italic", "600-normal"]),
  ...facesOf("source-sans-3", ["400-normal", "600-normal"]),
];

function facesOf(family: string, faces: readonly string[]): readonly FontFile[] {
  return faces.flatMap((face) =>
    ["latin", "latin-ext"].map((subset) => {
      const file = `${family}-${subset}-${face}.woff2`;
      return { package: `@fontsource/${family}/files/${file}`, dist: `assets/fonts/${file}` };
    }),
  );
}
