export * from "./block.ts";
export * from "./dimension.ts";
export * from "./frame.ts";
export * from "./paper.ts";
export * from "./table.ts";
export * from "./tags.ts";
export * from "./text.ts";
export * from "./type.ts";
