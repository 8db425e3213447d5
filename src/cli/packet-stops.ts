import { type Composition, frameStops, holdStops } from "../assembly/index.ts";
import type { Packet } from "../packet/index.ts";
import { CLI } from "../words/cli.ts";
import { sayChoppingCheck } from "../words/chopping.ts";
import { sayCuttingCheck } from "../words/cutting.ts";
import { sayFrameCheck } from "../words/frame.ts";
import { sayHangCheck, sayTitle, sayWallCheck } from "../words/hanging.ts";
import { sayHoldCheck } from "../words/held.ts";
import { sayCheck, type Speech } from "../words/index.ts";
import { PACKET } from "../words/packet.ts";

/** A packet but for its files. */
type Made = Omit<Packet, "files">;

/** All that stops some work of a packet, a line each: in its mats, in its holding, in its frame, in the plans of its boards, frames and walls; then what could not be read. */
export const packetStops = (packet: Made): string[] => [
  ...composedLines(packet),
  ...heldLines(packet),
  ...framedLines(packet),
  ...boardLines(packet),
  ...railLines(packet),
  ...wallLines(packet),
  ...packet.prepared.problems.map(({ row, column, found, wanted }) =>
    CLI.problem(`row ${row}, ${column}`, found, wanted),
  ),
];

const composedLines = (packet: Made): string[] =>
  packet.prepared.works.flatMap(({ row, work, composition }) =>
    composition.checks
      .filter(({ level }) => level === "stop")
      .map((check) => PACKET.stopped(row, work.title, sayCheck(check, speechOf(packet, composition)))),
  );

/** Works that can be cut, and that nothing may hold. */
const heldLines = (packet: Made): string[] =>
  packet.prepared.works.flatMap(({ row, work, composition }, index) =>
    holdStops(packet.prepared.holds[index] ?? null).map((check) =>
      PACKET.stopped(row, work.title, sayHoldCheck(check, speechOf(packet, composition))),
    ),
  );

/** Works that do not go into their frame. */
const framedLines = (packet: Made): string[] =>
  packet.prepared.works.flatMap(({ row, work, composition }, index) =>
    frameStops(packet.prepared.framed[index] ?? null).map((check) =>
      PACKET.stopped(row, work.title, sayFrameCheck(check, speechOf(packet, composition))),
    ),
  );

/** Pieces that no sheet gives, by the row of the work that wants them. */
const boardLines = ({ prepared, boards }: Made): string[] =>
  boards.flatMap(({ board, job, plan, uses, ruler }) =>
    plan.checks.flatMap((check) => {
      if (check.level !== "stop" || !("piece" in check)) return [];
      const work = prepared.works[uses[check.piece]?.work ?? -1];
      return [PACKET.stopped(work?.row ?? null, board, sayCuttingCheck(check, { job, unit: ruler.unit }))];
    }),
  );

/** The same for rails. */
const railLines = ({ prepared, frames }: Made): string[] =>
  frames.flatMap(({ job, plan, moulding, works }) =>
    plan.checks.map((check) => {
      const work = works[job.rails[check.rail]?.frame?.kind ?? -1];
      const said = sayChoppingCheck(check, { job, unit: prepared.practice.ruler.unit });
      return PACKET.stopped(work?.row ?? null, moulding.name, said);
    }),
  );

/** Works that do not hang as asked, by their rows, and what stops a whole wall. */
const wallLines = ({ prepared }: Made): string[] =>
  prepared.walls.walls.flatMap(({ name, hung: { request, plan, works: hung }, works }) => {
    const speech = { ruler: request.ruler, job: request.job };
    const row = (index: number): number | null => prepared.works[works[index] ?? -1]?.row ?? null;
    return [
      ...plan.checks
        .filter(({ level }) => level === "stop")
        .map((check) =>
          "frame" in check
            ? PACKET.stopped(
                row(check.frame),
                `${name}, ${sayTitle(request.job, check.frame)}`,
                sayWallCheck(check, speech),
              )
            : PACKET.stopped(null, name, sayWallCheck(check, speech)),
        ),
      ...hung.flatMap(({ checks }, index) =>
        checks
          .filter(({ level }) => level === "stop")
          .map((check) =>
            PACKET.stopped(
              row(index),
              `${name}, ${sayTitle(request.job, index)}`,
              sayHangCheck(check, speech),
            ),
          ),
      ),
    ];
  });

const speechOf = ({ prepared }: Made, { design }: Composition): Speech => ({
  ruler: design.ruler,
  language: prepared.practice.language,
});
