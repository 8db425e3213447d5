export * from "./conventions.ts";
export { CUT_LAYERS, type CutDrawing, cutDrawing, type CutLayer, type CutOptions } from "./cut.ts";
export * from "./figures.ts";
export * from "./lettering.ts";
export type * from "./marks.ts";
export * from "./views/index.ts";
export { writeDxf } from "./writers/dxf.ts";
export { type WriterFault, WriterRefusal } from "./writers/refusal.ts";
export { type SvgOptions, writeSvg } from "./writers/svg.ts";
