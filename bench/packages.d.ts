// Types for packages that bring none, as far as the benchmark uses them.
declare module "shelf-pack" {
  class ShelfPack {
    constructor(width: number, height: number, options?: { readonly autoResize?: boolean });
    packOne(width: number, height: number): { readonly x: number; readonly y: number } | null;
  }
  export = ShelfPack;
}

declare module "maxrects-packer/dist/maxrects-packer.mjs" {
  interface Rectangle {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    /** Turned by a quarter; width and height are still those from before. */
    readonly rot?: boolean;
  }
  class MaxRectsPacker {
    constructor(width: number, height: number, padding: number, options: { readonly smart: boolean; readonly pot: boolean; readonly square: boolean; readonly allowRotation: boolean });
    addArray(rectangles: readonly Rectangle[]): void;
    readonly bins: readonly { readonly rects: readonly Rectangle[] }[];
  }
  export { MaxRectsPacker };
}
