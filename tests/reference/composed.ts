/** A composed work as it leaves in the open format. */
export interface Composed {
  readonly outer: SizeOut;
  readonly mats: readonly {
    readonly borders: SidesOut;
    readonly back: SizeOut;
    readonly face: SizeOut;
    readonly bevel: { readonly plan: LengthOut; readonly slope: LengthOut };
    readonly revealAsCut?: LengthOut;
  }[];
  readonly print?: { readonly left: LengthOut; readonly top: LengthOut; readonly angle: number };
  readonly cover?: SidesOut;
  readonly pockets?: Readonly<Record<"topLeft" | "topRight" | "bottomLeft" | "bottomRight", LengthOut>>;
  readonly stops: readonly {
    readonly mat: number;
    readonly set: LengthOut;
    readonly scale: LengthOut;
    readonly edges: readonly string[];
    readonly hand: readonly string[];
  }[];
  readonly diagonal: LengthOut;
  readonly checks: readonly { readonly code: string; readonly level: string; readonly about: string }[];
  readonly reckoning: readonly { readonly name: string; readonly sum: string; readonly is: LengthOut }[];
}
export interface LengthOut {
  readonly mm: number;
  readonly text: string;
}
export interface SizeOut {
  readonly width: LengthOut;
  readonly height: LengthOut;
}
export type SidesOut = Readonly<Record<"head" | "left" | "right" | "foot", LengthOut>>;
