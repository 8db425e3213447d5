/** The part that is used of the packer of sprite sheets (MIT); it comes without types. */
declare module "multi-bin-packer" {
  interface PackedRectangle {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly data: number;
  }

  export default class MultiBinPacker {
    readonly bins: { readonly rects: readonly PackedRectangle[] }[];
    constructor(maxWidth: number, maxHeight: number, padding?: number);
    add(width: number, height: number, data: number): void;
  }
}
