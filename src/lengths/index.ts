export * from "./length.ts";
export * from "./printing.ts";
export * from "./reading.ts";
