import { type Composition, type OuterRule, SIZE_LISTS } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import { DEFAULT_HABITS } from "../../show/index.ts";
import {
  type BlankName,
  blankWords,
  inSentence,
  LIST_OPTIONS,
  OUTER_DIALOG,
  OUTER_OPTIONS,
} from "../../words/page.ts";
import { Choice } from "../blanks/choice.tsx";
import { Dialog } from "../blanks/dialog.tsx";
import { Sentence } from "../blanks/sentence.tsx";
import { sizeText } from "../blanks/set-length.ts";
import type { KeptWork } from "../state/change.ts";
import { language } from "../state/session.ts";
import { Fault, WorkBlank } from "./blank.tsx";
import { listName, Speller } from "./document-of.ts";
import { keep } from "./editing.ts";

interface Props {
  readonly work: KeptWork;
  readonly composition: Composition;
}

/** The ways in which one may say an outer size, each with what it needs. */
export function OuterDialog({ work, composition, close }: Props & { readonly close: () => void }) {
  const { design, outer, mats } = composition;
  const { unit } = design.ruler;
  const spell = new Speller(unit);
  const said = blankWords("outer", design.mats.length, language.value).said;
  const write = (rule: OuterRule, words: string): void => {
    keep(work, "outer", { ...work.design, outer: spell.outer(rule) }, `${said} ${words}`);
  };
  const under = (kind: OuterRule["kind"]): OuterRule => {
    const borders = mats[0]?.borders;
    switch (kind) {
      case "size":
        return { kind, ...outer };
      case "smallest":
        return DEFAULT_HABITS[unit].outer;
      case "borders":
        if (borders === undefined) return design.outer;
        return {
          kind,
          borders: { head: borders.head, side: borders.left, foot: borders.foot },
          standard: null,
        };
    }
  };
  return (
    <Dialog title={OUTER_DIALOG.title} onClose={close}>
      <fieldset class="ways-to-say">
        <legend class="unseen">{OUTER_DIALOG.how}</legend>
        {OUTER_OPTIONS.map(({ key, words }) => (
          <label key={key}>
            <input
              type="radio"
              name="outer-kind"
              checked={design.outer.kind === key}
              onChange={() => write(under(key), inSentence(words))}
            />{" "}
            {words}
          </label>
        ))}
      </fieldset>
      {design.outer.kind === "size" && <NamedSize work={work} composition={composition} write={write} />}
      {design.outer.kind === "smallest" && <SmallestOf outer={design.outer} write={write} />}
      {design.outer.kind === "borders" && <CutOrNext outer={design.outer} write={write} />}
    </Dialog>
  );
}

type Write = (rule: OuterRule, words: string) => void;

function NamedSize({ work, composition, write }: Props & { readonly write: Write }) {
  const { outer, design } = composition;
  const { unit } = design.ruler;
  const lying = outer.width > outer.height;
  const blank = (name: BlankName) => (
    <WorkBlank key={name} name={name} work={work} composition={composition} />
  );
  const fault = (name: BlankName) => <Fault key={name} name={name} work={work} composition={composition} />;
  return (
    <>
      <Sentence
        class="facts"
        label={OUTER_DIALOG.title}
        sentence={OUTER_DIALOG.size}
        blank={blank}
        fault={fault}
      />
      <h3>{OUTER_DIALOG.ready}</h3>
      <div class="ready-sizes">
        {SIZE_LISTS[unit === "in" ? "inch" : "metric"].map(({ width, height }) => {
          const size = lying ? { width: height, height: width } : { width, height };
          const chosen = size.width === outer.width && size.height === outer.height;
          return (
            <button
              key={`${width}`.concat("-", `${height}`)}
              type="button"
              aria-pressed={chosen ? "true" : "false"}
              onClick={() => write({ kind: "size", ...size }, sizeText(size, unit))}
            >
              {sizeText(size, unit)}
            </button>
          );
        })}
      </div>
    </>
  );
}

function SmallestOf({
  outer,
  write,
}: {
  readonly outer: Extract<OuterRule, { kind: "smallest" }>;
  readonly write: Write;
}) {
  return (
    <p class="facts">
      <Choice
        id="outer-list"
        label={OUTER_DIALOG.list}
        options={LIST_OPTIONS}
        value={listName(outer.sizes) ?? ""}
        keep={(key) => write({ ...outer, sizes: listNamed(key) ?? outer.sizes }, wordsOf(key))}
      />
    </p>
  );
}

function CutOrNext({
  outer,
  write,
}: {
  readonly outer: Extract<OuterRule, { kind: "borders" }>;
  readonly write: Write;
}) {
  const options = [
    { key: "cut", words: OUTER_DIALOG.cut },
    ...LIST_OPTIONS.map(({ key, words }) => ({ key, words: OUTER_DIALOG.next(words) })),
  ];
  return (
    <p class="facts">
      <Choice
        id="outer-standard"
        label={OUTER_DIALOG.standard}
        options={options}
        value={outer.standard === null ? "cut" : (listName(outer.standard) ?? "cut")}
        keep={(key) =>
          write(
            { ...outer, standard: listNamed(key) },
            options.find((option) => option.key === key)?.words ?? key,
          )
        }
      />
    </p>
  );
}

const listNamed = (key: string): readonly Size[] | null => {
  const name = LIST_OPTIONS.find((option) => option.key === key)?.key;
  return name === undefined ? null : SIZE_LISTS[name];
};
const wordsOf = (key: string): string => LIST_OPTIONS.find((option) => option.key === key)?.words ?? key;
