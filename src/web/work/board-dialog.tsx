import type { Composition, MatRule } from "../../assembly/index.ts";
import { boardDialog, saidBoard } from "../../words/page.ts";
import { Dialog } from "../blanks/dialog.tsx";
import { Sentence } from "../blanks/sentence.tsx";
import { TextBlank } from "../blanks/text-blank.tsx";
import type { KeptWork } from "../state/change.ts";
import { madeOf } from "../state/made.ts";
import { practice, show } from "../state/session.ts";
import { Fault, WorkBlank } from "./blank.tsx";
import { Speller } from "./document-of.ts";
import { keep } from "./editing.ts";

interface Props {
  readonly mat: number;
  readonly work: KeptWork;
  readonly composition: Composition;
}

/** What a board is and how it is cut, and the boards of the show to take one from. */
export function BoardDialog(props: Props & { readonly title: string; readonly close: () => void }) {
  const { mat, work, composition } = props;
  const { design } = composition;
  const words = boardDialog(mat);
  const rule = design.mats[mat];
  const write = (board: Pick<MatRule, "board" | "thickness" | "bevel"> | Pick<MatRule, "board">): void => {
    const mats = design.mats.map((other, index) => (index === mat ? { ...other, ...board } : other));
    const spelled = new Speller(design.ruler.unit).mats(mats);
    keep(work, `board.${mat}`, { ...work.design, mats: spelled }, saidBoard(board.board));
  };
  return (
    <Dialog title={props.title} onClose={props.close}>
      <p class="facts">
        <TextBlank
          id="board-name"
          label={words.name}
          value={rule?.board ?? ""}
          unsaid={words.name}
          keep={(board) => write({ board })}
        />
      </p>
      <Sentence
        class="facts"
        label={props.title}
        sentence={words.sentence}
        blank={(name) => <WorkBlank key={name} name={name} work={work} composition={composition} />}
        fault={(name) => <Fault key={name} name={name} work={work} composition={composition} />}
      />
      <h3>{words.inUse}</h3>
      <div class="ready-sizes">
        {boardsInShow().map((board) => (
          <button
            key={board.board}
            type="button"
            aria-pressed={board.board === rule?.board ? "true" : "false"}
            onClick={() => write(board)}
          >
            {board.board}
          </button>
        ))}
      </div>
    </Dialog>
  );
}

/** Every board that some work of the show is cut from, each once. */
function boardsInShow(): readonly Pick<MatRule, "board" | "thickness" | "bevel">[] {
  const boards = new Map<string, Pick<MatRule, "board" | "thickness" | "bevel">>();
  for (const { design } of show.value?.works ?? []) {
    const made = madeOf(design, practice.value);
    if (!made.ok) continue;
    for (const { board, thickness, bevel } of made.composition.design.mats) {
      if (board !== "" && !boards.has(board)) boards.set(board, { board, thickness, bevel });
    }
  }
  return [...boards.values()].toSorted((a, b) => a.board.localeCompare(b.board));
}
