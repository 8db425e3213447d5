import type { Highs, Model } from "highs";
import type { IntegerProgramme, IntegerSolver } from "../plans/index.ts";

let loading: Promise<IntegerSolver> | null = null;

/** The solver of integer programmes: HiGHS, loaded when it is asked for the first time. */
export function integerSolver(): Promise<IntegerSolver> {
  loading ??= loaded();
  return loading;
}

async function loaded(): Promise<IntegerSolver> {
  const { default: load } = await import("highs");
  const highs = await load();
  return (programme, timeIsUp) =>
    highs.withModel(modelOf(highs, programme), (model: Model) => {
      model.options.set({ output_flag: false, mip_rel_gap: 1e-7 });
      if (programme.start !== null) model.setSolution({ colValue: programme.start });
      model.run({
        [highs.constants.callbackType.mipInterrupt]: (event) => {
          if (timeIsUp()) event.interrupt();
        },
      });
      return model.info.get("primal_solution_status") === FEASIBLE ? model.getSolution().colValue : null;
    });
}

/** What HiGHS calls a solution that keeps every row. */
const FEASIBLE = 2;

function modelOf(highs: Highs, { columns, wanted }: IntegerProgramme) {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const { rows, amounts } of columns) {
    indices.push(...rows);
    values.push(...amounts);
    starts.push(indices.length);
  }
  const numRows = wanted.length;
  const numCols = columns.length;
  return {
    numCols,
    numRows,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(() => highs.infinity),
    rowLower: wanted,
    rowUpper: wanted.map(() => highs.infinity),
    matrix: { format: "csc", numRows, numCols, starts, indices, values },
    integrality: Int32Array.from(columns, () => highs.constants.variableType.integer),
  } as const;
}
