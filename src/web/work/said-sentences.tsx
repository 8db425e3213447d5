import type { Composition } from "../../assembly/index.ts";
import { briefSentence, type BlankName, factsSentence, keepingSentence, PAGE } from "../../words/page.ts";
import { Sentence } from "../blanks/sentence.tsx";
import type { KeptWork } from "../state/change.ts";
import { language } from "../state/session.ts";
import { Fault, WorkBlank } from "./blank.tsx";
import { BoardBlank } from "./board-blank.tsx";
import { OuterBlank } from "./outer-blank.tsx";

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
    if (name === "outer") return <OuterBlank key={name} work={work} composition={composition} />;
    if (name.startsWith("board.")) {
      return <BoardBlank key={name} mat={Number(name.slice(6))} work={work} composition={composition} />;
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
      {keeping !== null && (
        <Sentence class="facts keeping" label={PAGE.keeping} sentence={keeping} blank={blank} fault={fault} />
      )}
    </>
  );
}
