import type { Composition } from "../../assembly/index.ts";
import {
  type BlankName,
  blankWords,
  briefSentence,
  factsSentence,
  keepingSentence,
  PAGE,
} from "../../words/page.ts";
import { Sentence } from "../blanks/sentence.tsx";
import { whenOpened } from "../later.tsx";
import type { KeptWork } from "../state/change.ts";
import { openDialog } from "../state/draft.ts";
import { language } from "../state/session.ts";
import { Fault, WorkBlank } from "./blank.tsx";
import { BoardBlank } from "./board-blank.tsx";
import { OuterBlank } from "./outer-blank.tsx";

const OuterDialog = whenOpened(({ OuterDialog: it }) => it);
const BoardDialog = whenOpened(({ BoardDialog: it }) => it);

const close = (): void => {
  openDialog.value = null;
};

/** The dialog of the blank that was opened, beside the sentences: a form does not stand in a form. */
function OpenDialog({ work, composition }: { readonly work: KeptWork; readonly composition: Composition }) {
  const name = openDialog.value;
  if (name === null) return null;
  if (name === "outer") return <OuterDialog work={work} composition={composition} close={close} />;
  const mat = Number(name.slice(6));
  const title = blankWords(name, composition.mats.length, language.value).label;
  return (
    <BoardDialog key={name} mat={mat} work={work} composition={composition} title={title} close={close} />
  );
}

/** What is said of a work: the print's facts, the brief, and what keeps the paper. */
export function SaidSentences({
  work,
  composition,
}: {
  readonly work: KeptWork;
  readonly composition: Composition;
}) {
  const { design } = composition;
  const keeping = keepingSentence(design, language.value);
  const blank = (name: BlankName) => {
    if (name === "outer") return <OuterBlank key={name} composition={composition} />;
    if (name.startsWith("board.")) {
      return <BoardBlank key={name} mat={Number(name.slice(6))} composition={composition} />;
    }
    return <WorkBlank key={name} name={name} work={work} composition={composition} />;
  };
  const fault = (name: BlankName) => <Fault key={name} name={name} work={work} composition={composition} />;
  return (
    <>
      <Sentence
        class="facts"
        label={PAGE.facts}
        sentence={factsSentence(design)}
        blank={blank}
        fault={fault}
      />
      <Sentence
        class="brief"
        label={PAGE.brief}
        sentence={briefSentence(composition, language.value)}
        blank={blank}
        fault={fault}
      />
      <OpenDialog work={work} composition={composition} />
      {keeping !== null && (
        <Sentence class="facts keeping" label={PAGE.keeping} sentence={keeping} blank={blank} fault={fault} />
      )}
    </>
  );
}
